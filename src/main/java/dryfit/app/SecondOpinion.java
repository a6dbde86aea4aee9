package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Part;
import dryfit.document.Reading;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.MeshCheck;
import dryfit.measure.Tolerances;
import dryfit.solid.Kernel;
import dryfit.solid.KernelFailure;
import dryfit.solid.exact.ExactKernel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What another kernel makes of every part of a chair: the same, or where it differs. Volumes may
 * differ by what the grid of the exact kernel moves the faces; shells and holes may not differ.
 *
 * @param text one line if they agree, otherwise one for each part that differs
 * @param exit how the command ends if nothing else is wrong: a difference is our fault
 */
public record SecondOpinion(List<String> text, Exit exit) {
  public SecondOpinion {
    text = List.copyOf(text);
  }

  /**
   * Builds the chair again with {@code other} and compares.
   *
   * @param first name of the kernel that built {@code chair}
   */
  public static SecondOpinion of(Chair chair, String first, Kernel other) {
    List<String> differences = new ArrayList<>();
    try {
      if (ChairBuilder.build(chair.design(), other) instanceof Reading.Accepted<Chair> built) {
        List<Part> again = built.value().parts();
        for (int i = 0; i < again.size(); i++) {
          compare(chair.parts().get(i), again.get(i), first, other.name(), differences);
        }
      }
    } catch (KernelFailure failure) {
      differences.add(other.name() + " cannot make " + failure.getMessage());
    }
    if (differences.isEmpty()) {
      return new SecondOpinion(
          List.of(
              String.format(
                  Locale.ROOT,
                  "second opinion: %s agrees with %s on the volume, shells and holes of all %d"
                      + " parts",
                  other.name(),
                  first,
                  chair.parts().size())),
          Exit.FITS);
    }
    return new SecondOpinion(
        differences.stream().map(d -> "second opinion: " + d).toList(), Exit.OUR_FAULT);
  }

  private static void compare(Part a, Part b, String first, String second, List<String> into) {
    Mesh one = a.solid().mesh();
    Mesh other = b.solid().mesh();
    MassProperties mass = MassProperties.of(one);
    double volume = MassProperties.of(other).volume();
    double allowed =
        mass.area() * ExactKernel.farthestMove(one) + Tolerances.volumeShare() * mass.volume();
    if (Math.abs(mass.volume() - volume) > allowed
        || MeshCheck.shells(one) != MeshCheck.shells(other)
        || MeshCheck.genus(one) != MeshCheck.genus(other)) {
      into.add(
          a.label() + ": " + told(first, mass.volume(), one) + "; " + told(second, volume, other));
    }
  }

  private static String told(String kernel, double volume, Mesh mesh) {
    return String.format(
        Locale.ROOT,
        "%s makes %.3f mm3, shells: %d, holes through: %d",
        kernel,
        volume,
        MeshCheck.shells(mesh),
        MeshCheck.genus(mesh));
  }
}
