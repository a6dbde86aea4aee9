package dryfit.document;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A part as the maker wrote it, numbers worked out. A pair is written for the right-hand side as
 * you face the chair.
 */
public sealed interface PartPlan {

  Common common();

  default String name() {
    return common().name();
  }

  /**
   * What every part has.
   *
   * @param pair whether there is a mirrored twin
   * @param timber key of a species
   * @param grain which way the grain runs
   * @param cuts what is cut off besides its form, and how much larger its blank is
   * @param edges what is done to its edges
   */
  record Common(
      String name,
      String pointer,
      boolean pair,
      String timber,
      Grain grain,
      String note,
      PartCuts cuts,
      List<EdgePlan> edges) {
    public Common {
      edges = List.copyOf(edges);
    }

    /** A part that is only what its form says. */
    public Common(
        String name, String pointer, boolean pair, String timber, Grain grain, String note) {
      this(name, pointer, pair, timber, grain, note, PartCuts.NONE, List.of());
    }
  }

  /** Which way the grain runs: along the length, along the chord of the outline, or as written. */
  sealed interface Grain {
    record AlongLength() implements Grain {}

    record AlongChord() implements Grain {}

    record Along(Spot direction) implements Grain {}
  }

  /** Three numbers of chair space: a place (mm) or a direction. */
  record Spot(double x, double y, double z) {}

  /** Two numbers in a view, mm. */
  record Spot2(double u, double v) {}

  /** One part, or one of a pair. With {@code NONE} on a pair the hand follows from the context. */
  record PartRef(String part, Hand hand, String pointer) {}

  // ---- where it runs ----

  /** Where a part stands or runs. */
  sealed interface Placement {
    /** From a place to a place, along the middle of the section. */
    record Run(Spot from, Spot to) implements Placement {}

    /**
     * Between two parts: the ends are cut to the faces it meets.
     *
     * @param level for a part that lies: which edge is at what height at the first and second part
     * @param x chair-space x of its middle at each end; places an upright part sideways, or a lying
     *     part that runs front to back
     * @param y chair-space y of its middle at each end
     * @param reveal or how its face stands to the faces of the parts it meets
     */
    record Between(
        PartRef first,
        PartRef second,
        Optional<Level> level,
        Optional<Ends> x,
        Optional<Ends> y,
        Optional<Reveal> reveal)
        implements Placement {}

    /** Standing (or hanging) at a place; outlines are drawn from there. */
    record StandsAt(Spot at) implements Placement {}
  }

  /** A value at the first and at the second end. */
  record Ends(double first, double second) {}

  /** Heights above the floor of the top, middle or bottom of a part, at its two ends. */
  record Level(Edge edge, Ends height) {
    /** The edge of the part whose height is given. */
    public enum Edge {
      TOP,
      MIDDLE,
      BOTTOM
    }
  }

  /**
   * How a part's face stands to the faces it meets, measured at the shoulder. Outside is the side
   * away from the middle of the chair.
   *
   * @param from outside: its outside face is set back from theirs by so much; inside: its inside
   *     face is set back from their inside faces; centred: its middle is so far outward of theirs
   */
  record Reveal(From from, Ends by) {
    /** The face the distance is taken from. */
    public enum From {
      OUTSIDE,
      INSIDE,
      CENTRED
    }
  }

  // ---- forms ----

  /**
   * A straight member.
   *
   * @param turn radians about its own length, anticlockwise seen from the end towards the start
   */
  record Straight(
      Common common, Placement placement, Section section, List<Taper> tapers, double turn)
      implements PartPlan {
    public Straight {
      tapers = List.copyOf(tapers);
    }
  }

  /** A cross-section. */
  sealed interface Section {
    /**
     * @param width upright for a part that lies, sideways for a part that stands
     * @param thickness the other way
     */
    record Rectangle(double width, double thickness) implements Section {}

    record Round(double diameter) implements Section {}
  }

  /**
   * Wood taken off chosen faces, straight from a place along the part to another.
   *
   * @param faces front, back, left, right, top, bottom, inside, outside
   * @param from where it starts, measured along the part from its start
   * @param to where it ends, where {@code leaves} is left; before or after {@code from}
   * @param leaves thickness left there between this face and the one opposite
   */
  record Taper(List<String> faces, double from, double to, double leaves, String pointer) {
    public Taper {
      faces = List.copyOf(faces);
    }
  }

  /**
   * A part sawn from one or two outlines, each drawn in a view.
   *
   * <p>Standing at a place: {@code side} is drawn in (y, z), {@code front} in (x, z), {@code plan}
   * in (x, y), all from that place and parallel to the chair. Between two parts: {@code plan} is
   * drawn in (along, outward) and {@code side} in (along, up), from where it leaves the first part
   * towards the second, at the level given.
   *
   * @param thickness size square to the view when only one outline is given, centred on the place
   * @param turn radians about its own length, anticlockwise seen from the end towards the start
   */
  record Sawn(
      Common common,
      Placement placement,
      Optional<Outline> side,
      Optional<Outline> front,
      Optional<Outline> plan,
      Optional<Double> thickness,
      double turn)
      implements PartPlan {}

