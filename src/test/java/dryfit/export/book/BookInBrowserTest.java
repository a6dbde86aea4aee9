package dryfit.export.book;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Part;
import dryfit.export.paper.Page.Paper;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;

/** The book as a page, in a browser without a screen, on a telephone 390 points wide. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class BookInBrowserTest {
  private static final String PICTURE = "document.querySelector('canvas').toDataURL()";

  private Chairs stool;
  private Path file;
  private Browser browser;

  @BeforeAll
  void start(@TempDir Path folder) throws Exception {
    stool = Chairs.of("kiln-stool");
    Book book = BookMaker.forPhone(stool.report(), stool.order(), stool.style());
    file = folder.resolve("stool.html");
    Files.write(file, BookHtml.bytes(book, stool.chair()));
    browser = new Browser();
  }

  @AfterAll
  void stop() throws Exception {
    browser.quit();
  }

  @BeforeEach
  void open() throws Exception {
    browser.phone(390, 844);
    browser.open(file);
    browser.settle();
  }

  @Test
  void nothingIsFetchedAndNothingGoesWrong() {
    assertThat(browser.requests())
        .isNotEmpty()
        .allMatch(url -> url.equals(file.toUri().toString()) || url.startsWith("data:"));
    assertThat(browser.complaints()).isEmpty();
  }

  @Test
  void thePageIsNoWiderThanTheTelephone() throws Exception {
    assertThat(browser.value("window.innerWidth").asInt()).isEqualTo(390);
    assertThat(browser.value("document.documentElement.scrollWidth").asInt())
        .isLessThanOrEqualTo(390);
  }

  @Test
  void wordsAreLargeEnoughToReadAndButtonsToTouch() throws Exception {
    assertThat(browser.value("parseFloat(getComputedStyle(document.body).fontSize)").asDouble())
        .isGreaterThanOrEqualTo(16);
    // 44 points: WCAG 2.2, success criterion 2.5.5, target size.
    assertThat(
            browser
                .value(
                    "Math.min(...[...document.querySelectorAll('#turn button')]"
                        + ".map(b => b.getBoundingClientRect().height))")
                .asDouble())
        .isGreaterThanOrEqualTo(44);
  }

  @Test
  void aFingerTurnsTheChairAndItsViewsComeBack() throws Exception {
    double[] middle = middle();
    browser.touch("touchStart", middle[0], middle[1]);
    browser.touch("touchEnd");
    touchButton("front");
    String front = browser.value(PICTURE).asString();
    browser.touch("touchStart", middle[0], middle[1]);
    browser.touch("touchMove", middle[0] + 60, middle[1] + 10);
    browser.touch("touchMove", middle[0] + 90, middle[1] + 20);
    browser.touch("touchEnd");
    browser.settle();
    assertThat(browser.value(PICTURE).asString()).isNotEqualTo(front);
    touchButton("front");
    assertThat(browser.value(PICTURE).asString()).isEqualTo(front);
  }

  @Test
  void everyViewShowsSomethingElse() throws Exception {
    Set<String> seen = new HashSet<>();
    List<String> views = List.of("three-quarter", "front", "side", "back", "above", "underside");
    for (String view : views) {
      touchButton(view);
      seen.add(browser.value(PICTURE).asString());
    }
    assertThat(seen).hasSize(views.size());
  }

  @Test
  void twoFingersMakeItLarger() throws Exception {
    String before = browser.value(PICTURE).asString();
    double inked = inked();
    double[] m = middle();
    browser.touch("touchStart", m[0] - 30, m[1], m[0] + 30, m[1]);
    browser.touch("touchMove", m[0] - 40, m[1], m[0] + 40, m[1]);
    browser.touch("touchMove", m[0] - 50, m[1], m[0] + 50, m[1]);
    browser.touch("touchEnd");
    browser.settle();
    assertThat(browser.value(PICTURE).asString()).isNotEqualTo(before);
    assertThat(inked()).isGreaterThan(1.3 * inked);
  }

  /** How many points of the picture are not paper. */
  private double inked() throws Exception {
    return browser
        .value(
            "(() => { const c = document.querySelector('canvas');"
                + " const d = new Uint32Array(c.getContext('2d')"
                + ".getImageData(0, 0, c.width, c.height).data.buffer);"
                + " return d.filter(p => p !== d[0]).length; })()")
        .asDouble();
  }

  @Test
  void aTouchNamesThePart() throws Exception {
    touchButton("above");
    double[] m = middle();
    browser.touch("touchStart", m[0], m[1]);
    browser.touch("touchEnd");
    browser.settle();
    String said = browser.value("document.querySelector('#turn output').textContent").asString();
    assertThat(said).isEqualTo("seat");
    assertThat(stool.chair().parts()).extracting(Part::label).contains(said);
  }

  @Test
  void withoutScriptThereIsAPictureAndTheWholeBook() throws Exception {
    browser.send("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      browser.open(file);
      assertThat(browser.value("document.getElementById('still').hidden").asBoolean()).isFalse();
      assertThat(browser.value("document.getElementById('turn').hidden").asBoolean()).isTrue();
      assertThat(
              browser
                  .value("document.querySelector('#still img').getBoundingClientRect().width")
                  .asDouble())
          .isGreaterThan(300);
    } finally {
      browser.send("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  @Test
  void atNightThePaperIsDarkAndTheInkIsLight() throws Exception {
    Map<String, Object> dark =
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", "dark")));
    browser.send("Emulation.setEmulatedMedia", dark);
    browser.settle();
    String paper = browser.value("getComputedStyle(document.body).backgroundColor").asString();
    String ink = browser.value("getComputedStyle(document.body).color").asString();
    browser.send("Emulation.setEmulatedMedia", Map.of("features", List.of()));
    assertThat(light(paper)).isLessThan(60);
    assertThat(light(ink)).isGreaterThan(200);
  }

  private static double light(String rgb) {
    return java.util.Arrays.stream(rgb.replaceAll("[^0-9,]", "").split(","))
        .mapToInt(Integer::parseInt)
        .average()
        .orElseThrow();
  }

  @Test
  void theSameBookGivesTheSameBytes() {
    Book once = BookMaker.forPhone(stool.report(), stool.order(), stool.style());
    Book again = BookMaker.forPhone(stool.report(), stool.order(), stool.style());
    assertThat(BookHtml.bytes(once, stool.chair())).isEqualTo(BookHtml.bytes(again, stool.chair()));
  }

  @Test
  void itHoldsAllThatThePaperHolds() throws Exception {
    String html = Files.readString(file, StandardCharsets.UTF_8);
    Book paper = BookMaker.of(stool.report(), stool.order(), stool.style(), Paper.A4);
    for (Book.Chapter chapter : paper.chapters()) {
      for (Book.Sheet sheet : chapter.sheets()) {
        assertThat(html).contains("<h3>" + sheet.title() + "</h3>");
      }
    }
  }

  private double[] middle() throws Exception {
    String box = "document.querySelector('canvas').getBoundingClientRect()";
    return new double[] {
      browser.value(box + ".x + " + box + ".width / 2").asDouble(),
      browser.value(box + ".y + " + box + ".height / 2").asDouble()
    };
  }

  private void touchButton(String view) throws Exception {
    browser.value("document.querySelector('#turn button[value=" + view + "]').click()");
    browser.settle();
  }
}
