package dryfit.export;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.build.Chair;
import dryfit.export.paper.Ink;
import dryfit.export.paper.Page;
import dryfit.export.paper.Page.Paper;
import dryfit.fit.Fitted;
import dryfit.geometry.Vec2;
import dryfit.measure.Length;
import dryfit.shop.EasedArm;
import dryfit.shop.template.Mark;
import dryfit.shop.template.Template;
import dryfit.shop.template.TemplateMaker;
import dryfit.shop.template.TemplateMaker.Made;
import dryfit.shop.template.Wanted;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TemplatePagesTest {
  private static final Wanted PLAIN = new Wanted(50, Optional.empty(), Wanted.Hands.BOTH, 5);

  /** Half of what words take: a letter is about half as wide as its type is high. */
  private static Vec2 half(Ink.Words words) {
    return new Vec2(words.text().length() * words.size() * 0.25, words.size() / 2);
  }

  private static boolean meet(Vec2 low, Vec2 high, Vec2 otherLow, Vec2 otherHigh) {
    return low.x() < otherHigh.x()
        && otherLow.x() < high.x()
        && low.y() < otherHigh.y()
        && otherLow.y() < high.y();
  }

  /** An arm of 13 1/4 in takes two sheets; its name, set in the middle, would be torn in two. */
  @Test
  void aPartsNameIsWholeOnEverySheetAndOverNoMortiseNorTheGrain() {
    Chair chair = Fitted.of(EasedArm.JSON).chair();
    for (Made made : new TemplateMaker(chair, PLAIN).of("arm")) {
      Template template = ((Made.Ready) made).template();
      List<Page> pages =
          new TemplatePages(chair, template, PLAIN, new TextStyle(Length.Unit.IN, 64, false, false))
              .sheets(Paper.LETTER);
      assertThat(pages).hasSizeGreaterThan(2);
      for (Page page : pages.subList(1, pages.size())) {
        Ink.Window window = (Ink.Window) page.ink().get(0);
        List<Ink.Words> words =
            window.ink().stream()
                .filter(Ink.Words.class::isInstance)
                .map(Ink.Words.class::cast)
                .toList();
        Ink.Words name =
            words.stream().filter(w -> w.text().startsWith("arm,")).findFirst().orElseThrow();
        Ink.Words grain =
            words.stream().filter(w -> w.text().equals("grain")).findFirst().orElseThrow();
        for (Ink.Words each : List.of(name, grain)) {
          double from = each.at().x() - half(each).x() + window.shift().x();
          double to = each.at().x() + half(each).x() + window.shift().x();
          boolean within = from >= window.low().x() && to <= window.high().x();
          boolean without = to <= window.low().x() || from >= window.high().x();
          assertThat(within || without).as(each.text()).isTrue();
        }
        Vec2 low = name.at().minus(new Vec2(half(name).x(), 0));
        Vec2 high = name.at().plus(half(name));
        Vec2 other = half(grain);
        assertThat(meet(low, high, grain.at().minus(other), grain.at().plus(other))).isFalse();
        List<List<Vec2>> holes =
            template.marks().stream()
                .flatMap(
                    m ->
                        m instanceof Mark.Mouth mouth
                            ? Stream.of(mouth.loops().get(0))
                            : m instanceof Mark.Inside hole
                                ? Stream.of(hole.loops().get(0))
                                : Stream.of())
                .toList();
        for (List<Vec2> loop : holes) {
          assertThat(meet(low, high, TemplateInk.low(loop), TemplateInk.high(loop))).isFalse();
        }
      }
    }
  }
}
