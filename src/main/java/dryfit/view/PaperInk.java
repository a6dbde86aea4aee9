package dryfit.view;

import dryfit.build.Chair;
import dryfit.export.picture.Camera;
import dryfit.geometry.Box;
import dryfit.geometry.Vec3;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What is written into a picture on paper where no part stands before it: the outline round the
 * feet, and the numbers of a rule.
 *
 * @param hidden labels of parts that are not drawn
 * @param footprint once it is known
 * @param bounds of the chair
 */
record PaperInk(
    Chair chair, Set<String> hidden, Optional<Footprint> footprint, Scale scale, Box bounds) {
  /** A side is drawn in so many pieces, each seen or not as a whole. */
  private static final int PIECES = 60;

  void draw(BufferedImage picture, Camera camera) {
    footprint.ifPresent(feet -> outline(picture, camera, feet));
    if (scale instanceof Scale.Rule rule) {
      PaperScale.number(picture, camera, rule.unit(), bounds, this);
    }
  }

  /** From below the floor hides nothing and is not there. */
  private void outline(BufferedImage picture, Camera camera, Footprint feet) {
    if (camera.eye().z() <= 0) {
      return;
    }
    Camera.Sheet sheet = camera.sheet(picture.getWidth(), picture.getHeight());
    Graphics2D pen = picture.createGraphics();
    pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    pen.setColor(new Color(0x8a7a63));
    pen.setStroke(new BasicStroke(1.2f));
    List<Vec3> corners = feet.corners();
    for (int i = 0; i < corners.size(); i++) {
      Vec3 from = onFloor(corners.get(i));
      Vec3 side = onFloor(corners.get((i + 1) % corners.size())).minus(from);
      for (int k = 0; k < PIECES; k++) {
        Vec3 a = from.plus(side.times((double) k / PIECES));
        Vec3 b = from.plus(side.times((k + 1.0) / PIECES));
        boolean before = camera.depth(a) > 1 && camera.depth(b) > 1;
        if (before && isSeen(a.plus(b).times(0.5), camera.eye())) {
          pen.draw(new Line2D.Double(sheet.x(a), sheet.y(a), sheet.x(b), sheet.y(b)));
        }
      }
    }
    pen.dispose();
  }

  private static Vec3 onFloor(Vec3 foot) {
    return new Vec3(foot.x(), foot.y(), 0);
  }

  /** Whether no part that is drawn is before a place. */
  boolean isSeen(Vec3 place, Vec3 eye) {
    return Sight.isFree(chair, hidden, place, eye);
  }
}
