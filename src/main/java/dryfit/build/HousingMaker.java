package dryfit.build;

import dryfit.build.JointMaker.Made;
import dryfit.document.JointSizes.Housing;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Convex;
import java.util.ArrayList;
import java.util.List;

/** The whole end of a part let into the face of another. */
final class HousingMaker {
  private HousingMaker() {}

  static Made make(JointSite site, Housing sizes) {
    TenonAxes a = site.axes();
    Plane mouth = site.mouth();
    double depth = sizes.depth();
    Plane tip = mouth.moved(-depth).flipped();
    Plane floor = mouth.moved(-depth - site.plan().fit().bottom()).flipped();
    List<Convex> let = new ArrayList<>();
    for (Convex cell : site.of().tenoned().placedCells(site.of().atStart())) {
      cell.clipped(mouth)
          .flatMap(c -> c.clipped(tip))
          .filter(c -> c.middle().minus(a.at()).dot(a.entry()) > -Tolerances.contact())
          .ifPresent(let::add);
    }
    if (let.isEmpty()) {
      throw JointMaker.misses(site.of());
    }
    double cheek = site.plan().fit().cheek();
    double edge = site.plan().fit().edge();
    Vec3 t = a.thick();
    Convex pocket =
        Shadow.swept(let, a.at(), a.entry(), t.times(cheek), a.wide().times(edge), depth * 4 + 100);
    List<Convex> mortise =
        pocket.clipped(site.outsideMouth()).flatMap(c -> c.clipped(floor)).stream().toList();
    double length = depth / -a.entry().dot(mouth.normal());
    Tenon one = new Tenon(site.tenoned(), a.at(), let, mortise);
    Joint joint = site.joint(a.at(), length, List.of(one), List.of(mouth.normal()));
    return new Made(site.of(), joint, List.of(), List.of(tip), List.of());
  }
}
