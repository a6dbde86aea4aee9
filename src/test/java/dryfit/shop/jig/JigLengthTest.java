package dryfit.shop.jig;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.JigKind;
import dryfit.document.Reading;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JigLengthTest {
  private static final Kernel KERNEL = new ExactKernel();

  private static Chair chair(String model) {
    Document document = accepted(DocumentReader.read(Path.of("models/" + model + ".json")));
    return accepted(ChairBuilder.build(accepted(document.design(Design.AS_DRAWN)), KERNEL));
  }

  private static <T> T accepted(Reading<T> reading) {
    return ((Reading.Accepted<T>) reading).value();
  }

  private static List<Jig> jigs(Chair chair, String joint, JigKind kind) {
    JigMaker maker = new JigMaker(chair, KERNEL);
    List<Jig> out = new ArrayList<>();
    maker.make(
        maker.wanted(joint, Optional.of(kind)),
        made -> {
          if (made instanceof JigMaker.Made.Ready ready) {
            out.add(ready.jig());
          }
        });
    return out;
  }

  @Test
  void lengthsAreInTheUnitOfTheChair() {
    Design inches = chair("orchard-side-chair").design();
    // 1 31/64 in is 37.703 mm, for an inch is 25.4 mm exactly.
    assertThat(JigLength.engraved(37.7, inches)).isEqualTo("1 31/64 IN");
    assertThat(JigLength.told(25.4, inches)).isEqualTo("1 in, 25.40 mm");
    assertThat(JigLength.fine(0.2, inches)).isEqualTo("0.008 in");
    Design metric = chair("low-stool").design();
    assertThat(JigLength.engraved(37.7, metric)).isEqualTo("37.7");
    assertThat(JigLength.told(25.4, metric)).isEqualTo("25.40 mm");
    assertThat(JigLength.fine(0.2, metric)).isEqualTo("0.20 mm");
  }

  @Test
  void aDepthGaugeOfAChairInInchesHasInchesEngravedAndIsStillProved() {
    Chair chair = chair("orchard-side-chair");
    List<Jig> gauges = jigs(chair, "side rail to front leg", JigKind.DEPTH_GAUGE);
    assertThat(gauges).isNotEmpty();
    for (Jig gauge : gauges) {
      assertThat(gauge.letters()).anyMatch(w -> w.endsWith(" IN"));
      assertThat(gauge.notes()).allMatch(n -> n.contains(" in, ") || n.contains(" in ("));
      assertThat(JigProof.of(chair, gauge).faults()).isEmpty();
    }
  }
}
