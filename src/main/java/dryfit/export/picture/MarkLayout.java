package dryfit.export.picture;

import java.util.ArrayList;
import java.util.List;

/** Finds places for rings and labels where they do not cover each other. */
final class MarkLayout {
  /** Directions tried for a label, up and to the right first. */
  private static final int DIRECTIONS = 16;

  private final Camera.Sheet sheet;
  private final double radius;
  private final double high;
  private final List<double[]> taken = new ArrayList<>();

  /**
   * @param radius of a ring, samples
   * @param high height of the letters, samples
   */
  MarkLayout(Camera.Sheet sheet, double radius, double high) {
    this.sheet = sheet;
    this.radius = radius;
    this.high = high;
  }

  /** A ring and the labels of all marks within it. */
  record Ring(double x, double y, String label) {
    double towardsX(Label label) {
      return (label.anchorX - x) / distance(label);
    }

    double towardsY(Label label) {
      return (label.anchorY - y) / distance(label);
    }

    private double distance(Label label) {
      return Math.hypot(label.anchorX - x, label.anchorY - y);
    }
  }

  /** Where a label begins, its middle line, and the end of the line that leads to it. */
  record Label(double left, double middleY, double anchorX, double anchorY) {}

  /** One ring for marks that would lie on top of each other; those behind the eye are left out. */
  List<Ring> rings(List<Mark> marks) {
    List<Ring> rings = new ArrayList<>();
    for (Mark mark : marks) {
      if (sheet.camera().depth(mark.at()) > 0) {
        add(rings, new Ring(sheet.x(mark.at()), sheet.y(mark.at()), mark.label()));
      }
    }
    for (Ring r : rings) {
      taken.add(new double[] {r.x - radius, r.y - radius, r.x + radius, r.y + radius});
    }
    return rings;
  }

  private void add(List<Ring> rings, Ring one) {
    for (int i = 0; i < rings.size(); i++) {
      Ring r = rings.get(i);
      if (Math.hypot(r.x - one.x, r.y - one.y) < 1.2 * radius) {
        String both =
            r.label.isEmpty() || one.label.isEmpty()
                ? r.label + one.label
                : r.label + "," + one.label;
        rings.set(i, new Ring(r.x, r.y, both));
        return;
      }
    }
    rings.add(one);
  }

  /** The nearest free place beside a ring; straight up to the right if there is none. */
  Label beside(Ring ring) {
    double wide = Lettering.width(ring.label, high);
    for (double far = 2.2; far <= 7; far += 0.8) {
      for (int i = 0; i < DIRECTIONS; i++) {
        Label label = at(ring, far, i, wide);
        double[] box = box(label, wide);
        if (isFree(box)) {
          taken.add(box);
          return label;
        }
      }
    }
    return at(ring, 2.2, 0, wide);
  }

  private Label at(Ring ring, double far, int direction, double wide) {
    // Up to the right, then turn about turn to either side of it.
    int turn = (direction + 1) / 2 * (direction % 2 == 0 ? 1 : -1);
    double angle = Math.PI / 4 + turn * 2 * Math.PI / DIRECTIONS;
    double x = ring.x + far * radius * Math.cos(angle);
    double y = ring.y - far * radius * Math.sin(angle);
    double gap = 0.35 * radius;
    return new Label(Math.cos(angle) >= 0 ? x + gap : x - gap - wide, y, x, y);
  }

  private double[] box(Label label, double wide) {
    double room = 0.4 * high;
    return new double[] {
      label.left - room,
      label.middleY - high / 2 - room,
      label.left + wide + room,
      label.middleY + high / 2 + room
    };
  }

  private boolean isFree(double[] box) {
    boolean inside =
        box[0] >= 0 && box[1] >= 0 && box[2] <= sheet.width() && box[3] <= sheet.height();
    return inside
        && taken.stream()
            .noneMatch(t -> t[0] < box[2] && box[0] < t[2] && t[1] < box[3] && box[1] < t[3]);
  }
}