  /** A part turned about its length; diameters between the stations run straight, or smoothly. */
  record Turned(
      Common common,
      Placement placement,
      List<Station> stations,
      boolean smooth,
      List<Detail> details)
      implements PartPlan {
    public Turned {
      stations = List.copyOf(stations);
      details = List.copyOf(details);
    }
  }

  /**
   * A bead, cove or fillet on a turning; in order along it.
   *
   * @param at its middle, along from the start
   * @param high how far it stands out of the turning, or goes into it
   */
  record Detail(Kind kind, double at, double wide, double high, String pointer) {
    /** What it is. */
    public enum Kind {
      /** A round that stands out: an arc of a circle. */
      BEAD,
      /** A hollow that goes in: an arc of a circle. */
      COVE,
      /** A flat band between square steps. */
      FILLET
    }
  }

  /** A diameter so far along from the start; stations are in rising order. */
  record Station(double along, double diameter) {}

  /**
   * A part bent to a smooth curve: its section swept along a middle line.
   *
   * @param sections one or more, the places along the middle line rising; between them the sizes
   *     change evenly
   * @param upright whether the width stays upright all along; if not, the section is carried along
   *     without twist from the middle of the part, where it stands as in a straight member
   * @param turn radians about its own length
   */
  record Bent(Common common, Course course, List<SectionAt> sections, boolean upright, double turn)
      implements PartPlan {
    public Bent {
      sections = List.copyOf(sections);
    }
  }

  /** The middle line of a bent part. */
  sealed interface Course {
    /** One smooth curve through two points or more, as a batten bends round nails. */
    record Through(List<Spot> points, String pointer) implements Course {
      public Through {
        points = List.copyOf(points);
      }
    }

    /** A circular arc over a straight line. */
    record Bowed(Placement placement, Bow bow) implements Course {}
  }

  /**
   * A circular bow.
   *
   * @param rise how far the middle stands off the straight line between the ends, mm, above zero
   * @param toward to which side: front, back, left, right, top, bottom, inside, outside
   */
  record Bow(double rise, String toward, String pointer) {}

  /** The section so far along the middle line from the start, mm. */
  record SectionAt(double along, Section section) {}

  /** A board with an outline, free or held in grooves. */
  record Panel(
      Common common,
      double thickness,
      PanelShape shape,
      Optional<Raised> raised,
      List<Opening> openings)
      implements PartPlan {
    public Panel {
      openings = List.copyOf(openings);
    }

    /** A flat board without openings. */
    public Panel(Common common, double thickness, PanelShape shape) {
      this(common, thickness, shape, Optional.empty(), List.of());
    }
  }

  /**
   * A field as thick as the panel, bevelled down to a tongue round its edge.
   *
   * @param tongue thickness of the tongue
   * @param flat how wide the tongue runs before the bevel begins, from the edge
   * @param margin where the bevel meets the field, from the edge
   * @param face the one face that is raised, or both
   */
  record Raised(double tongue, double flat, double margin, Optional<String> face, String pointer) {}

  /** A hole cut through a board, drawn as its outline is. */
  record Opening(Outline outline, String pointer) {}

  /**
   * A board that stands along a line, shaped by an outline and pierced: a back splat.
   *
   * @param outline drawn in (across, along), from the middle of its start; cut to the faces it
   *     meets
   * @param edge or the edge to the right alone, from the start to the end; the left one mirrors it
   * @param bow if it is bent over its length
   */
  record Splat(
      Common common,
      Placement placement,
      double thickness,
      Optional<Outline> outline,
      Optional<Path> edge,
      List<Opening> openings,
      Optional<Bow> bow)
      implements PartPlan {
    public Splat {
      openings = List.copyOf(openings);
    }
  }

  /** Where a panel is and what outline it has. */
  sealed interface PanelShape {
    /**
     * Drawn in a view through {@code at}, the middle of its thickness.
     *
     * @param view plan: (x, y); side: (y, z); front: (x, z)
     */
    record Drawn(Spot at, View view, Outline outline) implements PanelShape {}

    /**
     * Fills the opening between the parts, in grooves, in the plane through the middle of the first
     * of them that is a rail.
     *
     * @param deep depth of the groove
     * @param gap room left at the bottom of each groove for the wood to move
     * @param slack room at each face of the panel in its groove
     */
    record Fills(List<PartRef> parts, double deep, double gap, double slack) implements PanelShape {
      public Fills {
        parts = List.copyOf(parts);
      }
    }

