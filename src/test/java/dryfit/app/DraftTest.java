package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.Problem;
import dryfit.document.Reading;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DraftTest {
  private final Draft draft = Draft.begun("new chair", Benches.TEXT);

  private static List<String> codes(Reading<Document> reading) {
    return ((Reading.Refused<Document>) reading).problems().stream().map(Problem::code).toList();
  }

  @Test
  void aDimensionChangesAndEveryOtherLetterStays() {
    assertThat(draft.dimension("height", "450")).isInstanceOf(Reading.Accepted.class);
    assertThat(draft.now().text())
        .isEqualTo(Benches.TEXT.replace("\"value\": 440", "\"value\": 450"));
  }

  @Test
  void aDimensionTakesWhatAMakerWrites() {
    draft.dimension("width", "17 3/8 in");
    assertThat(draft.now().text()).contains("\"width\": \"17 3/8 in\",");
    Design design =
        ((Reading.Accepted<Design>) draft.now().document().orElseThrow().design(Design.AS_DRAWN))
            .value();
    // 17.375 inches of 25.4 mm.
    assertThat(design.dimensions().get(1).value().value()).isEqualTo(441.325);
  }

  @Test
  void aBadEntryIsRefusedAndTheDraftStaysAsItWas() {
    Version before = draft.now();
    assertThat(codes(draft.dimension("height", "900"))).containsExactly("out-of-range");
    assertThat(codes(draft.dimension("height", "tall"))).containsExactly("unknown-name");
    assertThat(codes(draft.dimension("hight", "440"))).containsExactly("unknown-name");
    assertThat(draft.now()).isSameAs(before);
    assertThat(draft.undoable()).isEmpty();
  }

  @Test
  void aDimensionIsWrittenWhereTheVariantInForceWritesIt() {
    draft.choose("low");
    draft.dimension("height", "390");
    draft.dimension("width", "330");
    assertThat(draft.now().text())
        .isEqualTo(
            Benches.TEXT
                .replace("\"height\": 400", "\"height\": 390")
                .replace("\"width\": 320", "\"width\": 330"));
  }

  @Test
  void aVariantCanBeGivenAValueOfItsOwn() {
    draft.choose("low");
    draft.dimensionHere("width", "300");
    assertThat(draft.now().text())
        .isEqualTo(Benches.TEXT.replace("\"height\": 400 }", "\"height\": 400, \"width\": 300 }"));
  }

  @Test
  void aNewVariantIsChosenAndTakenBackWithItsChoice() {
    draft.choose("low");
    draft.addVariant("narrow", "for a \"small\" hall");
    assertThat(draft.now().variant()).isEqualTo("narrow");
    assertThat(draft.now().document().orElseThrow().variants()).containsExactly("low", "narrow");
    draft.undo();
    assertThat(draft.now().variant()).isEqualTo("low");
    assertThat(draft.now().text()).isEqualTo(Benches.TEXT);
  }

  @Test
  void aWaiverIsAddedBehindTheOthersOrAsTheFirst() {
    draft.waive("parts-collide", "", "post-left", "it is \\ meant");
    draft.waive("thin-wall", "", "", "tried it");
    assertThat(draft.now().text())
        .contains(
            "\"waived\": [ { \"check\": \"parts-collide\", \"part\": \"post-left\", \"because\": \"it is"
                + " \\\\ meant\" }, { \"check\": \"thin-wall\", \"because\": \"tried it\" } ]");
    assertThat(draft.now().document().orElseThrow().has("/waived/1")).isTrue();
  }

  @Test
  void everyKindOfChangeIsTakenBackAndDoneAgain() {
    List<String> texts = new ArrayList<>();
    List<Runnable> changes =
        List.of(
            () -> draft.dimension("height", "450"),
            () -> draft.choose("low"),
            () -> draft.addVariant("wide", ""),
            () -> draft.dimensionHere("width", "380"),
            () -> draft.waive("thin-wall", "", "", "tried it"),
            () -> draft.text("write", "{ unsound"),
            () -> draft.text("write", Benches.TEXT));
    texts.add(draft.now().variant() + draft.now().text());
    for (Runnable change : changes) {
      change.run();
      texts.add(draft.now().variant() + draft.now().text());
    }
    for (int i = changes.size(); i > 0; i--) {
      assertThat(draft.undo()).isTrue();
      assertThat(draft.now().variant() + draft.now().text()).isEqualTo(texts.get(i - 1));
    }
    assertThat(draft.undo()).isFalse();
    for (int i = 1; i <= changes.size(); i++) {
      assertThat(draft.redo()).isTrue();
      assertThat(draft.now().variant() + draft.now().text()).isEqualTo(texts.get(i));
    }
    assertThat(draft.redo()).isFalse();
  }

  @Test
  void whatWasTakenBackIsGoneAfterAnotherChange() {
    draft.dimension("height", "450");
    draft.undo();
    draft.dimension("height", "460");
    assertThat(draft.redoable()).isEmpty();
    assertThat(draft.undoable()).contains("height to 460");
  }

  @Test
  void aDragIsOneStep() {
    Draft.Drag drag = draft.drag();
    for (int height = 441; height <= 470; height++) {
      draft.dimension("height", Integer.toString(height));
    }
    drag.close();
    assertThat(draft.now().text()).contains("\"value\": 470");
    assertThat(draft.undo()).isTrue();
    assertThat(draft.now().text()).isEqualTo(Benches.TEXT);
    assertThat(draft.undo()).isFalse();
  }

  @Test
  void aDragThatEndsWhereItBeganIsNoStepAndACancelledOneLeavesNoTrace() {
    Draft.Drag first = draft.drag();
    draft.dimension("height", "470");
    draft.dimension("height", "440");
    first.close();
    Draft.Drag second = draft.drag();
    draft.dimension("height", "470");
    second.cancel();
    assertThat(draft.now().text()).isEqualTo(Benches.TEXT);
    assertThat(draft.undoable()).isEmpty();
  }

  @Test
  void takingBackInTheMiddleOfADragTakesTheDragBack() {
    Draft.Drag drag = draft.drag();
    draft.dimension("height", "470");
    draft.undo();
    drag.close();
    assertThat(draft.now().text()).isEqualTo(Benches.TEXT);
    assertThat(draft.redoable()).contains("height to 470");
  }

  @Test
  void listenersHearOfEveryChangeWithARisingNumber() {
    List<Long> heard = new ArrayList<>();
    Runnable stop = draft.whenChanged(version -> heard.add(version.number()));
    draft.dimension("height", "450");
    draft.choose("low");
    draft.undo();
    stop.run();
    draft.undo();
    assertThat(heard).containsExactly(2L, 3L, 4L);
  }

  @Test
  void aVariantThatTheTextNoLongerHasIsNoLongerChosen() {
    draft.choose("low");
    draft.text("write", Benches.TEXT.replace("\"low\"", "\"short\""));
    assertThat(draft.now().variant()).isEqualTo(Design.AS_DRAWN);
    assertThat(draft.choose("low")).isFalse();
  }

  @Test
  void anUnsoundTextKeepsItsProblemsAndTakesNoOtherChange() {
    draft.text("write", "{ }");
    String before = draft.now().text();
    assertThat(codes(draft.dimension("height", "450"))).isNotEmpty();
    assertThat(draft.now().text()).isEqualTo(before);
  }

  @Test
  void theOldestStepsAreForgottenBeforeMemoryIsFull() {
    History history = new History();
    String large = "x".repeat(1_000_000);
    for (int i = 0; i < 100; i++) {
      history.add(
          new History.Step("s", new History.Moment(large, ""), new History.Moment(large, "")));
    }
    int steps = 0;
    while (history.undo().isPresent()) {
      steps++;
    }
    assertThat(steps).isEqualTo(History.MOST / large.length());
  }
}
