package dryfit.fit.compare;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Quantity;
import dryfit.fit.ChairMeasure;
import dryfit.fit.FitReport;
import dryfit.fit.JointAngles;
import dryfit.fit.JointDetail;
import dryfit.fit.JointFit;
import dryfit.fit.RakeAndSplay;
import dryfit.fit.ShoulderAngles;
import dryfit.fit.compare.Datum.Group;
import dryfit.fit.compare.Datum.Kind;
import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Vec3;
import dryfit.timber.Species;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads every figure off a dry fit, in the order of groups and of the document. */
public final class Data {
  private static final double CUBIC_METRE = 1e9; // mm^3
  private static final String CHAIR = "";

  private final FitReport report;
  private final Chair chair;
  private final List<Datum> all = new ArrayList<>();
  private final Set<Datum.Key> taken = new HashSet<>();

  private Data(FitReport report) {
    this.report = report;
    this.chair = report.chair();
  }

  /** The figures; no two have the same {@link Datum#key}. */
  public static List<Datum> of(FitReport report) {
    Data data = new Data(report);
    data.dimensions();
    data.weights();
    data.whole();
    data.parts();
    data.angles();
    report.joints().forEach(data::clearances);
    return List.copyOf(data.all);
  }

  private void add(Group group, String subject, String what, Kind kind, double value) {
    Datum datum = new Datum(group, subject, what, kind, value);
    for (int i = 2; !taken.add(datum.key()); i++) {
      datum = new Datum(group, subject, what + " " + i, kind, value);
    }
    all.add(datum);
  }

  private void dimensions() {
    for (Design.Dimension d : chair.design().dimensions()) {
      add(Group.DIMENSION, d.name(), "", kind(d.value().kind()), d.value().value());
    }
  }

  private static Kind kind(Quantity.Kind kind) {
    return switch (kind) {
      case LENGTH -> Kind.LENGTH;
      case ANGLE -> Kind.ANGLE;
      case NUMBER -> Kind.NUMBER;
    };
  }

  private void weights() {
    double mass = 0;
    double rough = 0;
    Vec3 moment = Vec3.ZERO;
    for (Part part : chair.parts()) {
      double own = mass(part);
      mass += own;
      rough += rough(part);
      moment = moment.plus(MassProperties.of(part.placedMesh()).centre().times(own));
    }
    add(Group.WHOLE, CHAIR, "mass", Kind.MASS, mass);
    add(Group.WHOLE, CHAIR, "board measure, no allowances", Kind.VOLUME, rough);
    Vec3 middle = moment.times(1 / mass);
    add(Group.WHOLE, CHAIR, "centre of mass, to the right", Kind.LENGTH, middle.x());
    add(Group.WHOLE, CHAIR, "centre of mass, back", Kind.LENGTH, middle.y());
    add(Group.WHOLE, CHAIR, "centre of mass, above the floor", Kind.LENGTH, middle.z());
  }

  /** Kilograms at 12 percent moisture; NaN if the timber is not in the table. */
  private static double mass(Part part) {
    double density =
        Species.named(part.plan().common().timber()).map(Species::density12).orElse(Double.NaN);
    return MassProperties.of(part.solid().mesh()).volume() / CUBIC_METRE * density;
  }

  private static double rough(Part part) {
    Vec3 size = part.blank().rough().size();
    return size.x() * size.y() * size.z();
  }

  private void whole() {
    ChairMeasure whole = report.whole();
    whole
        .stance()
        .ifPresent(
            s -> {
              Tipping.of(s)
                  .forEach(
                      t ->
                          add(
                              Group.WHOLE,
                              CHAIR,
                              "tips " + t.way() + " at",
                              Kind.ANGLE,
                              t.angle()));
              add(Group.WHOLE, CHAIR, "rock", Kind.GAP, s.rock());
            });
    for (ChairMeasure.FrameSquare f : whole.frames()) {
      String name = f.which() + " diagonal from the ";
      add(Group.WHOLE, CHAIR, name + "left", Kind.LENGTH, f.fromLeft());
      add(Group.WHOLE, CHAIR, name + "right", Kind.LENGTH, f.fromRight());
    }
    whole
        .level()
        .ifPresent(
            l -> {
              for (int i = 0; i < l.corners().size(); i++) {
                String at = "seat height at " + l.corners().get(i).part();
                add(Group.WHOLE, CHAIR, at, Kind.LENGTH, l.heights().get(i));
              }
              add(Group.WHOLE, CHAIR, "seat rises to the right by", Kind.ANGLE, l.sideways());
              add(Group.WHOLE, CHAIR, "seat falls to the back by", Kind.ANGLE, -l.foreAft());
            });
  }

