package dryfit.fit.spread;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.JointPlan.Kind;
import dryfit.fit.compare.Datum;
import dryfit.fit.loop.Cause;
import dryfit.fit.loop.Causes;
import dryfit.fit.loop.Chain;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Every cut of a chair: first those that decide where its parts stand, in the order of {@link
 * Chain#causes}; then the sections of parts and the sizes of tenons and mortises.
 */
final class Cuts {
  static final String TENON_THICK = "thickness of the tenon";
  static final String MORTISE_THICK = "thickness of the mortise";
  static final String TENON_WIDE = "width of the tenon";
  static final String MORTISE_LONG = "length of the mortise";
  static final String TENON_LONG = "length of the tenon";
  static final String DEPTH = "depth of the mortise";
  static final String WIDTH = "width";
  static final String THICKNESS = "thickness";
  static final String LENGTH = "length";

  /** Cosine of 45 degrees: what leans more does not stand. */
  private static final double STANDS = Math.sqrt(0.5);

  private final List<Cut> all = new ArrayList<>();
  private final Map<List<String>, Integer> index = new HashMap<>();

  Cuts(Chair chair, Chain chain) {
    Design.Accuracy accuracy = chair.design().accuracy();
    for (Cause c : chain.causes()) {
      Datum.Kind kind = c.angle() ? Datum.Kind.ANGLE : Datum.Kind.LENGTH;
      add(c.subject(), c.what(), kind, c.accuracy(chair));
    }
    for (Part part : chair.parts()) {
      missing(part.label(), WIDTH, accuracy.length());
      missing(part.label(), THICKNESS, accuracy.length());
    }
    for (Joint joint : chair.joints()) {
      if (!joint.tenons().isEmpty()) {
        joint(joint, accuracy);
      }
    }
    for (Part part : chair.parts()) {
      boolean stands = Math.abs(part.frame().x().z()) > STANDS;
      if (stands && !part.isPiece() && of(part.label(), Causes.BETWEEN).isEmpty()) {
        add(part.label(), LENGTH, Datum.Kind.LENGTH, accuracy.length());
      }
    }
    // What is by the drawing as a whole: a template, a story stick.
    for (Design.Dimension d : chair.design().dimensions()) {
      if (d.accuracy() > 0) {
        add(d.name(), "", kind(d), d.accuracy());
      }
    }
  }

  private static Datum.Kind kind(Design.Dimension d) {
    return switch (d.value().kind()) {
      case LENGTH -> Datum.Kind.LENGTH;
      case ANGLE -> Datum.Kind.ANGLE;
      case NUMBER -> Datum.Kind.NUMBER;
    };
  }

  private void joint(Joint joint, Design.Accuracy accuracy) {
    String label = joint.label();
    add(label, TENON_THICK, Datum.Kind.GAP, accuracy.fit());
    add(label, MORTISE_THICK, Datum.Kind.GAP, accuracy.fit());
    boolean round = joint.plan().diameter().isPresent();
    if (!round && joint.plan().kind() != Kind.GROOVE) {
      add(label, TENON_WIDE, Datum.Kind.GAP, accuracy.fit());
      add(label, MORTISE_LONG, Datum.Kind.GAP, accuracy.fit());
    }
    if (!joint.through()) {
      add(label, TENON_LONG, Datum.Kind.LENGTH, accuracy.length());
      add(label, DEPTH, Datum.Kind.LENGTH, accuracy.length());
    }
  }

  private void missing(String subject, String what, double accuracy) {
    if (of(subject, what).isEmpty()) {
      add(subject, what, Datum.Kind.LENGTH, accuracy);
    }
  }

  private void add(String subject, String what, Datum.Kind kind, double accuracy) {
    index.putIfAbsent(List.of(subject, what), all.size());
    all.add(new Cut(subject, what, kind, accuracy));
  }

  List<Cut> all() {
    return all;
  }

  /** The index of a cut, if the chair has it. */
  OptionalInt of(String subject, String what) {
    Integer i = index.get(List.of(subject, what));
    return i == null ? OptionalInt.empty() : OptionalInt.of(i);
  }
}
