package dryfit.export;

import dryfit.geometry.Mesh;

/**
 * A solid and what it is called.
 *
 * @param name for people; formats that have names write it as it is
 * @param mesh its closed surface, mm
 */
public record NamedMesh(String name, Mesh mesh) {}
