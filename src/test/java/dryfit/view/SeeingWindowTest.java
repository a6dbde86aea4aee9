package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Joint;
import dryfit.export.Freeing;
import dryfit.export.TextStyle;
import dryfit.export.picture.Camera;
import dryfit.export.picture.Figure;
import dryfit.export.picture.View;
import dryfit.fit.Finding;
import dryfit.fit.JointFit;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Onlooker;
import dryfit.geometry.Box;
import dryfit.geometry.MassProperties;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.scene.control.Button;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.shape.Circle;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** A slice goes through what is taken up; what does not come apart is told. */
class SeeingWindowTest extends WindowTest {

  private static double slider(FxRobot robot, String id) {
    return OnScreen.ask(() -> robot.lookup(id).<Slider>query().getValue());
  }

  private static void slide(FxRobot robot, String id, double to) {
    OnScreen.ask(
        () -> {
          robot.lookup(id).<Slider>query().setValue(to);
          return null;
        });
  }

  private void variant(String name) {
    OnScreen.ask(
        () -> {
          screen.window.session().choose(name);
          return null;
        });
    screen.settled();
  }

  @Test
  void aClashBehindOtherWoodIsSeenAtOnce(FxRobot robot) throws IOException {
    Path chair =
        Files.writeString(
            state.resolve("behind.json"),
            """
            {"format": "dryfit-chair/1", "name": "Behind", "about": "Demo data, invented.",
             "unit": "mm", "timber": "ash-white",
             "parts": {
              "wall": {"form": "straight", "from": [600, 300, 400], "to": [-600, 300, 400],
                "section": [800, 20]},
              "low": {"form": "straight", "from": [100, 400, 400], "to": [-100, 400, 400],
                "section": [30, 30]},
              "upright": {"form": "straight", "from": [0, 400, 300], "to": [0, 400, 500],
                "section": [30, 30]},
              "near": {"form": "straight", "from": [100, 200, 400], "to": [-100, 200, 400],
                "section": [30, 30]},
              "post": {"form": "straight", "from": [0, 200, 300], "to": [0, 200, 500],
                "section": [30, 30]}},
             "joints": {}}
            """);
    screen.open(chair);
    ToggleButton fade = robot.lookup("#fade-the-rest").query();
    take(robot, "low");
    assertThat(fade.isSelected()).isTrue();
    assertThat(screen.glowing()).isGreaterThan(100);
    Circle ring = robot.lookup("#ring").query();
    assertThat(ring.isVisible()).isTrue();
    Vec3 at =
        screen.shown().report().findings().stream()
            .filter(f -> f.parts().contains("low"))
            .findFirst()
            .orElseThrow()
            .at();
    ChairView view = screen.window.chair();
    Camera.Sheet sheet =
        screen.orbit().camera().sheet((int) view.getWidth(), (int) view.getHeight());
    assertThat(ring.getCenterX()).isCloseTo(sheet.x(at), within(1.0));
    assertThat(ring.getCenterY()).isCloseTo(sheet.y(at), within(1.0));
    screen.photograph("54-behind-other-wood");
    take(robot, "near");
    assertThat(fade.isSelected()).as("nothing is before it").isFalse();
    assertThat(screen.glowing()).isGreaterThan(100);
    // Back to the whole chair, what faded by itself has come back.
    take(robot, "low");
    robot.clickOn("#view-front");
    screen.landed();
    assertThat(fade.isSelected()).isFalse();
    assertThat(ring.isVisible()).isFalse();
    // What the maker asked for stays.
    robot.clickOn(fade);
    take(robot, "low");
    take(robot, "near");
    assertThat(fade.isSelected()).isTrue();
  }

