package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.app.KeepFailure;
import dryfit.export.Schemas;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {
  private static final String STOOL = "models/low-stool.json";

  @TempDir Path folder;

  /** What a command printed and how it ended. */
  private String changed(String from, String to) throws IOException {
    String text = Files.readString(Path.of(STOOL));
    assertThat(text).contains(from);
    return Files.writeString(folder.resolve("chair.json"), text.replace(from, to)).toString();
  }

  @Test
  void aChairThatFitsEndsWithZeroAndSaysSo() {
    Said said = Said.by("fit", STOOL);
    assertThat(said.code()).isZero();
    assertThat(said.lastLine()).startsWith("FITS: 12 joints seated");
    assertThat(said.err()).isEmpty();
  }

  @Test
  void aChairThatGoesTogetherIsToldStepByStep() {
    Said said = Said.by("assemble", STOOL);
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("right side");
    assertThat(said.lastLine()).isEqualTo("GOES TOGETHER: in 10 steps");
  }

  @Test
  void boardsListsBlanksAndWritesThem() throws IOException {
    Path to = folder.resolve("lists");
    Said said = Said.by("boards", STOOL, "--to", to.toString());
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("side-rail (pair)       2").contains("board feet");
    assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Files.readString(to.resolve("cut-list.csv"))).contains("side-rail,2,yes");
    assertThat(Files.readAllBytes(to.resolve("boards.pdf")))
        .startsWith("%PDF".getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void whatIsAllowedForBlanksIsAnOption() {
    Said said = Said.by("boards", STOOL, "--allow", "1 in, 1/4 in, 0", "--csv");
    assertThat(said.out()).contains("440.0,50.0,50.0,465.4,56.4,50.0");
    Said wrong = Said.by("boards", STOOL, "--allow", "1 in");
    assertThat(wrong.code()).isEqualTo(2);
    assertThat(wrong.err()).contains("--allow needs three lengths");
  }

  @Test
  void aListOfAnInchChairSpeaksInchesInASpreadsheetToo() {
    Said said = Said.by("boards", "models/orchard-side-chair.json", "--csv");
    assertThat(said.out()).contains("finished length in,").doesNotContain(" mm,");
    Said metric = Said.by("boards", "models/orchard-side-chair.json", "--csv", "--units", "mm");
    assertThat(metric.out()).contains("finished length mm,").doesNotContain(" in,");
  }

  @Test
  void aFolderThatCannotBeIsRefusedBeforeAnyListIsPrinted() throws IOException {
    Path file = Files.writeString(folder.resolve("here"), "a file");
    Said said = Said.by("boards", STOOL, "--to", file.toString());
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("not written").doesNotContain(".part");
  }

  @Test
  void aPartThatIsNotInTheChairCannotBeGluedFirst() {
    Said said = Said.by("assemble", STOOL, "--glued", "front-leg right, arm");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("no part is called 'arm'");
  }

  @Test
  void whatIsGluedBeforehandHoldsTogetherAndAPairMayBeNamedAsOne() {
    Said apart = Said.by("assemble", STOOL, "--glued", "front-rail, back-rail");
    assertThat(apart.code()).isEqualTo(2);
    assertThat(apart.err()).contains("is jointed to no other part that is named with it");
    Said nothing = Said.by("assemble", STOOL, "--glued", ",");
    assertThat(nothing.code()).as("no part at all is no fault").isZero();
    Said pair = Said.by("assemble", STOOL, "--glued", "front-leg, front-rail");
    assertThat(pair.code()).isZero();
    assertThat(pair.out())
        .contains("Put together beforehand: front-leg right, front-leg left and front-rail.");
  }

  @Test
  void tenonsThatMeetInALegDoNotFit() throws IOException {
    String file = changed("\"width\": 38, \"length\": 25", "\"width\": 38, \"length\": 38");
    Said said = Said.by("fit", file);
    assertThat(said.code()).isEqualTo(4);
    assertThat(said.lastLine()).startsWith("DOES NOT FIT: ");
    assertThat(said.out()).contains("STOPS THE BUILD").contains("front-leg");
  }

  @Test
  void aDocumentWithAFaultIsRefusedWithFileLineAndPlace() throws IOException {
    String file = changed("\"depth\": 360", "\"depth\": \"widht\"");
    Said said = Said.by("fit", file);
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.out()).isEmpty();
    assertThat(said.err())
        .contains("chair.json:11")
        .containsOnlyOnce("/dimensions/depth")
        .contains("width");
  }

  @Test
  void aFileThatIsNotThereIsRefused() {
    Said said = Said.by("fit", folder.resolve("none.json").toString());
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.err()).contains("no such file");
  }

  @Test
  void theJsonReportFollowsItsSchema() {
    Said said = Said.by("fit", STOOL, "--json", "--variant", "high");
    assertThat(said.code()).isZero();
    assertThat(Schemas.problems("fit-report-1.schema.json", said.out())).isEmpty();
    assertThat(said.out()).contains("\"variant\" : \"high\"");
  }

  @Test
  void theJsonRefusalFollowsItsSchema() {
    Said said = Said.by("fit", STOOL, "--json", "--variant", "hihg");
    assertThat(said.code()).isEqualTo(3);
    assertThat(Schemas.problems("problems-1.schema.json", said.out())).isEmpty();
    assertThat(said.out()).contains("\"nearest\" : \"high\"");
  }

  @Test
  void theSameQuestionGetsTheSameAnswerToTheByte() {
    assertThat(Said.by("fit", STOOL, "--json")).isEqualTo(Said.by("fit", STOOL, "--json"));
    assertThat(Said.by("fit", STOOL)).isEqualTo(Said.by("fit", STOOL));
  }

  @Test
  void lengthsComeInTheUnitAskedFor() {
    // 6.9 mm of wall is 0.2717 in: 17/64 = 0.2656 with 0.006 over, 1/4 with 0.022 over.
    assertThat(Said.by("fit", STOOL).out()).contains("wall      6.9 mm");
    // Findings are told in the unit that is asked for, volumes too.
    String[] notched = {"fit", "models/orchard-side-chair.json", "--variant", "tight notch"};
    String inches = Said.by(notched).out();
    assertThat(inches).contains(" in³").doesNotContain("cm³").doesNotContain(" mm");
    String[] metric = Arrays.copyOf(notched, 6);
    metric[4] = "--units";
    metric[5] = "mm";
    String mm = Said.by(metric).out();
    assertThat(mm).contains(" cm³").doesNotContain(" in³").doesNotContainPattern("\\d/\\d+ in\\b");
    assertThat(Said.by("fit", STOOL, "--units", "in").out()).contains("17/64 in (+0.006)");
    assertThat(Said.by("fit", STOOL, "--units", "in", "--fractions", "16").out())
        .contains("1/4 in (+0.022)");
    assertThat(Said.by("fit", STOOL, "--units", "in", "--decimals").out()).contains("0.272 in");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "fti x.json",
        "fit",
        "fit models/low-stool.json --vareant high",
        "fit models/low-stool.json --units cm",
        "fit models/low-stool.json --fractions 7",
        "fit models/low-stool.json --kernel wood",
        "fit models/low-stool.json extra",
        "jigs models/low-stool.json --kind hammer",
        "jigs models/low-stool.json --joint nowhere",
        "solids models/low-stool.json --format obj",
        "solids models/low-stool.json --format 3mf --ascii",
        "picture models/low-stool.json --view sideways",
        "picture models/low-stool.json --size 12",
        "picture models/low-stool.json --size 99999x3"
      })
  void wrongUsageEndsWithTwoAndOneLine(String line) {
    Said said = Said.by(line.isEmpty() ? new String[0] : line.split(" "));
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().lines()).hasSize(1).allMatch(l -> l.startsWith("dryfit: "));
  }

  @Test
  void theSecondOpinionStandsBesideTheReportAndDoesNotChangeIt() {
    Said said = Said.by("fit", STOOL, "--second-opinion", "--json");
    assertThat(said.code()).isZero();
    assertThat(said.out()).isEqualTo(Said.by("fit", STOOL, "--json").out());
    assertThat(said.err().lines())
        .singleElement()
        .asString()
        .isEqualTo(
            "second opinion: jcsg agrees with exact on the volume, shells and holes of all 11"
                + " parts");
    assertThat(Said.by("fit", STOOL, "--second-opinion", "--kernel", "jcsg").err())
        .startsWith("second opinion: exact agrees with jcsg");
  }

  @Test
  void aCommandThatThereIsNotIsAnsweredWithThoseThatThereAre() {
    assertThat(Said.by("frobnicate", "x").err())
        .contains("there is no command 'frobnicate'")
        .contains("fit, assemble, angles");
  }

  @ParameterizedTest
  @ValueSource(strings = {"fit", "assemble", "compare", "boards"})
  void aRefusalIsJsonWhereJsonWasAskedFor(String command) {
    Said said = Said.by(command, "none.json", "--json");
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.err()).isEmpty();
    assertThat(Schemas.problems("problems-1.schema.json", said.out())).isEmpty();
  }

  @Test
  void aDayThatThereIsNotIsTheCommandsFaultNotTheDocuments() {
    Said said =
        Said.by(
            "measure",
            STOOL,
            "--part",
            "front-rail",
            "--what",
            "width",
            "--value",
            "60 mm",
            "--on",
            "2026-13-45");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("--on is a day").contains("2026-13-45");
  }

  @Test
  void aSlipInAnOptionGetsTheNearestOne() {
    assertThat(Said.by("fit", STOOL, "--jsn").err()).contains("do you mean --json?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "fit",
        "assemble",
        "angles",
        "solids",
        "picture",
        "variants",
        "compare",
        "sweep",
        "spread",
        "steps",
        "jigs",
        "boards",
        "window"
      })
  void helpIsThereForEveryCommandWithinEightyColumns(String command) {
    Said said = command.isEmpty() ? Said.by("--help") : Said.by(command, "--help");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("Example").contains("models/");
    assertThat(said.out().lines()).allMatch(l -> l.length() <= 80);
  }

  @Test
  void theVersionIsThatOfTheBuild() throws IOException {
    Said said = Said.by("--version");
    assertThat(said.out()).isEqualTo("dryfit " + Main.VERSION + System.lineSeparator());
    assertThat(Files.readString(Path.of("pom.xml")))
        .contains("<artifactId>dryfit</artifactId>\n  <version>" + Main.VERSION + "</version>");
  }

  @Test
  void stepsTellEveryPartOnceAndFitTheTerminal() {
    Said said = Said.by("steps", "models/kiln-stool.json");
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("back-leg right (the other one mirrored)")
        .contains("Cut the foot, 14.04° off square (75.96° from the face)")
        .contains("in a V-shaped cradle");
    assertThat(said.out().lines()).allMatch(line -> line.length() <= 80);
    assertThat(Said.by("steps", "models/no-such.json").code()).isEqualTo(3);
  }

  @Test
  void variantsAreListedOneALine() {
    assertThat(Said.by("variants", STOOL).out().lines()).containsExactly("as drawn", "high");
  }

  @Test
  void solidsAreListedWithTheirSizeInBothUnits() throws IOException {
    Said said = Said.by("solids", STOOL, "--to", folder.toString());
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("front-leg-left.stl  440.0 x 50.0 x 50.0 mm  (17.32 x 1.97 x 1.97 in)")
        .contains("assembled.stl");
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files).hasSize(12).allMatch(f -> f.toString().endsWith(".stl"));
    }
    assertThat(said.out().lines()).hasSize(12);
  }

  @Test
  void solidsComeInTheFormatAskedFor() throws IOException {
    for (String[] format : new String[][] {{"3mf", ".3mf"}, {"gltf", ".glb"}}) {
      Path to = folder.resolve(format[0]);
      Said said = Said.by("solids", STOOL, "--format", format[0], "--to", to.toString());
      assertThat(said.code()).isZero();
      try (Stream<Path> files = Files.list(to)) {
        assertThat(files).hasSize(12).allMatch(f -> f.toString().endsWith(format[1]));
      }
      assertThat(said.out()).contains("440.0 x 50.0 x 50.0 mm");
    }
  }

  @Test
  void jigsAreWrittenAsStlAndAs3mfAndWhatIsNotMadeIsExplained() {
    Path to = folder.resolve("jigs");
    Said said =
        Said.by(
            "jigs",
            STOOL,
            "--joint",
            "front rail to leg",
            "--kind",
            "depth-gauge",
            "--to",
            to.toString());
    assertThat(said.code()).isZero();
    assertThat(to.resolve("depth-gauge-front-rail-to-leg-right.stl")).isNotEmptyFile();
    assertThat(to.resolve("depth-gauge-front-rail-to-leg-left.3mf")).isNotEmptyFile();
    assertThat(said.out()).contains("the tongue is 27.00 mm along the hole");
    Said none = Said.by("jigs", STOOL, "--kind", "bevel-setter", "--to", to.toString());
    assertThat(none.code()).isZero();
    assertThat(none.out()).contains("no jig here, because both angles are square");
  }

  @Test
  void aPictureIsDrawnWhereAskedFor() {
    Path png = folder.resolve("deep/stool.png");
    Said said =
        Said.by("picture", STOOL, "--size", "160x120", "--findings", "--to", png.toString());
    assertThat(said.code()).isZero();
    assertThat(png).isNotEmptyFile();
    assertThat(said.out()).contains("160 x 120 pixels");
  }

  @Test
  void aPlaceThatCannotBeWrittenToIsSaidInOneLine() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "a file");
    Said said = Said.by("picture", STOOL, "--size", "160x120", "--to", file + "/stool.png");
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err().lines()).hasSize(1);
    assertThat(said.err()).contains("not written");
  }

  @Test
  void aFaultOfOursIsOneLineAndKeepsItsDetails() throws IOException {
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    PrintStream broken =
        new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8) {
          @Override
          public void print(String s) {
            throw new IllegalStateException("the paper is torn");
          }
        };
    int code =
        Main.run(
            new String[] {"fit", STOOL},
            broken,
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false);
    String line = err.toString(StandardCharsets.UTF_8);
    assertThat(code).isEqualTo(1);
    assertThat(line.lines()).hasSize(1);
    assertThat(line).contains("our fault").contains("the paper is torn").doesNotContain("\tat ");
    Path folder = Path.of(line.substring(line.indexOf("details are in ") + 15).strip());
    Path details = folder.resolve(KeepFailure.DETAILS);
    assertThat(details).content().contains("IllegalStateException").contains("fit " + STOOL);
    Files.delete(details);
    Files.delete(folder);
  }

  @Test
  void theLastLineCountsAsTheListDoesAndSaysHowManyThatIsWithBothHands() {
    Said said = Said.by("fit", "models/orchard-side-chair.json");
    assertThat(said.out()).contains("\n  2  The mortises").doesNotContain("\n  3  ");
    assertThat(said.lastLine()).endsWith("; 2 to know (4 counting both hands)");
  }

  @Test
  void anInchChairIsToldInInchesWithoutSignsOfNothing() {
    Said said = Said.by("fit", "models/orchard-side-chair.json");
    assertThat(said.out())
        .contains("glue      3.97 in² long grain")
        .contains("1 23/64 in over 12 in")
        .contains("Inches to the nearest 1/64; (−0.004) behind one is")
        .doesNotContain("cm²", "(+0.000)", "(−0.000)", "\n  compound:");
    assertThat(Said.by("fit", STOOL).out()).contains(" cm² long grain").doesNotContain("in²");
  }

  @Test
  void anglesAreToldWhetherOrNotTheChairFits() {
    Said said =
        Said.by("angles", "models/kiln-stool.json", "--variant", "thin seat", "--units", "in");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("angles to set out").contains(" in over 12 in");
    assertThat(Said.by("angles", STOOL, "--units", "cm").code()).isEqualTo(2);
  }
}
