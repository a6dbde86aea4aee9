package dryfit.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.layout.Background;
import javafx.scene.layout.BackgroundFill;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.paint.RadialGradient;
import javafx.scene.paint.Stop;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/**
 * All words on screen stand out from what is behind them by 4.5 to 1, by day and in the evening:
 * W3C, Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 1.4.3, Contrast
 * (Minimum). What is switched off, which may be pale there, is held to the same.
 */
class ContrastWindowTest extends WindowTest {
  /** WCAG 2.2, 1.4.3, for text of ordinary size. */
  private static final double LEAST = 4.5;

  @Test
  void theRatioIsTheOneOfTheGuidelines() {
    // WCAG 2.2, definition of contrast ratio: from 1:1 to 21:1. #767676 on white is the lightest
    // grey that passes, with 4.54 (W3C, Understanding 1.4.3 and its techniques; from memory).
    assertThat(ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
    assertThat(ratio(Color.web("#777777"), Color.WHITE)).isBetween(4.47, 4.5);
    assertThat(ratio(Color.web("#767676"), Color.WHITE)).isBetween(4.5, 4.55);
  }

  @Test
  void noWordsArePaleByDayOrInTheEvening(FxRobot robot) {
    Set<String> pale = new TreeSet<>();
    run(() -> screen.window.offer());
    screen.settled();
    check("start", pale);
    screen.open(Path.of("models/harbour-armchair.json"));
    both(robot, "opened", pale);
    run(() -> screen.window.session().choose("deep tenons"));
    screen.settled();
    both(robot, "does not fit", pale);
    for (int i : new int[] {1, 3, 0}) {
      Button ticket = (Button) List.copyOf(robot.lookup(".ticket").queryAll()).get(i);
      run(() -> ticket.fire());
      screen.settled();
      both(robot, "card " + i, pale);
    }
    robot.clickOn("#accept-reason").write("a");
    robot.clickOn("#find").write("zz");
    both(robot, "typed", pale);
    robot.clickOn("#find").eraseText(2);
    robot.doubleClickOn("#value-seatTop").write("900").type(javafx.scene.input.KeyCode.ENTER);
    screen.settled();
    both(robot, "refused", pale);
    robot.clickOn("#sitter");
    both(robot, "sitter", pale);
    robot.clickOn("#another-variant");
    both(robot, "question", pale);
    robot.clickOn("#not-now");
    robot.clickOn("#write-files");
    both(robot, "write", pale);
    robot.clickOn("#write-not-now");
    robot.clickOn("#beside");
    screen.settled();
    both(robot, "beside", pale);
    assertThat(pale).isEmpty();
  }

  private void both(FxRobot robot, String state, Set<String> pale) {
    check(state + ", by day", pale);
    dark(robot);
    check(state + ", in the evening", pale);
    screen.photograph("45-evening-" + state.replace(' ', '-'));
    dark(robot);
  }

  private void dark(FxRobot robot) {
    run(() -> robot.lookup("#light-or-dark").<Button>query().fire());
    screen.settled();
  }

  private void check(String state, Set<String> pale) {
    OnScreen.ask(
        () -> {
          Parent root = screen.stage.getScene().getRoot();
          root.applyCss();
          List<Text> texts = new ArrayList<>();
          gather(root, texts);
          assertThat(texts).as("words in the state " + state).isNotEmpty();
          for (Text text : texts) {
            for (Color behind : behind(text)) {
              double ratio = ratio(seen(text, behind), behind);
              if (ratio < LEAST) {
                pale.add(
                    String.format(
                        java.util.Locale.ROOT,
                        "%s: “%s” %s on %s: %.2f",
                        state,
                        text.getText(),
                        text.getFill(),
                        behind,
                        ratio));
              }
            }
          }
          return null;
        });
  }

  private static void gather(Node node, List<Text> into) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Text text && !text.getText().isBlank() && text.getFill() instanceof Color) {
      into.add(text);
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> gather(child, into));
    }
  }

  /** Its colour as it comes through what makes it paler. */
  private static Color seen(Text text, Color behind) {
    Color seen = (Color) text.getFill();
    double share = seen.getOpacity();
    for (Node n = text; n != null; n = n.getParent()) {
      share *= n.getOpacity();
    }
    return behind.interpolate(Color.color(seen.getRed(), seen.getGreen(), seen.getBlue()), share);
  }

  /** The colours of the nearest thing behind that lets nothing through; of a gradient all. */
  private static List<Color> behind(Node text) {
    for (Node n = text.getParent(); n != null; n = n.getParent()) {
      if (n instanceof Region region && region.getBackground() != null) {
        Background background = region.getBackground();
        List<BackgroundFill> fills = background.getFills();
        for (int i = fills.size() - 1; i >= 0; i--) {
          Paint paint = fills.get(i).getFill();
          if (paint instanceof Color c && c.getOpacity() > 0.99) {
            return List.of(c);
          }
          if (paint instanceof RadialGradient gradient) {
            return gradient.getStops().stream().map(Stop::getColor).toList();
          }
        }
      }
    }
    throw new AssertionError("nothing behind " + text);
  }

  private static double ratio(Color a, Color b) {
    double one = luminance(a);
    double two = luminance(b);
    return (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
  }

  /** Relative luminance as WCAG 2.2 defines it. */
  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double linear(double value) {
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