  @Test
  void aFindingInsideItsOwnWoodIsSeenThroughIt(FxRobot robot) throws IOException {
    Path chair =
        Files.writeString(
            state.resolve("thin.json"),
            """
            {"format": "dryfit-chair/1", "name": "Thin", "about": "Demo data, invented.",
             "unit": "mm", "timber": "ash-white", "fit": {"least-wall": 12},
             "parts": {
              "post": {"form": "straight", "from": [0, 0, 0], "to": [0, 0, 400],
                "section": [40, 40]},
              "bar": {"form": "straight", "from": [0, 20, 300], "to": [0, 300, 300],
                "section": [60, 30]}},
             "joints": {"bar": {"tenon": "bar start", "into": "post", "thickness": 20,
               "width": 40, "length": 25}}}
            """);
    screen.open(chair);
    ToggleButton through = robot.lookup("#see-through").query();
    assertThat(screen.shown().report().findings()).anyMatch(f -> f.check().equals("thin-wall"));
    take(robot, "post");
    assertThat(through.isSelected()).isTrue();
    assertThat(robot.lookup(".wall-value").queryAll()).as("the wood that is left").isNotEmpty();
    screen.photograph("56-inside-its-wood");
    robot.clickOn("#view-front");
    screen.landed();
    assertThat(through.isSelected()).as("the whole chair again").isFalse();
    robot.clickOn(through);
    take(robot, "post");
    robot.clickOn("#view-front");
    screen.landed();
    assertThat(through.isSelected()).as("what the maker asked for stays").isTrue();
  }

  @Test
  void aSitterNeverStandsBeforeTheChair(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#sitter");
    screen.landed();
    for (View view : List.of(View.THREE_QUARTER, View.SIDE, View.FRONT, View.BACK)) {
      run(() -> screen.window.chair().go(view));
      screen.landed();
      Scale.Sits sits = (Scale.Sits) OnScreen.ask(() -> screen.window.chair().look().get().scale());
      Box chair = screen.shown().bounds();
      double side = Limb.of(sits, chair).get(0).middle().x();
      Vec3 eye = screen.orbit().camera().eye();
      boolean between = side > chair.high().x() ? eye.x() > side : eye.x() < side;
      boolean sideways = Math.abs(screen.orbit().camera().forward().x()) > 0.8;
      assertThat(between && sideways).as(view.name()).isFalse();
      assertThat(screen.wood()).as(view.name()).isGreaterThan(1000);
      assertThat(OnScreen.ask(() -> screen.window.chair().seeAllThatIsCutOff()))
          .as(view.name() + " shows all of it")
          .isEmpty();
      screen.photograph("57-sitter-" + view.name().toLowerCase(Locale.ROOT));
    }
  }

  /** Takes up the finding of a part. */
  private void take(FxRobot robot, String part) {
    Button ticket =
        OnScreen.ask(
            () ->
                (Button)
                    robot.lookup(".ticket").queryAll().stream()
                        .filter(
                            n -> n.getUserData() instanceof Finding f && f.parts().contains(part))
                        .findFirst()
                        .orElseThrow());
    robot.clickOn(ticket);
    screen.landed();
    screen.settled();
  }

  @Test
  void theSliceBeginsAtTheFindingAndTheSliderMovesIt(FxRobot robot) {
    screen.open(HARBOUR);
    variant("deep tenons");
    Finding meet =
        screen.shown().report().findings().stream()
            .filter(f -> f.joints().size() == 2)
            .findFirst()
            .orElseThrow();
    Button ticket =
        OnScreen.ask(
            () ->
                (Button)
                    robot.lookup(".ticket").queryAll().stream()
                        .filter(n -> meet.equals(n.getUserData()))
                        .findFirst()
                        .orElseThrow());
    robot.clickOn(ticket);
    screen.landed();
    robot.clickOn("#slice");
    screen.landed();
    screen.settled();
    Box box = screen.shown().bounds();
    assertThat(slider(robot, "#slice-at"))
        .as("two level tenons that meet are seen from above")
        .isCloseTo((meet.at().z() - box.low().z()) / box.size().z(), within(1e-9));
    assertThat(highestCut()).isCloseTo(meet.at().z(), within(0.01));
    assertThat(screen.orbit().camera().forward().z()).as("looks down on it").isLessThan(-0.29);
    for (int tone = 0; tone < 2; tone++) {
      assertThat(screen.freshlySawn(tone))
          .as("pixels of cut faces in tone " + tone)
          .isGreaterThan(300);
    }
    assertThat(sawnLines()).as("lines of ink round the cut faces").isGreaterThan(20);
    screen.photograph("40-slice-at-finding");
    slide(robot, "#slice-at", 0.2);
    screen.settled();
    assertThat(highestCut()).isCloseTo(box.low().z() + 0.2 * box.size().z(), within(0.01));

    robot.clickOn("#slice-from-the-front");
    screen.landed();
    screen.settled();
    assertThat(slider(robot, "#slice-at"))
        .isCloseTo((meet.at().y() - box.low().y()) / box.size().y(), within(1e-9));
    screen.photograph("41-slice-from-the-front");
  }

