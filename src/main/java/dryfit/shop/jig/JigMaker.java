package dryfit.shop.jig;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.document.Design.JigPlan;
import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.solid.Kernel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;

/** Makes the jigs of a chair. */
public final class JigMaker {
  private final Chair chair;
  private final Kernel kernel;

  /**
   * @param kernel makes their solids, as it made those of the chair
   */
  public JigMaker(Chair chair, Kernel kernel) {
    this.chair = chair;
    this.kernel = kernel;
  }

  /**
   * What is wanted.
   *
   * @param kind of jig
   * @param joint index of a joint, or -1
   * @param plan what the document says; empty if it was asked for otherwise
   */
  public record Wanted(JigKind kind, int joint, Optional<JigPlan> plan) {}

  /** What came of one wish: a jig, or why there is none. */
  public sealed interface Made {
    /** A jig. */
    record Ready(Jig jig) implements Made {}

    /** No jig, and why. */
    record Without(String name, String because) implements Made {}
  }

  /**
   * What is wanted: what the document lists, or, if it lists nothing or a joint or kind is named,
   * every jig there is for the joints and kinds that are named.
   *
   * @param joint name of a joint in the document, empty for all
   * @param kind empty for all
   */
  public List<Wanted> wanted(String joint, Optional<JigKind> kind) {
    Set<Wanted> all = new LinkedHashSet<>();
    List<JigPlan> listed = chair.design().jigs();
    boolean everything = !joint.isEmpty() || kind.isPresent() || listed.isEmpty();
    for (JigPlan plan : listed) {
      JigKind of = JigKind.byWord().get(plan.kind());
      boolean here =
          (joint.isEmpty() || joint.equals(plan.joint())) && (kind.isEmpty() || kind.get() == of);
      if (here && of == JigKind.SPACER) {
        all.add(new Wanted(of, -1, Optional.of(plan)));
      } else if (!everything) {
        joints(plan.joint(), plan.hand())
            .forEach(j -> all.add(new Wanted(of, j, Optional.empty())));
      }
    }
    if (everything) {
      for (int j : joints(joint, "both")) {
        for (JigKind each : JigKind.values()) {
          if (each != JigKind.SPACER && (kind.isEmpty() || kind.get() == each)) {
            all.add(new Wanted(each, j, Optional.empty()));
          }
        }
      }
    }
    return List.copyOf(all);
  }

  private List<Integer> joints(String name, String hand) {
    List<Integer> out = new ArrayList<>();
    for (int j = 0; j < chair.joints().size(); j++) {
      Joint joint = chair.joints().get(j);
      boolean named = name.isEmpty() || joint.name().equals(name);
      boolean handed =
          hand.equals("both")
              || joint.hand() == Hand.NONE
              || (joint.hand() == Hand.LEFT) == hand.equals("left");
      if (named && handed && chair.holding().contains(joint) && !chair.isHeldByPieces(joint)) {
        out.add(j);
      }
    }
    return out;
  }

  /**
   * Makes what is wanted, one after the other. A jig that serves both hands, or the same end twice,
   * comes once.
   */
  public void make(List<Wanted> wanted, Consumer<Made> each) {
    recipes(wanted).forEach(recipe -> each.accept(recipe.make()));
  }

  /** How many jigs {@link #make} tells of. */
  public int count(List<Wanted> wanted) {
    return recipes(wanted).size();
  }

  private List<Recipe> recipes(List<Wanted> wanted) {
    Set<String> known = new LinkedHashSet<>();
    return wanted.stream()
        .flatMap(w -> recipes(w).stream())
        .filter(recipe -> known.add(recipe.name))
        .toList();
  }

  /** One jig to make, and its name. */
  private record Recipe(String name, java.util.function.Supplier<Jig> how) {
    Made make() {
      try {
        return new Made.Ready(how.get());
      } catch (NoJig e) {
        return new Made.Without(name, e.getMessage());
      }
    }
  }

  private List<Recipe> recipes(Wanted w) {
    if (w.kind == JigKind.SPACER) {
      JigPlan plan = w.plan.orElseThrow();
      String name = "spacer, " + plan.from() + " to " + plan.to();
      return List.of(new Recipe(name, () -> Spacer.of(chair, plan, kernel)));
    }
    JigSite site = new JigSite(chair, w.joint, kernel);
    return switch (w.kind) {
      case ANGLE_GUIDE ->
          List.of(
              recipe(site, w, "chisel", GuideBlock::forChisel),
              recipe(site, w, "drill", GuideBlock::forDrill));
      case BEVEL_SETTER ->
          List.of(
              recipe(site, w, "shoulder", BevelSetter::forShoulder),
              recipe(site, w, "mortise", BevelSetter::forMortise));
      case HEIGHT_STICK -> List.of(recipe(site, w, "", HeightStick::of));
      case DEPTH_GAUGE -> List.of(recipe(site, w, "", DepthGauge::of));
      case SHOULDER_GUIDE -> List.of(recipe(site, w, "", ShoulderGuide::of));
      case CRADLE -> List.of(recipe(site, w, "", Cradle::cradle));
      case CAUL -> List.of(recipe(site, w, "", Cradle::caul));
      case SPACER -> List.of();
    };
  }

  private static Recipe recipe(JigSite site, Wanted w, String more, Function<JigSite, Jig> how) {
    return new Recipe(site.name(w.kind, more), () -> how.apply(site));
  }
}
