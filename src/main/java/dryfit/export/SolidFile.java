package dryfit.export;

import dryfit.geometry.Box;
import java.nio.file.Path;

/** A finished file of closed solids, in whatever format: written, read back and found closed. */
public sealed interface SolidFile permits StlFile, ThreeMfFile, GltfFile {
  /** Where it is. */
  Path path();

  /** How many closed solids it holds. */
  int solids();

  /** How many triangles all of them have. */
  int triangles();

  /** What all of them take up together, in millimetres of the chair, whatever the file's unit. */
  Box bounds();

  /** Of all of them together, cubic millimetres. */
  double volume();
}