  /** How high the cut faces are that the picture shows, mm; all of one level slice are alike. */
  private double highestCut() {
    return OnScreen.ask(
        () -> {
          List<Cutaway> cuts = screen.window.chair().look().get().cut().orElseThrow().parts();
          double high = Double.NEGATIVE_INFINITY;
          for (int i = 0; i < cuts.size(); i++) {
            float[] xyz = cuts.get(i).cut().getPoints().toArray(null);
            for (int p = 0; p < xyz.length; p += 3) {
              Vec3 at = new Vec3(xyz[p], xyz[p + 1], xyz[p + 2]);
              high = Math.max(high, screen.shown().parts().get(i).frame().place(at).z());
            }
          }
          return high;
        });
  }

  /** How many lines of ink lie in the plane of a level slice. */
  private long sawnLines() {
    double height = highestCut();
    return OnScreen.ask(
        () -> {
          List<Cutaway> cuts = screen.window.chair().look().get().cut().orElseThrow().parts();
          long lines = 0;
          for (int i = 0; i < cuts.size(); i++) {
            float[] xyz = cuts.get(i).creases().getPoints().toArray(null);
            for (int p = 0; p + 5 < xyz.length; p += 6) {
              Vec3 a = new Vec3(xyz[p], xyz[p + 1], xyz[p + 2]);
              Vec3 b = new Vec3(xyz[p + 3], xyz[p + 4], xyz[p + 5]);
              double away =
                  Math.max(
                      Math.abs(screen.shown().parts().get(i).frame().place(a).z() - height),
                      Math.abs(screen.shown().parts().get(i).frame().place(b).z() - height));
              lines += away < 0.01 ? 1 : 0;
            }
          }
          return lines;
        });
  }

  @Test
  void aJointOnTheLeftIsSlicedThroughItsMiddleAndSeenFromTheLeft(FxRobot robot) {
    screen.open(HARBOUR);
    robot.clickOn("#slice");
    robot.clickOn("#slice-from-the-side");
    screen.settled();
    Joint joint =
        screen.shown().report().joints().stream()
            .map(JointFit::joint)
            .filter(j -> j.label().contains("side rail") && j.label().endsWith("left"))
            .findFirst()
            .orElseThrow();
    OnScreen.ask(
        () -> {
          screen.window.open(joint.label());
          return null;
        });
    screen.landed();
    robot.clickOn("#slice-from-the-side");
    screen.landed();
    screen.settled();
    Box box = screen.shown().bounds();
    Vec3 middle = joint.tenons().get(0).at().plus(joint.entry().times(joint.length() / 2));
    assertThat(slider(robot, "#slice-at"))
        .isCloseTo((middle.x() - box.low().x()) / box.size().x(), within(1e-9));
    assertThat(screen.orbit().camera().forward().x()).as("looks to the right").isGreaterThan(0.29);
    screen.photograph("42-slice-joint-left");
  }

