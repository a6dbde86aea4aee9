package dryfit.export;

import static dryfit.export.JsonOut.NODES;

import dryfit.document.Quantity;
import dryfit.fit.compare.Datum;
import dryfit.fit.compare.Sweep;
import dryfit.fit.compare.Sweep.Point;
import dryfit.fit.compare.Sweep.Range;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A sweep as text, as JSON, and as a page of plots. */
public final class SweepOut {
  private static final int COLUMN = 13;

  private final Sweep sweep;
  private final TextStyle style;

  private SweepOut(Sweep sweep, TextStyle style) {
    this.sweep = sweep;
    this.style = style;
  }

  /** A table of the steps and where the chair fits; the last line is the answer. */
  public static String text(Sweep sweep, TextStyle style) {
    return new SweepOut(sweep, style).text();
  }

  /** A page with a plot of every figure of the whole chair that changes, and the least wood. */
  public static byte[] page(Sweep sweep, String chair, TextStyle style) {
    return new SweepOut(sweep, style).page(chair).getBytes(StandardCharsets.UTF_8);
  }

  /** Every figure at every step; millimetres and degrees. */
  public static byte[] json(Sweep sweep) {
    ObjectNode root = NODES.objectNode();
    Datum.Kind kind = kind(sweep);
    root.put("format", "dryfit-sweep/1");
    root.put("variant", sweep.plan().variant());
    root.put("dimension", sweep.plan().dimension());
    root.put("unit", CompareJson.unit(kind));
    if (sweep.plan().isBounded()) {
      ObjectNode may = root.putObject("documentAllows");
      may.set("from", limit(kind, sweep.plan().least()));
      may.set("to", limit(kind, sweep.plan().most()));
    } else {
      root.putNull("documentAllows");
    }
    ArrayNode ranges = root.putArray("fitsBetween");
    for (Range r : sweep.ranges()) {
      ObjectNode out = ranges.addObject();
      out.set("from", CompareJson.value(kind, OptionalDouble.of(r.from())));
      out.set("to", CompareJson.value(kind, OptionalDouble.of(r.to())));
      out.put("below", r.below().orElse(null));
      out.put("above", r.above().orElse(null));
    }
    ArrayNode points = root.putArray("points");
    for (Point p : sweep.points()) {
      ObjectNode out = points.addObject();
      out.set("value", CompareJson.value(kind, OptionalDouble.of(p.value())));
      out.put("allowed", sweep.plan().allows(p.value()));
      out.put("fits", p.fits());
      out.put("reason", p.reason().orElse(null));
      out.put("stops", p.stops());
      out.put("look", p.look());
      ArrayNode figures = out.putArray("figures");
      for (Datum d : p.data()) {
        ObjectNode figure = figures.addObject();
        figure.put("group", CompareJson.word(d.group()));
        figure.put("subject", d.subject());
        figure.put("what", d.what());
        figure.put("unit", CompareJson.unit(d.kind()));
        figure.set("value", CompareJson.value(d.kind(), OptionalDouble.of(d.value())));
      }
    }
    return JsonOut.bytes(root);
  }

