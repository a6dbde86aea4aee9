package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.PartPlan;
import dryfit.export.StepsText;
import dryfit.export.TextStyle;
import dryfit.export.book.Block.Fact;
import dryfit.export.book.Block.Heading;
import dryfit.export.book.Block.Text;
import dryfit.export.book.Book.Sheet;
import dryfit.export.paper.Png;
import dryfit.export.picture.Figure;
import dryfit.export.picture.Picture;
import dryfit.export.picture.View;
import dryfit.fit.FitReport;
import dryfit.fit.JointFit;
import dryfit.fit.PartSides;
import dryfit.geometry.Vec3;
import dryfit.shop.Blank;
import dryfit.shop.Ordinates;
import dryfit.shop.Setout;
import dryfit.shop.Setout.Mark;
import dryfit.shop.Setout.Span;
import dryfit.shop.Steps;
import dryfit.timber.Species;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A sheet for every part; a pair has one, drawn as the right-hand one as you face the chair. */
final class PartSheets {
  /** What the title, the facts and the tables take of a page besides a drawing, mm. */
  private static final double BESIDES = 140;

  /** What the title and the lines below a drawing take of a page of its own, mm. */
  private static final double OWN_PAGE = 34;

  private static final int PIXELS = 460;

  /** Steps along a sawn outline, mm: 2 in in an inch book, 50 mm in the other. */
  private static final double INCHES = 50.8;

  private static final double MILLIMETRES = 50;

  private final FitReport report;
  private final Chair chair;
  private final TextStyle style;
  private final BookMaker.Room room;
  private final List<Steps> steps;

  private PartSheets(FitReport report, TextStyle style, BookMaker.Room room) {
    this.report = report;
    this.chair = report.chair();
    this.style = style;
    this.room = room;
    this.steps = Steps.of(chair);
  }