  @Test
  void whatLocksIsToldAndTheRestComesApart(FxRobot robot) {
    screen.open(Path.of("models/millrace-armchair.json"));
    slide(robot, "#apart", 1);
    screen.settled();
    assertThat(text(robot, "#apart-told")).matches("24 of 24 apart: .+");
    // It takes a while until this is known, and till then nobody is told that all is well.
    AtomicBoolean tried = new AtomicBoolean();
    run(
        () ->
            robot
                .lookup("#trying")
                .query()
                .visibleProperty()
                .addListener((o, was, now) -> tried.compareAndSet(false, now)));
    variant("legs askew");
    OnScreen.await("the order", () -> !screen.window.chair().look().get().moved().isEmpty());
    screen.settled();
    assertThat(text(robot, "#apart-told"))
        .startsWith("Lock one another, so they stay: ")
        .contains("stretcher", "seat")
        .doesNotContain("crest", "Working out")
        .endsWith("The rest comes apart.");
    screen.photograph("43-locks");
    Shown shown = screen.shown();
    List<Vec3> moved = OnScreen.ask(() -> screen.window.chair().look().get().moved());
    for (int i = 0; i < moved.size(); i++) {
      String name = shown.chair().parts().get(i).name();
      if (Set.of("crest", "arm").contains(name)) {
        assertThat(moved.get(i).length()).as(name).isGreaterThan(20);
      }
    }
    slide(robot, "#apart", 0);
    screen.settled();
    assertThat(OnScreen.ask(() -> robot.lookup("#apart-told").query().isVisible())).isFalse();

    // Each joint fits by itself; the chair is not told as one that fits for all that.
    assertThat(shown.report().fits()).isTrue();
    OnScreen.await("the ticket", () -> !robot.lookup("#locked").queryAll().isEmpty());
    assertThat(tried).isTrue();
    assertThat(robot.lookup("#trying").query().isVisible()).isFalse();
    Button ticket = robot.lookup("#locked").query();
    assertThat(text(robot, "#verdict")).isEqualTo("fits, but cannot be put together");
    assertThat(ticket.getAccessibleText())
        .startsWith("Cannot be put together: Lock one another")
        .contains("seat");
    assertThat(OnScreen.ask(() -> ticket.getParent().getChildrenUnmodifiable().get(0)))
        .isSameAs(ticket);
    List<String> frees =
        Freeing.of(
            shown.chair(),
            Assembling.stuck(shown.chair(), Onlooker.NONE),
            new TextStyle(Length.Unit.MM, 64, false, false));
    assertThat(frees).isNotEmpty();
    assertThat(robot.lookup("#frees").queryAll()).hasSameSizeAs(frees.stream().limit(4).toList());
    assertThat(robot.lookup("#frees").<Button>query().getAccessibleText())
        .startsWith(
            "What would free them: " + frees.get(0).substring(0, 1).toUpperCase(Locale.ROOT));
    screen.photograph("53-cannot-be-put-together");
    robot.clickOn(ticket);
    screen.settled();
    assertThat(slider(robot, "#apart")).isEqualTo(1);
    variant("as drawn");
    screen.settled();
    assertThat(text(robot, "#verdict")).startsWith("fits").doesNotContain("put together");
    assertThat(robot.lookup("#locked").queryAll()).isEmpty();
    assertThat(robot.lookup("#frees").queryAll()).isEmpty();
  }

  @Test
  void theFootprintLiesOnPaperTooBehindWhatStandsBeforeIt(FxRobot robot) {
    screen.open(HARBOUR);
    Shown shown = screen.shown();
    Footprint feet = Footprint.of(shown.report().whole()).orElseThrow();
    Set<String> all = Set.copyOf(shown.chair().parts().stream().map(p -> p.label()).toList());
    Camera eye = screen.orbit().camera();
    long bare = inked(ink(shown, all, Optional.of(feet), new Scale.None()), eye);
    long behind = inked(ink(shown, Set.of(), Optional.of(feet), new Scale.None()), eye);
    assertThat(behind).as("ink with the chair on it").isBetween(bare / 3, bare - 20);
    assertThat(
            inked(
                ink(shown, all, Optional.of(feet), new Scale.None()),
                screen.orbit().turned(0, -1.2).camera()))
        .as("from below")
        .isZero();
    ChairView paper =
        OnScreen.ask(
            () -> {
              ChairView view = new ChairView(new PaperDrawing());
              screen.stage.getScene().setRoot(view);
              view.show(shown);
              return view;
            });
    OnScreen.await("the drawing", () -> ((ImageView) paper.lookup("#drawing")).getImage() != null);
    screen.photograph("45-footprint-on-paper");
  }

