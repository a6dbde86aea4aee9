package dryfit.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StartCommandTest {
  @TempDir Path folder;
  private String file;

  /** What the command printed and how it ended. */
  @BeforeEach
  void nameTheFile() {
    file = folder.resolve("chair.json").toString();
  }

  /** With a person at the terminal who types these lines and then ends. */
  private static Said typing(String lines, String... args) {
    return Said.by(Optional.of(new BufferedReader(new StringReader(lines))), args);
  }

  @ParameterizedTest
  @CsvSource({
    "stool, mm", "stool, in", "side-chair, mm", "side-chair, in",
    "armchair, mm", "armchair, in", "bench, mm", "bench, in"
  })
  void whatIsBegunFitsAtOnce(String family, String unit) {
    Said said = Said.by("start", file, "--family", family, "--unit", unit);
    assertThat(said.code()).isZero();
    assertThat(said.err()).isEmpty();
    assertThat(said.out()).contains("fit " + file).contains("picture " + file);
    Said fit = Said.by("fit", file);
    assertThat(fit.code()).isZero();
    assertThat(fit.out()).doesNotContain("LOOK AT THIS");
  }

  @Test
  void whatIsSaidStandsInTheDocument() throws IOException {
    Said said =
        Said.by(
            "start",
            file,
            "--family",
            "armchair",
            "--unit",
            "in",
            "--seat-height",
            "17 3/4",
            "--seat-width",
            "22",
            "--seat-depth",
            "42 cm",
            "--arm-height",
            "8",
            "--timber",
            "oak-white",
            "--name",
            "Reading chair");
    assertThat(said.code()).isZero();
    assertThat(said.out()).contains("Reading chair, oak-white").contains("17 3/4 in");
    assertThat(Files.readString(Path.of(file)))
        .contains("\"name\": \"Reading chair\"")
        .contains("\"timber\": \"oak-white\"")
        .contains("\"seatTop\": { \"value\": \"17 3/4 in\"")
        .contains("\"seatWidth\": { \"value\": 22,")
        .contains("\"seatDepth\": { \"value\": \"42 cm\"")
        .contains("\"armHeight\": { \"value\": 8,");
  }

  @Test
  void whereNobodyCanBeAskedTheFamilyHasToBeSaid() {
    Said said = Said.by("start", file);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("--family stool, side-chair, armchair, bench");
    assertThat(said.out()).isEmpty();
    assertThat(Path.of(file)).doesNotExist();
  }

  @ParameterizedTest
  @CsvSource({
    "--family, sofa",
    "--unit, ft",
    "--seat-height, 200",
    "--seat-height, 17.5",
    "--seat-width, wide",
    "--seat-depth, '32,5'",
    "--arm-height, 200",
    "--timber, gold",
    "--name, ''"
  })
  void whatCannotBeTakenIsToldInOneLineAndNothingIsWritten(String option, String value) {
    Said said =
        option.equals("--family")
            ? Said.by("start", file, option, value)
            : Said.by("start", file, "--family", "stool", option, value);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err().strip().lines()).hasSize(1);
    assertThat(said.err()).contains(option);
    assertThat(Path.of(file)).doesNotExist();
  }

  @Test
  void aFileThatStandsThereStays() throws IOException {
    Files.writeString(Path.of(file), "mine");
    Said said = typing("stool\n", "start", file);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.out()).isEmpty();
    assertThat(said.err()).contains("stands there already").contains("--replace");
    assertThat(Path.of(file)).hasContent("mine");
    assertThat(Said.by("start", file, "--family", "stool", "--replace").code()).isZero();
    assertThat(Files.readString(Path.of(file))).contains("dryfit-chair/1");
  }

  @Test
  void aPersonIsAskedUntilTheAnswerCanBeTaken() throws IOException {
    Said said =
        typing("throne\nstool\nfeet\nin\nPlant stand\n99\n16 1/4\n\n\ngold\nteak\n", "start", file);
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("'throne' is none of stool, ")
        .contains("'feet' is neither mm nor in")
        .contains("99 in is too much")
        .contains("'gold' is none of ");
    assertThat(Files.readString(Path.of(file)))
        .contains("\"name\": \"Plant stand\"")
        .contains("\"unit\": \"in\"")
        .contains("\"timber\": \"teak\"")
        .contains("\"seatTop\": { \"value\": \"16 1/4 in\"")
        .contains("\"seatWidth\": { \"value\": \"16 in\"");
  }

  @Test
  void aPersonIsNotAskedForWhatWasSaid() {
    Said said =
        typing(
            "\n\n\n",
            "start",
            file,
            "--family",
            "stool",
            "--unit",
            "mm",
            "--seat-height",
            "500",
            "--name",
            "Step");
    assertThat(said.code()).isZero();
    assertThat(said.out())
        .contains("seat width, ")
        .contains("seat depth, ")
        .contains("timber, ")
        .doesNotContain("what to build")
        .doesNotContain("name [")
        .doesNotContain("seat height, ");
  }

  @Test
  void aPersonWhoWantsTheUsualIsNotAsked() {
    Said said = typing("", "start", file, "--family", "bench", "--usual");
    assertThat(said.code()).isZero();
    assertThat(said.out()).doesNotContain("[");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "stool\n", "stool\nmm\n", "stool\nmm\n\n", "stool\nmm\n\n\n\n\n"})
  void whoeverStopsAnsweringGetsNoFile(String lines) {
    Said said = typing(lines, "start", file);
    assertThat(said.code()).isEqualTo(2);
    assertThat(said.err()).contains("nothing was written");
    assertThat(Path.of(file)).doesNotExist();
  }
}
