package dryfit.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.build.ChairBuilder;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import dryfit.fit.Finding.Severity;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import dryfit.measure.Tolerances;
import dryfit.solid.Cells;
import dryfit.solid.Kernel;
import dryfit.solid.exact.ExactKernel;
import dryfit.solid.jcsg.JcsgKernel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Bounds3D;
import org.apache.commons.geometry.euclidean.threed.ConvexPolygon3D;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every chair that ships fits as drawn, and what is made to fail fails for the reason it shows. */
class ShippedModelsTest {
  /** What the program uses. */
  private static final Kernel EXACT = new ExactKernel();

  /** Slower, but it does not put corners on a grid: its volumes are good to the last digits. */
  private static final Kernel JCSG = new JcsgKernel();

  /** The variants that are meant not to fit, and the one check that says why. */
  private static final Map<String, String> UNFIT =
      Map.ofEntries(
          Map.entry("ferry-ladder-back/rungs level", "tenons-meet"),
          Map.entry("ferry-ladder-back/slats too deep", "mortise-breaks-out"),
          Map.entry("harbour-armchair/deep tenons", "tenons-meet"),
          Map.entry("kiln-stool/thin seat", "mortise-breaks-out"),
          Map.entry("lantern-side-chair/tight crest", "tenon-too-fat"),
          Map.entry("lantern-side-chair/unmitred", "tenons-meet"),
          Map.entry("millrace-armchair/fat stump", "tenon-too-fat"),
          Map.entry("millrace-armchair/legs too deep", "mortise-breaks-out"),
          Map.entry("orchard-side-chair/tight notch", "parts-collide"),
          Map.entry("orchard-side-chair/unmitred", "tenons-meet"),
          Map.entry("weir-settee/front board not notched", "parts-collide"),
          Map.entry("weir-settee/leg tenons too long", "tenons-meet"),
          Map.entry("weir-settee/slats too far apart", "parts-collide"));

  /** A chair takes seconds to build, and several tests ask for it. */
  private static final Map<String, Chair> BUILT = new HashMap<>();

  @AfterAll
  static void forget() {
    BUILT.clear();
  }

