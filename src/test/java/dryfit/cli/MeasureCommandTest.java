package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureCommandTest {
  @TempDir Path folder;
  private Path stool;

  @BeforeEach
  void copyTheStool() throws IOException {
    stool = Files.copy(Path.of("models/low-stool.json"), folder.resolve("stool.json"));
  }

  private Said run(String... more) {
    List<String> args = new ArrayList<>(List.of("measure", stool.toString()));
    args.addAll(List.of(more));
    return Said.by(args.toArray(String[]::new));
  }

  @Test
  void aMeasurementIsAddedAndEveryOtherLetterStays() throws IOException {
    String before = Files.readString(stool);
    Said first =
        run(
            "--part",
            "front-rail",
            "--what",
            "thickness",
            "--value",
            "21.4 mm",
            "--on",
            "2026-03-02");
    assertThat(first.code()).isZero();
    assertThat(first.out()).contains("too small by 0.60 mm").endsWith("in 1 of 1\n");
    run(
        "--joint",
        "front rail to leg",
        "--what",
        "tenon thickness",
        "--value",
        "8 mm",
        "--on",
        "2026-03-03");
    String after = Files.readString(stool);
    int end = before.lastIndexOf('}');
    assertThat(after).startsWith(before.substring(0, end).stripTrailing());
    assertThat(after)
        .contains("{ \"part\": \"front-rail\", \"what\": \"thickness\", \"value\": \"21.4 mm\"")
        .contains("\"on\": \"2026-03-03\" }");
    assertThat(run().out()).contains("front rail to leg: tenon thickness").endsWith("in 1 of 2\n");
  }

  @Test
  void whatTheDocumentCannotHaveLeavesItAlone() throws IOException {
    byte[] before = Files.readAllBytes(stool);
    Said said =
        run("--part", "arm", "--what", "thickness", "--value", "21.4 mm", "--on", "2026-03-02");
    assertThat(said.code()).isEqualTo(3);
    assertThat(said.err()).contains("arm");
    assertThat(
            run("--part", "front-rail", "--what", "colour", "--value", "1", "--on", "2026-03-02")
                .code())
        .isEqualTo(2);
    assertThat(run("--part", "front-rail").code()).isEqualTo(2);
    assertThat(Files.readAllBytes(stool)).isEqualTo(before);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--what thickness --value 21mm --on 2026-03-02 | --part, --joint or --frame, with its name",
        "--part front-rail --joint x --what width --value 21mm --on 2026-03-02 | of one thing",
        "--part front-rail --value 21mm --on 2026-03-02 | --what is missing: which size was",
        "--part front-rail --what thick --value 21mm --on 2026-03-02 | not 'thick'",
        "--part front-rail --what width --on 2026-03-02 | --value is missing: what was found",
        "--part front-rail --what width --value 21mm | --on is missing: the day",
        "--part front-rail --what width --value 21mm --on 2026-3-2 | not '2026-3-2'",
        "--part side-rail --hand left --what width --value 21mm --on 2026-03-02 | 'side-rail left'",
        "--joint j --hand lft --what proud --value 1mm --on 2026-03-02 | left or right, not 'lft'",
        "--joint j --at top --what proud --value 1mm --on 2026-03-02 | proud has no such place",
        "--joint j --at up --what shoulder_gap --value 1mm --on 2026-03-02 | not 'up'; without it"
      })
  void eachSlipHasAMessageOfItsOwn(String args, String message) throws IOException {
    byte[] before = Files.readAllBytes(stool);
    Said said =
        run(Arrays.stream(args.split(" ")).map(a -> a.replace('_', ' ')).toArray(String[]::new));
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains(message);
    assertThat(said.err().lines()).hasSize(1);
    assertThat(Files.readAllBytes(stool)).isEqualTo(before);
  }

  @Test
  void withoutAnyMeasurementThereIsNothingToTell() {
    assertThat(run().out()).isEqualTo("NOTHING MEASURED\n");
  }

  @Test
  void aGapAtOneEdgeOfOneHandIsFollowedRoundItsFrameInTextAndInJson() {
    Said said =
        run(
            "--joint",
            "front rail to leg",
            "--hand",
            "left",
            "--what",
            "shoulder gap",
            "--at",
            "top",
            "--value",
            "0.8 mm",
            "--on",
            "2026-03-09");
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("WHO HOLDS OPEN front rail to leg, left, at the top, by 0.80 mm")
        .contains("left to explain: 0.80 mm");
    assertThat(run("--json").out())
        .contains("\"format\" : \"dryfit-measured/1\"", "\"unexplained\" : 0.8");
  }

  @Test
  void whatIsNoSuchSizeIsRefusedAndTheFileStays() throws IOException {
    String before = Files.readString(stool);
    for (String value : List.of("17 deg", "-17 mm", "0 mm")) {
      Said said =
          run("--part", "front-rail", "--what", "length", "--value", value, "--on", "2026-03-02");
      assertThat(said.code()).isNotZero();
      assertThat(said.err()).contains("length");
      assertThat(Files.readString(stool)).isEqualTo(before);
    }
    Said side =
        run(
            "--joint",
            "front rail to leg",
            "--at",
            "top",
            "--what",
            "tenon length",
            "--value",
            "24 mm",
            "--on",
            "2026-03-02");
    assertThat(side.code()).isNotZero();
    assertThat(Files.readString(stool)).isEqualTo(before);
  }

  @Test
  void aLeanGapesOverTheSideOfTheShoulderThatItTurns() {
    // The rail is 60 high along the leg and 22 thick across it: 60 tan 1° and 22 tan 1°.
    for (String[] one :
        new String[][] {
          {"lean along", "1.05 mm over 60.0 mm"}, {"lean across", "0.38 mm over 22.0 mm"}
        }) {
      Said said =
          run(
              "--joint",
              "front rail to leg",
              "--hand",
              "left",
              "--what",
              one[0],
              "--value",
              "1 deg",
              "--on",
              "2026-03-02");
      assertThat(said.out().replaceAll("\\s+", " ")).contains(one[1]);
    }
  }
}