  @Test
  void aRuleAndASitterStandOnPaperToo(FxRobot robot) {
    screen.open(HARBOUR);
    Shown shown = screen.shown();
    run(() -> screen.window.chair().go(View.FRONT));
    screen.landed();
    Scale rule = new Scale.Rule(Length.Unit.MM);
    Camera eye = screen.orbit().camera();
    assertThat(inked(ink(shown, Set.of(), Optional.empty(), rule), eye))
        .as("ink of the numbers")
        .isGreaterThan(100);
    assertThat(
            inked(
                ink(shown, Set.of(), Optional.empty(), rule),
                screen.orbit().turned(Math.PI, 0).camera()))
        .as("from behind")
        .isZero();
    Box bounds = shown.bounds();
    Box standing = around(PaperScale.figures(rule, bounds));
    assertThat(standing.low().z()).isZero();
    assertThat(standing.high().z())
        .as("whole hundreds, up to the top of the chair")
        .isEqualTo(100 * Math.ceil(bounds.high().z() / 100));
    Box sits = around(PaperScale.figures(new Scale.Sits(Sitter.WOMAN, false), bounds));
    assertThat(sits.high().z())
        .as("the top of the head, sitting")
        .isCloseTo(Sitter.WOMAN.hollow() + Sitter.WOMAN.sitting(), within(20.0));
    assertThat(sits.low().x()).as("clear of the chair").isGreaterThan(bounds.high().x());
    for (Scale scale : List.of(rule, new Scale.Sits(Sitter.WOMAN, false))) {
      PaperScale.figures(scale, bounds)
          .forEach(f -> assertThat(MassProperties.of(f.mesh()).volume()).isPositive());
    }
    ChairView paper =
        OnScreen.ask(
            () -> {
              ChairView view = new ChairView(new PaperDrawing());
              screen.stage.getScene().setRoot(view);
              view.see(l -> l.beside(rule));
              view.show(shown);
              return view;
            });
    ImageView sheet = (ImageView) paper.lookup("#drawing");
    OnScreen.await("the drawing", () -> sheet.getImage() != null);
    screen.photograph("46-rule-on-paper");
    run(() -> paper.see(l -> l.beside(new Scale.None())));
    run(paper::seeAll);
    OnScreen.await("the eye to stand back", () -> paper.heading().equals(paper.orbit().get()));
    Image without = atRest(sheet);
    run(() -> paper.see(l -> l.beside(new Scale.Sits(Sitter.MAN, false))));
    OnScreen.await("a drawing with the sitter", () -> sheet.getImage() != without);
    assertThat(OnScreen.difference((WritableImage) without, (WritableImage) atRest(sheet)))
        .as("the sitter")
        .isGreaterThan(0.02);
    run(paper::seeAll);
    OnScreen.await("the eye to stand back", () -> paper.heading().equals(paper.orbit().get()));
    atRest(sheet);
    screen.photograph("47-sitter-on-paper");
  }

  /** The drawing once none has come for a while: those of a flight may be late. */
  private static Image atRest(ImageView sheet) {
    Image[] last = {null};
    long[] since = {0};
    OnScreen.await(
        "the drawing to rest",
        () -> {
          if (sheet.getImage() != last[0]) {
            last[0] = sheet.getImage();
            since[0] = System.nanoTime();
          }
          return System.nanoTime() - since[0] > TimeUnit.SECONDS.toNanos(2);
        });
    return last[0];
  }

  private static Box around(List<Figure> figures) {
    return figures.stream().map(f -> f.mesh().bounds()).reduce(Box::with).orElseThrow();
  }

  private static PaperInk ink(
      Shown shown, Set<String> hidden, Optional<Footprint> feet, Scale scale) {
    return new PaperInk(shown.chair(), hidden, feet, scale, shown.bounds());
  }

  private static long inked(PaperInk ink, Camera eye) {
    BufferedImage paper = new BufferedImage(700, 500, BufferedImage.TYPE_INT_ARGB);
    ink.draw(paper, eye);
    long count = 0;
    for (int argb : paper.getRGB(0, 0, 700, 500, null, 0, 700)) {
      count += argb != 0 ? 1 : 0;
    }
    return count;
  }
}
