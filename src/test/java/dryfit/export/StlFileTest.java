package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Part;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class StlFileTest {
  @TempDir Path folder;

  private static List<Mesh> placed() {
    return TestChair.chair().parts().stream().map(Part::placedMesh).toList();
  }

  private static Mesh open() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    int[] triangles = box.triangles();
    int[] fewer = java.util.Arrays.copyOf(triangles, triangles.length - 3);
    int[] faceOf = new int[fewer.length / 3];
    for (int t = 0; t < faceOf.length; t++) {
      faceOf[t] = box.faceOf(t);
    }
    int[][][] faces = new int[box.faceCount()][][];
    for (int f = 0; f < faces.length; f++) {
      faces[f] = box.loops(f);
    }
    return new Mesh(
        box.coordinates(), faces, fewer, faceOf, new int[faces.length], List.of("/parts/x"));
  }

  @ParameterizedTest
  @EnumSource
  void whatIsReadBackIsWhatWasWritten(StlFile.Form form) throws IOException {
    Path path = folder.resolve("leg.stl");
    Mesh round = TestChair.round(11, 400);
    StlFile file = StlFile.write(path, List.of(round), "leg", form);
    List<Vec3> corners = StlReader.corners(Files.readAllBytes(path));
    assertThat(corners).hasSize(3 * round.triangleCount());
    for (int i = 0; i < corners.size(); i++) {
      Vec3 p = round.point(round.corner(i / 3, i % 3));
      assertThat(corners.get(i)).isEqualTo(new Vec3((float) p.x(), (float) p.y(), (float) p.z()));
    }
    // A prism over a regular 32-gon: n/2 r^2 sin(2 pi / n) times its length.
    double volume = 16 * 121 * Math.sin(Math.PI / 16) * 400;
    assertThat(file.volume()).isCloseTo(volume, within(1e-6 * volume));
    assertThat(file.bounds().size().x()).isEqualTo(400);
  }

  @ParameterizedTest
  @EnumSource
  void theWholeChairGoesIntoOneFileTheSameEachTime(StlFile.Form form) throws IOException {
    Path one = folder.resolve("one.stl");
    Path two = folder.resolve("two.stl");
    StlFile file = StlFile.write(one, placed(), "chair", form);
    StlFile.write(two, placed(), "chair", form);
    assertThat(Files.readAllBytes(one)).isEqualTo(Files.readAllBytes(two));
    assertThat(file.solids()).isEqualTo(TestChair.chair().parts().size());
    assertThat(file.triangles()).isEqualTo(placed().stream().mapToInt(Mesh::triangleCount).sum());
  }

  @Test
  void anOpenSurfaceIsNotWrittenAndAnOlderFileStays() throws IOException {
    Path path = folder.resolve("open.stl");
    Files.writeString(path, "older");
    assertThatThrownBy(() -> StlFile.write(path, List.of(open()), "open", StlFile.Form.BINARY))
        .isInstanceOf(UnsoundFile.class)
        .hasMessageContaining("open");
    assertThat(path).hasContent("older");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all).hasSize(1);
    }
  }

  @Test
  void nothingAtAllIsNotWritten() {
    assertThatThrownBy(
            () ->
                StlFile.write(
                    folder.resolve("no.stl"), List.of(Mesh.EMPTY), "no", StlFile.Form.BINARY))
        .isInstanceOf(UnsoundFile.class);
    assertThat(folder.resolve("no.stl")).doesNotExist();
  }

  @Test
  void aSpoiltCoordinateIsNoticedWhenReadBack() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    byte[] file = StlWriter.binary(List.of(box), "box");
    ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN).putFloat(84 + 12, 3.5f);
    assertThatThrownBy(() -> StlFile.check(file, List.of(box)))
        .isInstanceOf(UnsoundFile.class)
        .hasMessageContaining("not matched");
  }

  @Test
  void aSurfaceTurnedInsideOutIsNoticedWhenReadBack() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    List<Vec3> corners = StlReader.corners(StlWriter.binary(List.of(box), "box"));
    List<Vec3> reversed = new ArrayList<>(corners);
    Collections.reverse(reversed);
    byte[] file = StlWriter.binary(List.of(StlReader.welded(reversed)), "box");
    assertThatThrownBy(() -> StlFile.check(file, List.of(box)))
        .isInstanceOf(UnsoundFile.class)
        .hasMessageContaining("inside out");
  }

  @Test
  void aMissingTriangleIsNoticedWhenReadBack() {
    Mesh box = TestChair.box(0, 10, 0, 10, 0, 10);
    byte[] file = StlWriter.binary(List.of(open()), "box");
    assertThatThrownBy(() -> StlFile.check(file, List.of(box)))
        .isInstanceOf(UnsoundFile.class)
        .hasMessageContaining("fewer");
  }

  @Test
  void whatIsNoStlIsRefused() {
    for (String text :
        List.of("", "PK", "solid box\nvertex 1 2\n", "solid a\nvertex 1 2 x\nendsolid a\n")) {
      byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
      assertThatThrownBy(() -> StlReader.corners(bytes)).isInstanceOf(UnsoundFile.class);
    }
  }

  @Test
  void smallNumbersInTextComeBackToTheBit() throws IOException {
    Path path = folder.resolve("small.stl");
    Mesh box = TestChair.box(-0.1f, 1.0e-4f, 0, 1f / 3, 0, 1234.567f);
    StlFile.write(path, List.of(box), "small", StlFile.Form.ASCII);
    assertThat(StlReader.corners(Files.readAllBytes(path)))
        .contains(new Vec3(1.0e-4f, 1f / 3, 1234.567f), new Vec3(-0.1f, 0, 0));
    assertThat(Files.readString(path)).doesNotContain(",").doesNotContain("-0.0 ");
  }
}