  private static JsonNode limit(Datum.Kind kind, double value) {
    return CompareJson.value(
        kind, Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value));
  }

  private static Datum.Kind kind(Sweep sweep) {
    return switch (sweep.plan().kind()) {
      case LENGTH -> Datum.Kind.LENGTH;
      case ANGLE -> Datum.Kind.ANGLE;
      case NUMBER -> Datum.Kind.NUMBER;
    };
  }

  private String value(double value) {
    return sweep.plan().kind() == Quantity.Kind.LENGTH
        ? style.gap(value)
        : DatumText.of(kind(sweep), value, style);
  }

  private String text() {
    StringBuilder out = new StringBuilder();
    String head = String.format(java.util.Locale.ROOT, "%-13s", sweep.plan().dimension());
    out.append(
        style.bold(
            head + right("") + right("stops") + right("look") + right("mass") + right("tips at")));
    out.append('\n');
    for (Point p : sweep.points()) {
      String start = String.format(java.util.Locale.ROOT, "%-13s", value(p.value()));
      String bare = p.fits() ? "fits" : p.data().isEmpty() ? "refused" : "no";
      boolean outside = !sweep.plan().allows(p.value());
      bare += outside ? ", out" : "";
      String answer = !p.fits() ? style.red(bare) : outside ? style.amber(bare) : style.green(bare);
      out.append(start)
          .append(" ".repeat(COLUMN - bare.length()))
          .append(answer)
          .append(right(Long.toString(p.stops())))
          .append(right(Long.toString(p.look())))
          .append(right(DatumText.of(Datum.Kind.MASS, whole(p, "mass"), style)))
          .append(right(DatumText.of(Datum.Kind.ANGLE, tips(p), style)))
          .append('\n');
    }
    out.append('\n');
    if (sweep.points().stream().anyMatch(p -> tips(p).isPresent())) {
      wrapped(
          out, "tips at: the way it tips first, with no one on it, over the middles of two feet");
    }
    refused().forEach(line -> wrapped(out, line));
    if (sweep.ranges().isEmpty()) {
      // What comes nearest says most of what is in the way.
      sweep.points().stream()
          .filter(p -> !p.data().isEmpty())
          .min(Comparator.comparingLong(Point::stops))
          .ifPresent(p -> wrapped(out, "at " + value(p.value()) + ": " + p.reason().orElse("")));
    }
    if (!sweep.points().stream().allMatch(p -> sweep.plan().allows(p.value()))) {
      wrapped(
          out,
          "out: beyond what the document lets "
              + sweep.plan().dimension()
              + " be, "
              + documentAllows()
              + " (its own “from” and “to”)");
    }
    for (Range r : sweep.ranges()) {
      r.below().ifPresent(why -> wrapped(out, "below " + value(r.from()) + ": " + why));
      r.above().ifPresent(why -> wrapped(out, "above " + value(r.to()) + ": " + why));
    }
    return out.append(answer()).append('\n').toString();
  }

  /** Why a chair could not be built at some steps, each reason once with where it holds. */
  private List<String> refused() {
    Map<String, List<Point>> why = new LinkedHashMap<>();
    for (Point p : sweep.points()) {
      if (p.data().isEmpty()) {
        why.computeIfAbsent(p.reason().orElse(""), k -> new ArrayList<>()).add(p);
      }
    }
    return why.entrySet().stream()
        .limit(REASONS)
        .map(
            e -> {
              String first = value(e.getValue().get(0).value());
              String last = value(e.getValue().get(e.getValue().size() - 1).value());
              String where = first.equals(last) ? "at " + first : "from " + first + " to " + last;
              return "refused " + where + ": " + e.getKey();
            })
        .toList();
  }

  /** So many reasons are told: mostly they are one, with other figures. */
  private static final int REASONS = 3;

  private void wrapped(StringBuilder out, String text) {
    Wrapped.lines("", "  ", text).forEach(l -> out.append(l).append('\n'));
  }

  /** The document's own range of the dimension. */
  private String documentAllows() {
    Sweep.Plan plan = sweep.plan();
    String least = Double.isNaN(plan.least()) ? "" : "from " + value(plan.least());
    String most = Double.isNaN(plan.most()) ? "" : "to " + value(plan.most());
    return (least + " " + most).strip();
  }

  private String answer() {
    if (sweep.ranges().isEmpty()) {
      return style.red("DOES NOT FIT") + " anywhere in this range";
    }
    List<Range> allowed = sweep.allowed();
    if (allowed.equals(sweep.ranges())) {
      return style.green("FITS") + " " + told(allowed);
    }
    if (allowed.isEmpty()) {
      return style.red("DOES NOT FIT")
          + " where the document lets it be, "
          + documentAllows()
          + "; beyond that it fits "
          + told(sweep.ranges());
    }
    return style.green("FITS")
        + " "
        + told(allowed)
        + "; without the document's limits "
        + told(sweep.ranges());
  }

  private String told(List<Range> ranges) {
    List<String> all = new ArrayList<>();
    for (Range r : ranges) {
      all.add("from " + value(r.from()) + " to " + value(r.to()));
    }
    return String.join(", and ", all);
  }

  private static OptionalDouble whole(Point p, String what) {
    return p.data().stream()
        .filter(d -> d.group() == Datum.Group.WHOLE && d.what().equals(what))
        .mapToDouble(Datum::value)
        .findFirst();
  }

  private static OptionalDouble tips(Point p) {
    return p.data().stream()
        .filter(d -> d.group() == Datum.Group.WHOLE && d.what().startsWith("tips "))
        .mapToDouble(Datum::value)
        .min();
  }

  private static OptionalDouble wood(Point p) {
    return p.data().stream()
        .filter(d -> d.group() == Datum.Group.CLEARANCE && d.what().startsWith("wood to"))
        .mapToDouble(Datum::value)
        .min();
  }

  private static String right(String text) {
    return " ".repeat(Math.max(1, COLUMN - text.length())) + text;
  }

  private String page(String chair) {
    String title = chair + ": " + sweep.plan().dimension();
    StringBuilder out = new StringBuilder();
    out.append(PlainPage.head(title))
        .append("<p>Green: the chair fits. ")
        .append(beyond().isEmpty() ? "" : "Grey: beyond what the document allows. ")
        .append("Variant: ")
        .append(ComparePage.escaped(sweep.plan().variant()))
        .append(".</p>\n<div class=\"wide\"><pre>")
        .append(ComparePage.escaped(text(sweep, plain())))
        .append("</pre></div>\n<div class=\"plots\">\n");
    Set<Datum.Key> keys = new LinkedHashSet<>();
    sweep.points().stream()
        .flatMap(p -> p.data().stream())
        .filter(d -> d.group() == Datum.Group.WHOLE)
        .forEach(d -> keys.add(d.key()));
    List<Plot> plots = new ArrayList<>();
    for (Datum.Key key : keys) {
      add(plots, key.what(), key.kind(), figures(p -> p.figure(key), key.kind()));
    }
    Datum.Kind wood = Datum.Kind.LENGTH;
    add(plots, "least wood beside a mortise", wood, figures(SweepOut::wood, wood));
    if (plots.isEmpty()) {
      out.append("<p>Nothing of the whole chair changes by as much as a plot would show.</p>\n");
    }
    plots.forEach(p -> plot(out, p));
    return out.append("</div>\n").append(PlainPage.foot()).toString();
  }

  /** What changes with the dimension; several figures if they are the same, as of both hands. */
  private record Plot(List<String> what, Datum.Kind kind, List<PlotSvg.At> at) {
    boolean isLike(Datum.Kind other, List<PlotSvg.At> points) {
      boolean like = kind == other && points.size() == at.size();
      for (int i = 0; like && i < at.size(); i++) {
        like =
            at.get(i).x() == points.get(i).x()
                && Math.abs(at.get(i).y() - points.get(i).y()) < ALIKE;
      }
      return like;
    }
  }

  /** What no printed digit shows. */
  private static final double ALIKE = 0.005;

  /**
   * Below this the numbers beside an axis would be the same, and its line would tell of nothing.
   */
  private static final double TELLS = 0.02;

  private static boolean tells(List<PlotSvg.At> at) {
    DoubleSummaryStatistics y = at.stream().mapToDouble(PlotSvg.At::y).summaryStatistics();
    return !at.isEmpty() && y.getMax() - y.getMin() >= TELLS;
  }

  private static void add(List<Plot> plots, String what, Datum.Kind kind, List<PlotSvg.At> at) {
    if (!tells(at)) {
      return;
    }
    for (Plot p : plots) {
      if (p.isLike(kind, at)) {
        p.what().add(what);
        return;
      }
    }
    plots.add(new Plot(new ArrayList<>(List.of(what)), kind, at));
  }

  private TextStyle plain() {
    return new TextStyle(style.unit(), style.denominator(), style.decimals(), false);
  }

  private List<PlotSvg.At> figures(
      java.util.function.Function<Point, OptionalDouble> figure, Datum.Kind kind) {
    List<PlotSvg.At> at = new ArrayList<>();
    for (Point p : sweep.points()) {
      OptionalDouble y = figure.apply(p);
      if (y.isPresent()) {
        at.add(new PlotSvg.At(shown(kind(sweep), p.value()), shown(kind, y.getAsDouble())));
      }
    }
    return at;
  }

  private void plot(StringBuilder out, Plot plot) {
    List<PlotSvg.Band> good = sweep.allowed().stream().map(r -> band(r.from(), r.to())).toList();
    String x = sweep.plan().dimension() + named(kind(sweep));
    String title = String.join("; ", plot.what()) + named(plot.kind());
    out.append("<figure><figcaption>").append(ComparePage.escaped(title)).append("</figcaption>\n");
    out.append(PlotSvg.of(title, x, unit(plot.kind()), plot.at(), good, beyond()))
        .append("</figure>\n");
  }

  private PlotSvg.Band band(double from, double to) {
    return new PlotSvg.Band(shown(kind(sweep), from), shown(kind(sweep), to));
  }

  /** What of the sweep the document does not let the dimension be. */
  private List<PlotSvg.Band> beyond() {
    Sweep.Plan plan = sweep.plan();
    List<PlotSvg.Band> beyond = new ArrayList<>();
    if (plan.from() < plan.least()) {
      beyond.add(band(plan.from(), Math.min(plan.least(), plan.to())));
    }
    if (plan.to() > plan.most()) {
      beyond.add(band(Math.max(plan.most(), plan.from()), plan.to()));
    }
    return beyond;
  }

  private double shown(Datum.Kind kind, double value) {
    return switch (kind) {
      case LENGTH, GAP -> value / style.unit().mm();
      case ANGLE -> Math.toDegrees(value);
      case VOLUME -> DatumText.volume(value, style);
      case MASS, NUMBER -> value;
    };
  }

  private String named(Datum.Kind kind) {
    return unit(kind).isEmpty() ? "" : ", " + unit(kind);
  }

  private String unit(Datum.Kind kind) {
    return switch (kind) {
      case LENGTH, GAP -> style.unit().symbol();
      case ANGLE -> "°";
      case VOLUME -> DatumText.volumeUnit(style);
      case MASS -> "kg";
      case NUMBER -> "";
    };
  }
}
