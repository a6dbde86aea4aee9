package dryfit.shop.jig;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.document.PartPlan;
import dryfit.document.Printing;
import dryfit.geometry.Lean;
import dryfit.geometry.Vec3;
import dryfit.measure.Angle;
import dryfit.measure.BenchAngle;
import dryfit.solid.Convex;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * One joint that jigs are made for, and what they are made with.
 *
 * @param number index of the joint in the chair
 */
record JigSite(Chair chair, int number, Kernel kernel) {

  /** A hole or wall that leans further than this cannot be printed without support. */
  static final double STEEPEST = Math.toRadians(45);

  /** A wall beside what a tool is led by, mm (common practice, no source). */
  static final double WALL = 8;

  Joint joint() {
    return chair.joints().get(number);
  }

  Part mortised() {
    return chair.parts().get(joint().mortised());
  }

  Part tenoned() {
    return chair.parts().get(joint().tenoned());
  }

  Printing printing() {
    return chair.design().printing();
  }

  /** The hand that matters for the jig: of the joint, or of the part if the joint has none. */
  Hand hand() {
    return joint().hand() == Hand.NONE ? mortised().hand() : joint().hand();
  }

  /** The mortises, one a tenon; none where nothing is cut. */
  List<Convex> holes() {
    return joint().tenons().stream()
        .filter(t -> !t.hole().isEmpty())
        .map(t -> t.hole().get(0))
        .toList();
  }

  boolean isRound() {
    return joint().plan().diameter().isPresent();
  }

  static boolean isRound(Part part) {
    return part.plan() instanceof PartPlan.Turned
        || part.plan() instanceof PartPlan.Straight straight
            && straight.section() instanceof PartPlan.Section.Round;
  }

  /** Unit direction in the mouth that counts as its length: the part's own, or its width. */
  Vec3 along() {
    Vec3 length = mortised().lengthNear(joint().at());
    Vec3 n = joint().mouth().normal();
    Vec3 reference = Math.abs(length.dot(n)) > 0.9 ? mortised().frame().y() : length;
    return reference.across(n).unit();
  }

  /** How the entry leans, seen along the length and across it. */
  Lean lean() {
    return Lean.of(joint().entry(), joint().mouth().normal().negated(), along());
  }

  /** What every jig for the joint has engraved on it, in words that stay together. */
  List<String> letters(Part part, String... more) {
    List<String> words = new ArrayList<>();
    words.add(StrokeFont.plain(part.label()));
    for (String word : joint().plan().name().split("\\s+", -1)) {
      words.add(StrokeFont.plain(word));
    }
    if (joint().hand() != Hand.NONE && part.hand() == Hand.NONE) {
      words.add(sideWord(joint().hand()));
    }
    for (String word : more) {
      words.add(StrokeFont.plain(word));
    }
    return words;
  }

  /** Left or right as the document means it. */
  String sideWord(Hand hand) {
    boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
    return (hand == Hand.RIGHT) == seated ? "LEFT" : "RIGHT";
  }

  static String degrees(double radians) {
    return BenchAngle.of(radians).isSquare() ? "SQUARE" : tenths(radians);
  }

  private static String tenths(double radians) {
    return String.format(Locale.ROOT, "%.1f°", Math.toDegrees(Math.abs(radians)));
  }

  /** For notes: an angle as everywhere else. */
  static String told(double radians) {
    return Angle.print(radians);
  }

  /** A name that no other jig of the chair has. */
  String name(JigKind kind, String more) {
    String which = more.isEmpty() ? "" : " " + more;
    return kind.word() + which + ", " + joint().label();
  }

  /** Where up is on a plane: that of the chair, or its front where the plane is level. */
  static Vec3 upOn(Vec3 normal) {
    Vec3 up = Vec3.UP.across(normal);
    return up.length() > 0.35 ? up.unit() : Vec3.BACK.negated().across(normal).unit();
  }

  /** The letter that goes with {@link #upOn}. */
  static String upWord(Vec3 normal) {
    return Vec3.UP.across(normal).length() > 0.35 ? "UP" : "FRONT";
  }
}
