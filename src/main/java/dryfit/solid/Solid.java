package dryfit.solid;

import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Rays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;

/**
 * A closed solid, immutable: its surface from a kernel, and interior-disjoint convex cells that
 * fill it, computed without the kernel. The two are independent answers; tests hold them together.
 * All in the part's own frame.
 */
public final class Solid {
  private final Mesh mesh;
  private final List<Convex> cells;

  /** Holds the looks into the mesh once they were asked for; a solid that is kept keeps them. */
  private final AtomicReference<Rays> rays = new AtomicReference<>();

  /** The solid this is the mirror image of: looks into it answer for this one too. */
  private final Optional<Solid> twin;

  /**
   * @param mesh closed surface
   * @param cells convex cells that fill it
   */
  public Solid(Mesh mesh, List<Convex> cells) {
    this(mesh, cells, Optional.empty());
  }

  private Solid(Mesh mesh, List<Convex> cells, Optional<Solid> twin) {
    this.mesh = mesh;
    this.cells = List.copyOf(cells);
    this.twin = twin;
  }

  public Mesh mesh() {
    return mesh;
  }

  public List<Convex> cells() {
    return cells;
  }

  /** Looks into the surface, in the solid's own frame. */
  public Rays rays() {
    Rays known = rays.get();
    if (known == null) {
      known = twin.map(t -> t.rays().mirroredZ()).orElseGet(() -> Rays.of(mesh));
      rays.set(known);
    }
    return known;
  }

  /** Whether it was made as the mirror image of another. */
  public boolean isMirrorOf(Solid other) {
    return twin.isPresent() && twin.get() == other;
  }

  /** The mirror image in z = 0 of its own frame. */
  public Solid mirroredZ() {
    return new Solid(
        Meshes.mirroredZ(mesh), cells.stream().map(Convex::mirroredZ).toList(), Optional.of(this));
  }
}