  private void parts() {
    for (Part part : chair.parts()) {
      // Of a bent part that is the straight piece, not the box round its bow.
      sizes(part.label(), "", part.blank().net().size());
      Box rough = part.blank().rough();
      sizes(part.label(), "least blank ", rough.size());
      add(Group.PART, part.label(), "mass", Kind.MASS, mass(part));
    }
  }

  private void sizes(String label, String before, Vec3 size) {
    add(Group.PART, label, before + "length", Kind.LENGTH, size.x());
    // As a board is bought: the frame of a part may lie either way in it.
    add(Group.PART, label, before + "width", Kind.LENGTH, Math.max(size.y(), size.z()));
    add(Group.PART, label, before + "thickness", Kind.LENGTH, Math.min(size.y(), size.z()));
  }

  private void angles() {
    for (RakeAndSplay r : RakeAndSplay.of(chair)) {
      String label = r.part().label();
      // As a document writes them: above zero if the foot stands forward, and outside.
      RakeAndSplay.View v = r.floor();
      boolean in = v.splayFoot().equals("inside") || v.splayFoot().equals("left");
      add(
          Group.ANGLE,
          label,
          "rake",
          Kind.ANGLE,
          signed(v.lean().rake(), v.rakeFoot().equals("back")));
      add(Group.ANGLE, label, "splay", Kind.ANGLE, signed(v.lean().splay(), in));
    }
    for (JointFit fit : report.joints()) {
      JointAngles angles = JointAngles.of(chair, fit.joint());
      String label = fit.joint().label();
      angles.shoulder().ifPresent(s -> shoulder(label, s, fit));
      angles
          .mortise()
          .ifPresent(
              m -> {
                add(Group.ANGLE, label, "mortise leans", Kind.ANGLE, m.lean().offSquare());
                add(Group.ANGLE, label, "along its part", Kind.ANGLE, fit.leanAlong());
                add(Group.ANGLE, label, "across its part", Kind.ANGLE, fit.leanAcross());
              });
    }
  }

  private static double signed(double angle, boolean below) {
    return below ? -Math.abs(angle) : Math.abs(angle);
  }

  private void shoulder(String label, ShoulderAngles s, JointFit fit) {
    add(Group.ANGLE, label, "shoulder off square", Kind.ANGLE, s.offSquare().offSquare());
    add(Group.ANGLE, label, "on the wide face", Kind.ANGLE, fit.shoulderWide());
    add(Group.ANGLE, label, "on the narrow face", Kind.ANGLE, fit.shoulderNarrow());
    s.saw()
        .ifPresent(
            saw -> {
              add(Group.ANGLE, label, "mitre gauge", Kind.ANGLE, saw.mitre().offSquare());
              add(Group.ANGLE, label, "blade tilt", Kind.ANGLE, saw.tilt().offSquare());
            });
  }

  private void clearances(JointFit fit) {
    String label = fit.joint().label();
    JointDetail detail = fit.detail();
    for (JointDetail.SideGap gap : detail.gaps()) {
      String where = gap.side().equals("all round") ? "gap " : "gap at the ";
      add(Group.CLEARANCE, label, where + gap.side(), Kind.GAP, gap.least().value());
    }
    detail
        .walls()
        .forEach(
            w ->
                add(
                    Group.CLEARANCE,
                    label,
                    "wood to the " + w.face(),
                    Kind.LENGTH,
                    w.left().value()));
    detail
        .reveal()
        .ifPresent(
            r ->
                r.sides()
                    .forEach(
                        s ->
                            add(
                                Group.CLEARANCE,
                                label,
                                "set back at the " + s.face(),
                                Kind.LENGTH,
                                s.by())));
    add(Group.CLEARANCE, label, "depth square to the face", Kind.LENGTH, fit.depthSquare());
  }
}
