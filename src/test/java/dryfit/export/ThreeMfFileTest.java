package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Part;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ThreeMfFileTest {
  @TempDir Path folder;

  private static List<NamedMesh> placed() {
    return TestChair.chair().parts().stream()
        .map(p -> new NamedMesh(p.label(), p.placedMesh()))
        .toList();
  }

  @Test
  void anotherReaderFindsTheSamePartsWithTheirNamesAndVolumesInMillimetres() throws Exception {
    Path path = folder.resolve("chair.3mf");
    ThreeMfFile file = ThreeMfFile.write(path, placed(), "A <chair> & \"more\"");
    ThreeMfPackage read = ThreeMfPackage.open(path);
    assertThat(read.unit()).isEqualTo("millimeter");
    assertThat(read.title()).isEqualTo("A <chair> & \"more\"");
    List<Part> parts = TestChair.chair().parts();
    assertThat(read.objects()).hasSameSizeAs(parts);
    double sum = 0;
    for (int i = 0; i < parts.size(); i++) {
      ThreeMfPackage.Thing object = read.objects().get(i);
      double volume = MassProperties.of(parts.get(i).solid().mesh()).volume();
      assertThat(object.name()).isEqualTo(parts.get(i).label());
      assertThat(object.volume()).isCloseTo(volume, within(1e-5 * volume));
      sum += volume;
    }
    assertThat(file.volume()).isCloseTo(sum, within(1e-5 * sum));
  }

  // 3MF Core Specification 1.4.0, section 4.1.
  @Test
  void everyEdgeIsSharedWithExactlyOneOtherTriangleAndRunsTheOtherWayThere() throws Exception {
    Path path = folder.resolve("chair.3mf");
    ThreeMfFile.write(path, placed(), "chair");
    for (ThreeMfPackage.Thing object : ThreeMfPackage.open(path).objects()) {
      assertThat(object.unmatchedEdges()).as(object.name()).isZero();
    }
  }

  @Test
  void whatIsBuiltStandsWhereNoCoordinateIsBelowZero() throws Exception {
    Path path = folder.resolve("chair.3mf");
    ThreeMfFile.write(path, placed(), "chair");
    ThreeMfPackage read = ThreeMfPackage.open(path);
    assertThat(read.lowest()).allSatisfy(low -> assertThat(low).isBetween(-1e-4, 1e-4));
  }

  @Test
  void theSameSolidsGiveTheSameBytes() throws IOException {
    Path one = folder.resolve("one.3mf");
    Path two = folder.resolve("two.3mf");
    ThreeMfFile.write(one, placed(), "chair");
    ThreeMfFile.write(two, placed(), "chair");
    assertThat(Files.readAllBytes(one)).isEqualTo(Files.readAllBytes(two));
  }

  @Test
  void aCornerThatIsNotThereIsNoticedWhenReadBack() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    List<NamedMesh> solids = List.of(new NamedMesh("box", box));
    byte[] file = ThreeMfWriter.bytes(solids, "box");
    assertThat(ThreeMfReader.objects(file)).hasSize(1);
    assertThatThrownBy(() -> ThreeMfReader.triangles(box.coordinates(), new int[] {0, 1, 8}))
        .isInstanceOf(UnsoundFile.class);
    assertThatThrownBy(() -> ThreeMfFile.check(file, List.of(new NamedMesh("crate", box))))
        .isInstanceOf(UnsoundFile.class)
        .hasMessageContaining("objects");
  }

  @Test
  void anOpenSurfaceIsNotWritten() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    int[] all = box.triangles();
    Mesh open =
        ThreeMfReader.triangles(box.coordinates(), java.util.Arrays.copyOf(all, all.length - 3));
    Path path = folder.resolve("open.3mf");
    assertThatThrownBy(() -> ThreeMfFile.write(path, List.of(new NamedMesh("open", open)), "open"))
        .isInstanceOf(UnsoundFile.class);
    assertThat(path).doesNotExist();
  }

  @Test
  void whatIsNo3mfIsRefused() {
    assertThatThrownBy(() -> ThreeMfReader.objects(new byte[] {'P', 'K', 3, 4}))
        .isInstanceOf(UnsoundFile.class);
    assertThatThrownBy(() -> ThreeMfReader.objects(new byte[0])).isInstanceOf(UnsoundFile.class);
  }
}