    /**
     * Lies loose in the rebates of the rails round it, as large as the opening less a gap.
     *
     * @param gap room all round
     */
    record DropsInto(List<PartRef> parts, double gap) implements PanelShape {
      public DropsInto {
        parts = List.copyOf(parts);
      }
    }
  }

  // ---- seats, blocks and pins ----

  /**
   * A seat board. Its outline is drawn on its own top, u to the right and v to the back, from
   * {@code at}.
   *
   * @param slope radians by which the top falls towards the back
   */
  record Seat(
      Common common,
      Spot at,
      double thickness,
      double slope,
      Outline outline,
      Optional<Hollow> hollow)
      implements PartPlan {}

  /**
   * A dish in the top of a seat. On every line from its deepest place to its rim it is a parabola,
   * level at the deepest place.
   *
   * @param outline its rim; without one the rim is the seat's outline, {@code inset} inward
   * @param deepest where it is deepest; without one, in the middle of the rim
   */
  record Hollow(
      double deep,
      Optional<Outline> outline,
      double inset,
      Optional<Spot2> deepest,
      String pointer) {}

  /**
   * A block in the corner between two rails, its ends cut to their inside faces.
   *
   * @param alongFirst how far it reaches along the first rail, from where the inside faces meet
   * @param alongSecond how far along the second, or
   * @param angle between its long face and the first rail
   * @param high upright size
   * @param top height of its top
   * @param thickness of a board set across the corner; without it the block fills the corner
   */
  record CornerBlock(
      Common common,
      PartRef first,
      PartRef second,
      double alongFirst,
      OptionalDouble alongSecond,
      OptionalDouble angle,
      double high,
      double top,
      OptionalDouble thickness)
      implements PartPlan {}

  /** A peg or a wedge: driven through a joint, and placed by it. */
  sealed interface Pin extends PartPlan {
    PinPlace place();
  }

  /**
   * Where a pin goes through its joint.
   *
   * @param fromShoulder along the tenon from the face it enters: to the middle of a peg, to the
   *     nearer face of a wedge
   * @param offCentre across the tenon, from its middle line; positive is up, or back, or right
   * @param acrossEdges whether it goes in by the edges of the tenon, not by its cheeks
   * @param drivenFrom the face it is driven in from: front, back, left, right, top, bottom, inside,
   *     outside
   * @param length from the face it is driven in from to its tip; without one it goes right through
   * @param proud how far its head, and its tip if it goes through, stand out of the wood
   * @param gap room round it in its hole
   */
  record PinPlace(
      String joint,
      double fromShoulder,
      double offCentre,
      boolean acrossEdges,
      String drivenFrom,
      OptionalDouble length,
      Ends proud,
      double gap) {}

  /**
   * A round peg.
   *
   * @param tapered length of its tapered end
   * @param tip diameter of its tip
   * @param offset how far its hole in the tenon is nearer to the shoulder than that in the other
   *     part, so that the peg draws the joint up
   */
  record Peg(
      Common common, PinPlace place, double diameter, double tapered, double tip, double offset)
      implements Pin {}

  /**
   * A wedge: one face straight, towards the shoulder, the other sloping; its tip is a land.
   *
   * @param width size across the tenon
   * @param head thickness where it is driven
   * @param tip thickness of the land at its tip
   */
  record Wedge(Common common, PinPlace place, double width, double head, double tip)
      implements Pin {}

  /** A view of the chair. */
  enum View {
    PLAN,
    SIDE,
    FRONT
  }

  // ---- outlines ----

  /** A closed outline. */
  sealed interface Outline {
    /** A path that closes on its start. */
    record Closed(Path path) implements Outline {}

    /**
     * A band between two edges that run the same way; the ends are joined straight.
     *
     * @param firstName e.g. inside, bottom, front
     * @param secondName e.g. outside, top, back
     */
    record Band(String firstName, Path first, String secondName, Path second) implements Outline {}

    record Circle(double diameter, Spot2 middle) implements Outline {
      public Circle(double diameter) {
        this(diameter, new Spot2(0, 0));
      }
    }
  }

  /** An edge: a start and the steps that follow. */
  record Path(Spot2 start, List<Step> steps, String pointer) {
    public Path {
      steps = List.copyOf(steps);
    }
  }

  /** One step of an edge. */
  sealed interface Step {
    /** Straight to a point. */
    record Line(Spot2 to) implements Step {}

    /** One smooth curve through the current point and these. */
    record Curve(List<Spot2> through) implements Step {
      public Curve {
        through = List.copyOf(through);
      }
    }

    /**
     * A circular arc to a point; {@code rise} is the height of the bow over its chord, positive to
     * the left of the way it runs.
     */
    record Arc(Spot2 to, double rise) implements Step {}
  }
}