  static List<Sheet> of(FitReport report, TextStyle style, BookMaker.Room room) {
    PartSheets sheets = new PartSheets(report, style, room);
    List<Sheet> out = new ArrayList<>();
    List<Part> parts = report.chair().parts();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i).hand() != Hand.LEFT && !parts.get(i).isPiece()) {
        out.add(sheets.sheet(i));
      }
    }
    sheets.pieces().ifPresent(out::add);
    return out;
  }

  private Sheet sheet(int index) {
    Part part = chair.parts().get(index);
    Setout setout = Setout.of(chair, index);
    PartSides sides = PartSides.of(chair, part);
    Map<String, String> letters = letters(setout);
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Facts(where(part), facts(part, setout, sides)));
    List<Block.Drawing> drawings =
        PartDrawing.of(chair, setout, letters, style, room.width(), room.height() - OWN_PAGE);
    List<Block> views = new ArrayList<>(drawings);
    views.add(
        new Text(
            "Numbers run from the reference end along the part, and from "
                + from(setout, sides)
                + " across it, in "
                + (style.inches() ? "inches" : "millimetres")
                + ". A letter names the joint."));
    double high = drawings.stream().mapToDouble(Block.Drawing::height).sum();
    boolean ownPage = high > room.height() - BESIDES;
    if (!ownPage) {
      blocks.addAll(views);
    }
    mortises(setout, sides, letters, blocks);
    tenons(setout, sides, letters, blocks);
    tapers(part, blocks);
    ordinates(setout, sides, blocks);
    turned(part, blocks);
    blocks.add(new Heading("How it is made"));
    blocks.add(
        new Block.Steps(
            steps.get(index).steps().stream().map(s -> StepsText.sentence(s, style)).toList()));
    if (ownPage) {
      blocks.addAll(views);
    }
    String pair = part.hand() == Hand.NONE ? "" : " (a pair)";
    return new Sheet(part.name() + pair, blocks);
  }

  private Block.Picture where(Part part) {
    List<String> marked =
        chair.parts().stream()
            .filter(p -> p.name().equals(part.name()) && !p.isPiece())
            .map(Part::label)
            .toList();
    byte[] png =
        new Picture(Figure.of(chair, marked), CoverSheets.hands(chair))
            .png(View.THREE_QUARTER, PIXELS, PIXELS * 9 / 8);
    return new Block.Picture("where it is", new Png(png), 8.0 / 9);
  }

  private List<Fact> facts(Part part, Setout setout, PartSides sides) {
    List<Fact> out = new ArrayList<>();
    boolean pair = part.hand() != Hand.NONE;
    out.add(new Fact("make", pair ? "2, mirror images of each other" : "1"));
    String timber = part.plan().common().timber();
    out.add(new Fact("timber", Species.named(timber).map(Species::name).orElse(timber)));
    out.add(new Fact("finished", size(setout.bounds().size())));
    Blank.Size blank = Blank.of(part, chair.design().boards().allow()).rough();
    out.add(
        new Fact(
            "blank, as in the cut list",
            style.length(blank.length())
                + " × "
                + style.length(blank.width())
                + " × "
                + style.length(blank.thickness())));
    Vec3 x = new Vec3(setout.fromStart() ? -1 : 1, 0, 0);
    out.add(
        new Fact(
            "reference end",
            sides.nearest(part.frame().turn(x))
                + " end"
                + (setout.isEndCutAway(setout.fromStart()) ? " of the squared blank" : "")));
    out.add(new Fact("across its width", faces(part, setout, sides, true)));
    out.add(new Fact("across its thickness", faces(part, setout, sides, false)));
    if (pair) {
      String other = part.label().endsWith("left") ? "right" : "left";
      out.add(
          new Fact(
              "hand",
              "drawn is "
                  + part.label()
                  + ". The "
                  + other
                  + " one is its mirror image: every number holds, and outside stays outside."));
    }
    if (!part.plan().common().note().isBlank()) {
      out.add(new Fact("note", part.plan().common().note()));
    }
    return out;
  }

  private static String faces(Part part, Setout setout, PartSides sides, boolean width) {
    Vec3 axis = width ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
    String plus = sides.nearest(part.frame().turn(axis));
    String minus = sides.nearest(part.frame().turn(axis.negated()));
    return (width ? setout.acrossWidth() : setout.acrossThickness())
        .map(
            f -> {
              String face = sides.nearest(part.frame().turn(f));
              String later = setout.isCutAway(width) ? " of the squared blank" : "";
              return "from the "
                  + face
                  + " face"
                  + later
                  + " to the "
                  + (face.equals(plus) ? minus : plus);
            })
        .orElse("from the middle line to the " + minus + " (−) and the " + plus);
  }

  private static String from(Setout setout, PartSides sides) {
    List<String> out = new ArrayList<>();
    setout.acrossWidth().ifPresent(f -> out.add(sides.nearest(setout.part().frame().turn(f))));
    setout.acrossThickness().ifPresent(f -> out.add(sides.nearest(setout.part().frame().turn(f))));
    return switch (out.size()) {
      case 0 -> "its middle line";
      case 1 -> "the " + out.get(0) + " face or the middle line";
      default -> "the " + out.get(0) + " and the " + out.get(1) + " face";
    };
  }

  private String size(Vec3 size) {
    return style.length(size.x())
        + " long × "
        + style.length(size.y())
        + " wide × "
        + style.length(size.z())
        + " thick";
  }

  /** A letter for each joint of a part, in the order of the document. */
  static Map<String, String> letters(Setout setout) {
    Map<String, String> out = new LinkedHashMap<>();
    for (Mark mark : setout.marks()) {
      int n = out.size();
      // After Z come AA, AB: a seat may take more joints than there are letters.
      String letter = (n < 26 ? "" : Character.toString('A' + n / 26 - 1)) + (char) ('A' + n % 26);
      out.putIfAbsent(mark.joint().label(), letter);
    }
    return out;
  }

  private JointFit fit(Joint joint) {
    return report.joints().stream()
        .filter(f -> f.joint().label().equals(joint.label()))
        .filter(f -> f.joint().mortised() == joint.mortised())
        .filter(f -> f.joint().tenoned() == joint.tenoned())
        .findFirst()
        .orElseThrow();
  }

  private void mortises(
      Setout setout, PartSides sides, Map<String, String> letters, List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    for (Mark mark : setout.marks()) {
      if (mark.kind() == Setout.Kind.MORTISE) {
        rows.add(
            List.of(
                letters.get(mark.joint().label()),
                mark.joint().name(),
                sides.nearest(setout.part().frame().turn(mark.face())),
                along(setout, mark),
                across(setout, mark),
                opening(setout, mark),
                depth(mark.joint())));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading("Mortises and holes"));
      blocks.add(
          new Block.Table(
              List.of("", "joint", "face", "along, from the end", "across", "opening", "depth"),
              rows,
              List.of(0.04, 0.2, 0.1, 0.17, 0.17, 0.15, 0.17),
              false));
    }
  }

  private static boolean atEnd(Mark mark) {
    return Math.abs(mark.face().x()) > 0.5;
  }

  private static boolean isRound(Mark mark) {
    return mark.joint().plan().diameter().isPresent();
  }

  private String along(Setout setout, Mark mark) {
    Span span = setout.along(mark.corners());
    if (atEnd(mark)) {
      return "in the end";
    }
    return isRound(mark) ? "middle " + style.length(span.middle()) : fromTo(span);
  }

  private String across(Setout setout, Mark mark) {
    boolean width = Math.abs(mark.face().z()) > 0.5;
    Span span = setout.across(mark.corners(), width);
    return isRound(mark) ? "middle " + style.length(span.middle()) : fromTo(span);
  }

  private String fromTo(Span span) {
    return style.length(span.from()) + " to " + style.length(span.to());
  }

  private String opening(Setout setout, Mark mark) {
    if (isRound(mark)) {
      return "Ø " + style.length(mark.joint().plan().diameter().orElseThrow());
    }
    boolean width = Math.abs(mark.face().z()) > 0.5;
    Span other = atEnd(mark) ? setout.across(mark.corners(), !width) : setout.along(mark.corners());
    return style.length(other.size())
        + " × "
        + style.length(setout.across(mark.corners(), width).size());
  }

  private String depth(Joint joint) {
    if (joint.through()) {
      return "through";
    }
    JointFit fit = fit(joint);
    String square = style.length(fit.depthSquare());
    String along = style.length(fit.depthAlong());
    return square.equals(along) ? square : square + " square,\n" + along + " along the hole";
  }

  private void tenons(
      Setout setout, PartSides sides, Map<String, String> letters, List<Block> blocks) {
    List<List<String>> rows = new ArrayList<>();
    for (Mark mark : setout.marks()) {
      if (mark.kind() == Setout.Kind.TENON) {
        Vec3 way = setout.part().frame().turn(mark.face());
        rows.add(
            List.of(
                letters.get(mark.joint().label()),
                mark.joint().name(),
                sides.nearest(way),
                shoulder(setout, mark.joint()),
                style.length(mark.joint().length()),
                isRound(mark) ? diameter(mark) : spread(setout, mark, true),
                isRound(mark) ? "" : spread(setout, mark, false)));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading("Tenons"));
      blocks.add(
          new Block.Table(
              List.of(
                  "",
                  "joint",
                  "end",
                  "shoulder at",
                  "long",
                  "across the width",
                  "across the thickness"),
              rows,
              List.of(0.04, 0.2, 0.09, 0.18, 0.11, 0.19, 0.19),
              false));
    }
  }

  private String diameter(Mark mark) {
    return "Ø " + style.length(mark.joint().plan().diameter().orElseThrow());
  }

  private String spread(Setout setout, Mark mark, boolean width) {
    Span span = setout.across(mark.corners(), width);
    return fromTo(span) + "\n(" + style.length(span.size()) + ")";
  }

  private String shoulder(Setout setout, Joint joint) {
    if (joint.plan().shoulder() == JointPlan.Shoulder.SCRIBED) {
      // Its corners are not on one plane; the line in its middle is.
      double middle = setout.along(setout.part().frame().local(joint.at()));
      return style.length(middle) + " in its middle,\nscribed";
    }
    return setout.marks().stream()
        .filter(m -> m.kind() == Setout.Kind.SHOULDER && m.joint().equals(joint))
        .findFirst()
        .map(
            m -> {
              Span span = setout.along(m.corners());
              String from = style.length(span.from());
              return from.equals(style.length(span.to())) ? from : fromTo(span);
            })
        .orElse("no shoulder");
  }

  private void tapers(Part part, List<Block> blocks) {
    if (part.plan() instanceof PartPlan.Straight straight && !straight.tapers().isEmpty()) {
      blocks.add(new Heading("Tapers"));
      blocks.add(
          new Block.Table(
              List.of("faces", "begins, along from its start", "ends", "leaves there"),
              straight.tapers().stream()
                  .map(
                      t ->
                          List.of(
                              String.join(" and ", t.faces()),
                              style.length(t.from()),
                              style.length(t.to()),
                              style.length(t.leaves())))
                  .toList(),
              List.of(0.3, 0.3, 0.2, 0.2),
              false));
    }
  }

  private void ordinates(Setout setout, PartSides sides, List<Block> blocks) {
    for (Ordinates outline : Ordinates.of(setout, style.inches() ? INCHES : MILLIMETRES)) {
      Vec3 axis = outline.width() ? new Vec3(0, 1, 0) : new Vec3(0, 0, 1);
      Optional<Vec3> face = outline.width() ? setout.acrossWidth() : setout.acrossThickness();
      String near = sides.nearest(setout.part().frame().turn(face.orElse(axis.negated())));
      String far = sides.nearest(setout.part().frame().turn(face.map(Vec3::negated).orElse(axis)));
      blocks.add(new Heading("The sawn outline, " + near + " to " + far));
      blocks.add(
          new Block.Table(
              List.of("along, from the end", near + " edge at", far + " edge at", "between"),
              outline.rows().stream()
                  .map(
                      r ->
                          List.of(
                              style.length(r.along()),
                              style.length(r.across().from()),
                              style.length(r.across().to()),
                              style.length(r.across().size())))
                  .toList(),
              List.of(0.25, 0.25, 0.25, 0.25),
              false));
    }
  }

  private void turned(Part part, List<Block> blocks) {
    if (part.plan() instanceof PartPlan.Turned turned) {
      blocks.add(new Heading("Diameters"));
      blocks.add(
          new Block.Table(
              List.of("along from its start", "diameter"),
              turned.stations().stream()
                  .map(s -> List.of(style.length(s.along()), style.length(s.diameter())))
                  .toList(),
              List.of(0.3, 0.3),
              false));
    }
  }

  /** Dowels, pegs, wedges and loose tenons that joints bring along, on one sheet. */
  private Optional<Sheet> pieces() {
    Map<String, Integer> counts = new LinkedHashMap<>();
    Map<String, Part> first = new LinkedHashMap<>();
    for (Part part : chair.parts()) {
      if (part.isPiece()) {
        String key = part.name() + size(part.blank().net().size());
        counts.merge(key, 1, Integer::sum);
        first.putIfAbsent(key, part);
      }
    }
    if (counts.isEmpty()) {
      return Optional.empty();
    }
    List<List<String>> rows = new ArrayList<>();
    counts.forEach(
        (key, count) -> {
          Part part = first.get(key);
          rows.add(
              List.of(
                  part.name(),
                  Integer.toString(count),
                  size(part.blank().net().size()),
                  part.plan().common().timber()));
        });
    return Optional.of(
        new Sheet(
            "Small pieces",
            List.of(
                new Text("What the joints bring along; make a few more than you need."),
                new Block.Table(
                    List.of("piece", "count", "size", "timber"),
                    rows,
                    List.of(0.3, 0.1, 0.4, 0.2),
                    false))));
  }
}
