package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;
import static dryfit.export.JsonOut.place;

import dryfit.fit.ChairMeasure;
import dryfit.fit.ChairMeasure.Foot;
import dryfit.fit.ChairMeasure.FrameSquare;
import dryfit.fit.ChairMeasure.GrainRun;
import dryfit.fit.ChairMeasure.MortisePair;
import dryfit.fit.ChairMeasure.SeatLevel;
import dryfit.fit.ChairMeasure.Stance;
import dryfit.fit.JointDetail;
import dryfit.fit.JointDetail.Play;
import dryfit.fit.JointDetail.Setback;
import dryfit.fit.JointDetail.SideGap;
import dryfit.fit.JointDetail.Spot;
import dryfit.fit.JointDetail.Wall;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The measures side by side, and those of the whole chair, as JSON. */
final class DetailJson {
  private DetailJson() {}

  /** Adds a joint's sides, walls, play and set-back. */
  static void add(ObjectNode joint, JointDetail detail) {
    ArrayNode sides = joint.putArray("sides");
    for (SideGap gap : detail.gaps()) {
      ObjectNode side = sides.addObject();
      side.put("side", gap.side());
      side.set("least", spot(gap.least()));
      side.set("greatest", spot(gap.greatest()));
    }
    ArrayNode walls = joint.putArray("walls");
    for (Wall wall : detail.walls()) {
      ObjectNode out = walls.addObject();
      out.put("face", wall.face());
      out.put("end", wall.end());
      out.set("left", spot(wall.left()));
    }
    joint.set("play", detail.play().<JsonNode>map(DetailJson::play).orElse(NODES.nullNode()));
    ArrayNode reveal = joint.putArray("setback");
    detail.reveal().stream()
        .flatMap(r -> r.sides().stream())
        .forEach(s -> setback(reveal.addObject(), s));
  }

  private static void setback(ObjectNode out, Setback s) {
    out.put("face", s.face());
    out.set("by", number(s.by()));
  }

  private static ObjectNode play(Play play) {
    ObjectNode out = NODES.objectNode();
    out.set("acrossCheeks", degrees(play.acrossCheeks()));
    out.set("swingAcrossCheeks", number(play.swingAcrossCheeks()));
    if (play.acrossEdges().isPresent()) {
      out.set("acrossEdges", degrees(play.acrossEdges().getAsDouble()));
      out.set("swingAcrossEdges", number(play.swingAcrossEdges().orElseThrow()));
    } else {
      out.putNull("acrossEdges");
      out.putNull("swingAcrossEdges");
    }
    out.set("lever", number(play.lever()));
    return out;
  }

  private static ObjectNode spot(Spot spot) {
    ObjectNode out = NODES.objectNode();
    out.set("value", number(spot.value()));
    out.set("at", place(spot.at()));
    out.put("where", spot.where());
    return out;
  }

  /** The chair as a whole. */
  static ObjectNode whole(ChairMeasure whole) {
    ObjectNode out = NODES.objectNode();
    ArrayNode frames = out.putArray("frames");
    for (FrameSquare f : whole.frames()) {
      ObjectNode frame = frames.addObject();
      frame.put("which", f.which());
      frame.set("fromLeft", number(f.fromLeft()));
      frame.set("fromRight", number(f.fromRight()));
      frame.set("shift", number(f.shift()));
      frame.set("angle", degrees(f.angle()));
    }
    out.set("stance", whole.stance().<JsonNode>map(DetailJson::stance).orElse(NODES.nullNode()));
    out.set("level", whole.level().<JsonNode>map(DetailJson::level).orElse(NODES.nullNode()));
    ArrayNode grain = out.putArray("grain");
    for (GrainRun g : whole.grain()) {
      ObjectNode run = grain.addObject();
      run.put("part", g.part());
      run.set("slope", degrees(g.slope()));
      run.set("steepest", place(g.steepest()));
      run.set("fibre", number(g.fibre()));
      run.set("shortest", place(g.shortest()));
    }
    ArrayNode mortises = out.putArray("mortises");
    for (MortisePair m : whole.mortises()) {
      ObjectNode pair = mortises.addObject();
      pair.put("part", m.part());
      pair.put("first", m.first());
      pair.put("second", m.second());
      pair.set("wood", number(m.wood()));
      pair.set("at", place(m.at()));
      ArrayNode plug = pair.putArray("plug");
      m.plug().forEach(size -> plug.add(number(size)));
    }
    return out;
  }

  private static ObjectNode stance(Stance s) {
    ObjectNode out = NODES.objectNode();
    out.put("stands", s.stands());
    out.set("rock", number(s.rock()));
    out.set("middle", place(s.middle()));
    out.set("up", place(s.up()));
    ArrayNode feet = out.putArray("feet");
    for (Foot f : s.feet()) {
      ObjectNode foot = feet.addObject();
      foot.put("part", f.part());
      foot.set("at", place(f.at()));
      foot.set("gap", number(f.gap()));
      foot.set("trim", number(f.trim()));
    }
    return out;
  }

  private static ObjectNode level(SeatLevel l) {
    ObjectNode out = NODES.objectNode();
    ArrayNode corners = out.putArray("corners");
    for (int i = 0; i < l.corners().size(); i++) {
      ObjectNode corner = corners.addObject();
      corner.put("leg", l.corners().get(i).part());
      corner.set("at", place(l.corners().get(i).at()));
      corner.set("height", number(l.heights().get(i)));
    }
    out.set("sideways", degrees(l.sideways()));
    out.set("foreAft", degrees(l.foreAft()));
    return out;
  }
}