  static List<Path> models() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("models"))) {
      return files.filter(file -> file.toString().endsWith(".json")).sorted().toList();
    }
  }

  private static String name(Path model) {
    return model.getFileName().toString().replace(".json", "");
  }

  private static Document document(Path model) {
    return ((Reading.Accepted<Document>) DocumentReader.read(model)).value();
  }

  static List<Arguments> fitting() throws IOException {
    List<Arguments> out = new ArrayList<>();
    for (Path model : models()) {
      out.add(Arguments.of(model, Design.AS_DRAWN));
      document(model).variants().stream()
          .filter(v -> !UNFIT.containsKey(name(model) + "/" + v))
          .forEach(v -> out.add(Arguments.of(model, v)));
    }
    return out;
  }

  static List<Arguments> unfit() throws IOException {
    List<Arguments> out = new ArrayList<>();
    for (Path model : models()) {
      document(model).variants().stream()
          .filter(v -> UNFIT.containsKey(name(model) + "/" + v))
          .forEach(v -> out.add(Arguments.of(model, v, UNFIT.get(name(model) + "/" + v))));
    }
    return out;
  }

  private static Chair chair(Path model, String variant, Kernel kernel) {
    return BUILT.computeIfAbsent(
        kernel.name() + ":" + model + "/" + variant,
        key -> {
          Design design = ((Reading.Accepted<Design>) document(model).design(variant)).value();
          return ((Reading.Accepted<Chair>) ChairBuilder.build(design, kernel)).value();
        });
  }

  @ParameterizedTest
  @MethodSource("fitting")
  void fits(Path model, String variant) {
    FitReport report = DryFit.of(chair(model, variant, EXACT));
    assertThat(report.findings()).filteredOn(f -> f.severity() == Severity.STOPS).isEmpty();
    assertThat(report.fits()).isTrue();
    assertThat(report.joints()).hasSameSizeAs(report.chair().joints());
  }

  @ParameterizedTest
  @MethodSource("models")
  void asDrawnNothingIsLeftToLookAt(Path model) {
    FitReport report = DryFit.of(chair(model, Design.AS_DRAWN, EXACT));
    assertThat(report.findings())
        .filteredOn(f -> f.severity() == Severity.LOOK && f.waived().isEmpty())
        .isEmpty();
    assertThat(report.findings()).extracting(Finding::check).doesNotContain("waiver-idle");
  }

  @Test
  void everyUnfitVariantIsThere() throws IOException {
    assertThat(unfit()).hasSize(UNFIT.size());
  }

  @ParameterizedTest
  @MethodSource("unfit")
  void doesNotFitForOneReason(Path model, String variant, String check) {
    FitReport report = DryFit.of(chair(model, variant, EXACT));
    assertThat(report.fits()).isFalse();
    assertThat(report.findings())
        .filteredOn(f -> f.severity() == Severity.STOPS)
        .extracting(Finding::check)
        .containsOnly(check);
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyPartHoldsAsMuchByItsCellsAsByItsSurface(Path model) {
    for (Part part : chair(model, Design.AS_DRAWN, JCSG).parts()) {
      double surface = MassProperties.of(part.solid().mesh()).volume();
      assertThat(Cells.volume(part.solid().cells()))
          .as(part.label())
          .isCloseTo(surface, within(Tolerances.volumeShare() * surface));
    }
  }

  @ParameterizedTest
  @MethodSource("models")
  void theGridOfTheExactKernelMovesNoFaceFurtherThanAStep(Path model) {
    for (Part part : chair(model, Design.AS_DRAWN, EXACT).parts()) {
      MassProperties surface = MassProperties.of(part.solid().mesh());
      // Corners move by at most half a step of 2^-14 mm in each direction, and the faces with them.
      double most = area(part.solid().mesh()) * Math.sqrt(3) / 2 * 0x1p-14;
      assertThat(Cells.volume(part.solid().cells()))
          .as(part.label())
          .isCloseTo(surface.volume(), within(most));
    }
  }

  private static double area(Mesh mesh) {
    double twice = 0;
    for (int t = 0; t < mesh.triangleCount(); t++) {
      Vec3 a = mesh.point(mesh.corner(t, 0));
      Vec3 b = mesh.point(mesh.corner(t, 1)).minus(a);
      twice += b.cross(mesh.point(mesh.corner(t, 2)).minus(a)).length();
    }
    return twice / 2;
  }

  @ParameterizedTest
  @MethodSource("models")
  void anotherLibraryFindsTheSameVolume(Path model) {
    for (Part part : chair(model, Design.AS_DRAWN, JCSG).parts()) {
      Mesh mesh = part.solid().mesh();
      double volume = MassProperties.of(mesh).volume();
      assertThat(byPartition(mesh)).as(part.label()).isCloseTo(volume, within(1e-6 * volume));
    }
  }

  /**
   * The volume by Apache Commons Geometry: space is partitioned by the planes of the triangles and
   * the cells inside are summed up. It knows nothing of our cells, nor of sums over a surface.
   */
  private static double byPartition(Mesh mesh) {
    Precision.DoubleEquivalence precision = Precision.doubleEquivalenceOfEpsilon(1e-7);
    List<ConvexPolygon3D> triangles = new ArrayList<>();
    for (int t = 0; t < mesh.triangleCount(); t++) {
      triangles.add(
          Planes.triangleFromVertices(
              vector(mesh.point(mesh.corner(t, 0))),
              vector(mesh.point(mesh.corner(t, 1))),
              vector(mesh.point(mesh.corner(t, 2))),
              precision));
    }
    return RegionBSPTree3D.partitionedRegionBuilder()
        .insertAxisAlignedGrid(
            Bounds3D.from(triangles.stream().flatMap(p -> p.getVertices().stream()).toList()),
            3,
            precision)
        .insertBoundaries(triangles)
        .build()
        .getSize();
  }

  private static Vector3D vector(Vec3 v) {
    return Vector3D.of(v.x(), v.y(), v.z());
  }
}
