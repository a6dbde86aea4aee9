package dryfit.fit;

import dryfit.build.Chair;
import dryfit.document.Design.Waiver;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Findings that the maker has accepted keep their place and say why. A waiver that accepts nothing
 * is told, {@code waiver-idle}: the fault it was written for is mended, or its words are wrong.
 * What could not be measured cannot be accepted, for nobody knows what it is.
 */
final class Waivers {
  private Waivers() {}

  /** Id of what no waiver hides. */
  static final String COULD_NOT_MEASURE = "could-not-measure";

  static List<Finding> laidOver(Chair chair, List<Finding> findings) {
    List<Waiver> waivers = chair.design().waived();
    List<Finding> out = new ArrayList<>();
    boolean[] used = new boolean[waivers.size()];
    for (Finding f : findings) {
      Optional<String> because = Optional.empty();
      for (int i = 0; i < waivers.size(); i++) {
        if (accepts(chair, waivers.get(i), f)) {
          used[i] = true;
          because = because.isPresent() ? because : Optional.of(waivers.get(i).because());
        }
      }
      out.add(because.map(f::waivedBecause).orElse(f));
    }
    for (int i = 0; i < used.length; i++) {
      if (!used[i]) {
        out.add(idle(waivers.get(i)));
      }
    }
    return out;
  }

  /** The waivers that accept a finding, in the order of the document. */
  static List<Waiver> accepting(Chair chair, Finding f) {
    return chair.design().waived().stream().filter(w -> accepts(chair, w, f)).toList();
  }

  private static boolean accepts(Chair chair, Waiver w, Finding f) {
    return w.check().equals(f.check())
        && !f.check().equals(COULD_NOT_MEASURE)
        && (w.joint().isEmpty() || isOfJoint(chair, w.joint(), f))
        && (w.part().isEmpty() || f.parts().stream().anyMatch(l -> isOf(l, w.part(), " ")));
  }

  /** Dowels, loose tenons and wedges are their joint's: no document has a name for one of them. */
  private static boolean isOfJoint(Chair chair, String joint, Finding f) {
    return f.joints().stream().anyMatch(l -> isOf(l, joint, ", "))
        || chair.joints().stream()
            .filter(j -> j.plan().name().equals(joint))
            .flatMap(j -> chair.pieces(j).stream())
            .anyMatch(f.parts()::contains);
  }

  /** Whether a label is that of a named joint or part, whichever hand. */
  private static boolean isOf(String label, String name, String beforeHand) {
    return label.equals(name) || label.startsWith(name + beforeHand);
  }

  private static Finding idle(Waiver w) {
    boolean hopeless = w.check().equals(COULD_NOT_MEASURE);
    String of = w.joint().isEmpty() ? w.part() : w.joint();
    return Found.of("waiver-idle", Severity.KNOW)
        .source(Source.maker(w.pointer()))
        .says(
            "The document accepts \""
                + w.check()
                + "\""
                + (of.isEmpty() ? "" : " of \"" + of + "\"")
                + (hopeless
                    ? ", but what could not be measured cannot be accepted."
                    : ", but nothing of the kind was found in this variant; where no other variant needs it either, take it out or mend its words."),
            w.pointer(),
            Vec3.ZERO);
  }
}
