package published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.export.StlWriter;
import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The layout of STL files. Source: Paul Bourke, "STL format", 1999
 * (paulbourke.net/dataformats/stl): binary is an 80-byte header, a 4-byte unsigned count, then for
 * each facet twelve 4-byte floats (normal, three vertices) and a 2-byte attribute count;
 * little-endian; vertices by the right-hand rule as seen from outside.
 */
class StlLayoutTest {
  private static final Mesh BOX =
      Meshes.box(new Box(new Vec3(0, 0, 0), new Vec3(10, 20, 30)), "/parts/box");

  @Test
  void binaryIsEightyFourBytesAndFiftyAFacet() {
    byte[] file = StlWriter.binary(List.of(BOX), "box");
    ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
    assertThat(file).hasSize(84 + 50 * 12);
    assertThat(in.getInt(80)).isEqualTo(12);
    for (int t = 0; t < 12; t++) {
      assertThat(in.getShort(84 + 50 * t + 48)).isZero();
    }
  }

  @Test
  void normalsFollowTheRightHandRuleOutwards() {
    ByteBuffer in =
        ByteBuffer.wrap(StlWriter.binary(List.of(BOX), "box")).order(ByteOrder.LITTLE_ENDIAN);
    for (int t = 0; t < 12; t++) {
      int at = 84 + 50 * t;
      Vec3 normal = vector(in, at);
      Vec3 a = vector(in, at + 12);
      Vec3 b = vector(in, at + 24);
      Vec3 c = vector(in, at + 36);
      Vec3 right = b.minus(a).cross(c.minus(a)).unit();
      assertThat(normal.distance(right)).isCloseTo(0, within(1e-7));
      assertThat(normal.dot(a.minus(new Vec3(5, 10, 15)))).isPositive();
    }
  }

  @Test
  void theHeaderIsNotTakenForTheTextForm() {
    // Bourke's text form begins with the word "solid"; a binary header must not.
    String header =
        new String(StlWriter.binary(List.of(BOX), "solid"), 0, 80, StandardCharsets.US_ASCII);
    assertThat(header).doesNotStartWith("solid");
  }

  @Test
  void theTextFormHasItsKeywordsInOrder() {
    String text = new String(StlWriter.ascii(List.of(BOX), "box"), StandardCharsets.US_ASCII);
    String number = "-?[0-9.]+(E-?[0-9]+)?";
    String three = " " + number + " " + number + " " + number + "\n";
    assertThat(text)
        .matches(
            "solid box\n(facet normal"
                + three
                + "outer loop\n(vertex"
                + three
                + "){3}endloop\nendfacet\n){12}endsolid box\n");
  }

  private static Vec3 vector(ByteBuffer in, int at) {
    return new Vec3(in.getFloat(at), in.getFloat(at + 4), in.getFloat(at + 8));
  }
}
