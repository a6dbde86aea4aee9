package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import dryfit.app.StartSize.Which;
import dryfit.measure.Length.Unit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class StartChairTest {
  @TempDir Path folder;

  private static StartChair taken(StartChair.Answer answer) {
    return assertInstanceOf(StartChair.Taken.class, answer).chair();
  }

  private static String why(StartChair.Answer answer) {
    return assertInstanceOf(StartChair.NotTaken.class, answer).why();
  }

  private static double mm(StartChair chair, Which which) {
    return chair.sizes().stream().filter(s -> s.which() == which).findFirst().orElseThrow().mm();
  }

  /** 17.5 in is 444.5 mm: the inch is 25.4 mm exactly (international yard and pound, 1959). */
  @ParameterizedTest
  @CsvSource({
    "MM, 440, 440",
    "MM, 440 mm, 440",
    "MM, 44 cm, 440",
    "MM, 17 1/2 in, 444.5",
    "IN, 17 1/2, 444.5",
    "IN, 17-1/2 in, 444.5",
    "IN, 17.5, 444.5",
    "IN, 17 1/2\", 444.5",
    "IN, ' 440 mm ', 440",
    "IN, 20, 508",
    "IN, 15.5, 393.7"
  })
  void lengthsAreTakenAsAMakerWritesThem(Unit unit, String written, double mm) {
    StartChair chair = StartChair.of(Family.SIDE_CHAIR, unit);
    assertThat(mm(taken(chair.withSize(Which.SEAT_HEIGHT, written)), Which.SEAT_HEIGHT))
        .isCloseTo(mm, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "wide", "17,5", "-440", "0", "1e9", "440 kg", "NaN", "22 deg", "seatTop"})
  void whatIsNoLengthOrNoSeatHeightIsNotTaken(String written) {
    StartChair chair = StartChair.of(Family.STOOL, Unit.MM);
    assertThat(why(chair.withSize(Which.SEAT_HEIGHT, written))).isNotBlank().doesNotContain("\n");
  }

  @Test
  void aLengthInTheWrongUnitIsToldAsSuch() {
    StartChair chair = StartChair.of(Family.SIDE_CHAIR, Unit.IN);
    assertThat(why(chair.withSize(Which.SEAT_HEIGHT, "440")))
        .isEqualTo(
            "440 in is too much; the seat height of this side-chair may be 15 1/2 in to 20 in"
                + " (if you mean 440 mm, write the unit)");
  }

  @Test
  void onlyTheAnsweredLinesOfThePatternChange() {
    StartChair pattern = StartChair.of(Family.ARMCHAIR, Unit.MM);
    StartChair chair = taken(pattern.withName("A \"reading\" chair"));
    chair = taken(chair.withTimber("walnut-black"));
    chair = taken(chair.withSize(Which.ARM_HEIGHT, "8 in"));
    String[] before = pattern.document().text().split("\n");
    String[] after = chair.document().text().split("\n");
    assertThat(after).hasSameSizeAs(before);
    for (int i = 0; i < before.length; i++) {
      if (!after[i].equals(before[i])) {
        assertThat(before[i]).containsAnyOf("\"name\"", "\"timber\"", "\"armHeight\"");
      }
    }
    assertThat(chair.name()).isEqualTo("A \"reading\" chair");
    assertThat(chair.timber()).isEqualTo("walnut-black");
    assertThat(mm(chair, Which.ARM_HEIGHT)).isEqualTo(203.2);
  }

  @Test
  void armsAreAskedForOnlyWhereThereAreSome() {
    assertThat(StartChair.of(Family.ARMCHAIR, Unit.MM).sizes())
        .extracting(StartSize::which)
        .containsExactly(Which.values());
    assertThat(why(StartChair.of(Family.BENCH, Unit.MM).withSize(Which.ARM_HEIGHT, "200")))
        .isEqualTo("a bench has no arm height");
  }

  @ParameterizedTest
  @EnumSource(Family.class)
  void inchChairsHaveInchSizes(Family family) {
    for (StartSize size : StartChair.of(family, Unit.IN).sizes()) {
      assertThat(size.mm() / 25.4 * 4)
          .as(size.which().spoken())
          .isCloseTo(Math.rint(size.mm() / 25.4 * 4), within(1e-9));
    }
  }

  @ParameterizedTest
  @EnumSource(Family.class)
  void everySizeSaysWhereItComesFrom(Family family) {
    for (Unit unit : Unit.values()) {
      assertThat(StartChair.of(family, unit).sizes())
          .hasSizeGreaterThanOrEqualTo(3)
          .allSatisfy(
              s -> {
                assertThat(s.dimension().note()).contains("source");
                assertThat(s.dimension().from()).isLessThan(s.mm());
                assertThat(s.dimension().to()).isGreaterThan(s.mm());
              });
    }
  }

  @Test
  void aTimberThatIsNotInTheTableIsNotTaken() {
    assertThat(why(StartChair.of(Family.STOOL, Unit.MM).withTimber("gold")))
        .startsWith("'gold' is none of ash-white, ");
    assertThat(why(StartChair.of(Family.STOOL, Unit.MM).withName("  ")))
        .isEqualTo("a chair needs a name");
  }

  @Test
  void aFileThatStandsThereIsOnlyReplacedWhenThatIsSaid() throws IOException {
    Path file = Files.writeString(folder.resolve("mine.json"), "mine");
    StartChair chair = StartChair.of(Family.STOOL, Unit.MM);
    assertThat(chair.write(file, false).exit()).isEqualTo(Exit.USAGE);
    assertThat(file).hasContent("mine");
    assertThat(chair.write(file, true).exit()).isEqualTo(Exit.FITS);
    assertThat(file).hasContent(chair.document().text());
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void aFolderIsNotReplaced() {
    assertThat(StartChair.of(Family.STOOL, Unit.MM).write(folder, true))
        .isEqualTo(new WrittenFiles.Failed(folder, "it is a folder", Exit.USAGE));
  }
}
