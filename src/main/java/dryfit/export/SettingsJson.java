package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;

import dryfit.build.Chair;
import dryfit.measure.BenchAngle;
import dryfit.shop.setting.Bench;
import dryfit.shop.setting.Reading;
import dryfit.shop.setting.Setting;
import dryfit.shop.setting.Settings;
import java.util.Locale;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Settings as JSON; millimetres and degrees. */
public final class SettingsJson {
  private SettingsJson() {}

  /** The document's name and variant, what is taken for granted, and the settings. */
  public static byte[] bytes(Settings settings) {
    Chair chair = settings.chair();
    ObjectNode out = NODES.objectNode();
    out.put("format", "dryfit-settings/1");
    out.put("name", chair.design().name());
    out.put("variant", chair.design().variant());
    Bench bench = settings.bench();
    ObjectNode taken = out.putObject("bench");
    taken.set("drillPoint", number(bench.drillPoint()));
    taken.put("fits", bench.fits());
    taken.set("eachFit", number(bench.eachFit()));
    ArrayNode bits = taken.putArray("followers");
    for (Bench.Follower bit : bench.followers()) {
      bits.addObject().put("bearing", bit.bearing().word()).set("cutter", number(bit.cutter()));
    }
    ArrayNode all = out.putArray("settings");
    settings.all().forEach(s -> all.add(setting(chair, s)));
    out.set("cautions", JsonOut.texts(settings.cautions()));
    return JsonOut.bytes(out);
  }

  private static ObjectNode setting(Chair chair, Setting s) {
    ObjectNode out = NODES.objectNode();
    out.put("tool", s.tool().word());
    out.put("part", chair.parts().get(s.part()).label());
    if (s.joint().isPresent()) {
      out.put("joint", chair.joints().get(s.joint().getAsInt()).label());
    } else {
      out.putNull("joint");
    }
    out.put("where", s.where());
    ArrayNode readings = out.putArray("readings");
    s.readings().forEach(r -> readings.add(reading(r)));
    out.set("notes", JsonOut.texts(s.notes()));
    return out;
  }

  private static ObjectNode reading(Reading r) {
    ObjectNode out = NODES.objectNode();
    out.put("what", r.what());
    out.put("kind", r.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    if (r instanceof Reading.Bevel bevel) {
      angle(out, bevel.angle());
      out.put("edge", bevel.edge());
      out.put("opposite", bevel.opposite());
    } else if (r instanceof Reading.Scale scale) {
      angle(out, scale.angle());
    } else if (r instanceof Reading.Line line) {
      out.set("angle", degrees(line.angle()));
      out.put("from", line.from());
    } else if (r instanceof Reading.Size size) {
      out.set("length", number(size.mm()));
    } else if (r instanceof Reading.Span span) {
      out.set("from", number(span.from()));
      out.set("to", number(span.to()));
      out.put("origin", span.origin());
    } else if (r instanceof Reading.Count count) {
      out.put("count", count.number());
    }
    out.put("sense", r.sense());
    return out;
  }

  private static void angle(ObjectNode out, BenchAngle angle) {
    out.set("offSquare", degrees(angle.offSquare()));
    out.set("fromLongEdge", degrees(angle.fromLongEdge()));
    out.set("fromShortEdge", degrees(angle.fromShortEdge()));
    out.set("slope", number(angle.rise()));
  }
}
