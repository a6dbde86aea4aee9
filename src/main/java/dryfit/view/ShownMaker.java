package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Document;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import dryfit.solid.Solid;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Gets chairs ready to be looked at. A part whose solid was seen last time keeps its surface. For
 * one thread.
 */
final class ShownMaker {
  private final boolean surfaces;
  private IdentityHashMap<Solid, PartShape> known = new IdentityHashMap<>();
  private List<Clash> clashes = List.of();

  /**
   * @param surfaces whether surfaces for the graphics are wanted
   */
  ShownMaker(boolean surfaces) {
    this.surfaces = surfaces;
  }

  /** A chair that stands, its findings not known yet. */
  Shown built(long number, Document document, Chair chair) {
    IdentityHashMap<Solid, PartShape> next = new IdentityHashMap<>();
    Shown shown = shown(number, document, chair, next);
    known = next;
    return shown;
  }

  /** Several chairs that are seen together. */
  List<Shown> together(Document document, List<Chair> chairs) {
    IdentityHashMap<Solid, PartShape> next = new IdentityHashMap<>();
    List<Shown> all = new ArrayList<>();
    for (Chair chair : chairs) {
      all.add(shown(0, document, chair, next));
    }
    known = next;
    return all;
  }

  /** Clashes that stay to be seen until the next findings are known. */
  void keep(List<Clash> found) {
    clashes = found;
  }

  private Shown shown(
      long number, Document document, Chair chair, IdentityHashMap<Solid, PartShape> next) {
    List<PartShape> parts = new ArrayList<>();
    for (Part part : surfaces ? chair.parts() : List.<Part>of()) {
      PartShape seen = known.getOrDefault(part.solid(), next.get(part.solid()));
      PartShape shape = seen == null ? PartShape.of(part) : seen.placed(part);
      next.put(part.solid(), shape);
      parts.add(shape);
    }
    Box bounds = bounds(chair);
    FloorPicture floor = FloorPicture.of(chair, bounds);
    return new Shown(number, document, chair, Optional.empty(), parts, clashes, floor, bounds);
  }

  private static Box bounds(Chair chair) {
    List<Vec3> corners = new ArrayList<>();
    for (Part part : chair.parts()) {
      Box box = part.placedMesh().bounds();
      corners.add(box.low());
      corners.add(box.high());
    }
    return Box.around(corners);
  }
}
