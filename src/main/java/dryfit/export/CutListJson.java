package dryfit.export;

import static dryfit.export.JsonOut.NODES;
import static dryfit.export.JsonOut.degrees;
import static dryfit.export.JsonOut.number;

import dryfit.build.Chair;
import dryfit.geometry.Vec2;
import dryfit.shop.Blank;
import dryfit.shop.BoardLayout;
import dryfit.shop.BoardMeasure;
import dryfit.shop.CutList;
import dryfit.shop.CutList.Row;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A cut list as JSON; millimetres, kilograms, board feet not rounded. */
public final class CutListJson {
  private CutListJson() {}

  /** The document's name and variant, the groups, the pieces and the totals. */
  public static byte[] bytes(Chair chair, CutList list, Optional<BoardLayout> layout) {
    ObjectNode out = node(chair, list);
    out.set("layout", layout.map(CutListJson::layout).orElse(NODES.nullNode()));
    return JsonOut.bytes(out);
  }

  static ObjectNode node(Chair chair, CutList list) {
    ObjectNode out = NODES.objectNode();
    out.put("format", "dryfit-boards/1");
    out.put("name", chair.design().name());
    out.put("variant", chair.design().variant());
    ObjectNode allow = out.putObject("allow");
    allow.set("length", number(list.plan().allow().length()));
    allow.set("width", number(list.plan().allow().width()));
    allow.set("thickness", number(list.plan().allow().thickness()));
    ArrayNode groups = out.putArray("groups");
    for (CutList.Group group : list.groups()) {
      ObjectNode node = groups.addObject();
      node.put("timber", group.timber());
      node.put("from", group.from().map(c -> c.word()).orElse(null));
      node.set("rough", number(group.from().map(c -> c.rough()).orElse(Double.NaN)));
      node.set("planed", number(group.from().map(c -> c.surfaced()).orElse(Double.NaN)));
      node.set("boardFeet", number(group.boardFeet()));
      node.set("cubicMetres", number(group.cubicMetres()));
      node.put("buyBoardFeet", BoardMeasure.toBuy(group.boardFeet(), list.plan().waste()));
      node.set("blankMass", number(group.mass()));
      node.set("blanks", rows(group.rows()));
    }
    out.set("pieces", rows(list.pieces()));
    out.set("boardFeet", number(list.boardFeet()));
    out.set("mass", number(list.mass()));
    return out;
  }

  private static JsonNode rows(List<Row> rows) {
    ArrayNode out = NODES.arrayNode();
    for (Row row : rows) {
      ObjectNode node = out.addObject();
      node.put("part", row.name());
      node.put("count", row.count());
      node.put("pair", row.pair());
      node.put("timber", row.timber());
      node.set("finished", size(row.finished()));
      node.set("blank", size(row.rough()));
      node.set("boardFeet", number(row.boardFeet()));
      node.set("volume", number(row.volume()));
      node.set("mass", number(row.mass()));
    }
    return out;
  }

  private static JsonNode layout(BoardLayout layout) {
    ObjectNode out = NODES.objectNode();
    out.set("yield", number(layout.yielded()));
    ArrayNode boards = out.putArray("boards");
    for (BoardLayout.Laid laid : layout.boards()) {
      ObjectNode node = boards.addObject();
      node.put("name", laid.name());
      node.set("used", number(laid.used()));
      ArrayNode parts = node.putArray("parts");
      for (BoardLayout.Placed part : laid.parts()) {
        ObjectNode one = parts.addObject();
        one.put("part", part.label());
        one.put("up", part.up());
        one.put("endForEnd", part.endForEnd());
        one.set("turn", degrees(part.turn()));
        one.set("offGrain", degrees(part.offGrain()));
        one.set("finished", loop(part.net()));
        one.set("blank", loop(part.rough()));
      }
    }
    out.set("notes", JsonOut.texts(BoardWords.notes(layout)));
    return out;
  }

  private static JsonNode loop(List<Vec2> loop) {
    ArrayNode out = NODES.arrayNode();
    loop.forEach(p -> out.addArray().add(number(p.x())).add(number(p.y())));
    return out;
  }

  private static JsonNode size(Blank.Size size) {
    return NODES
        .arrayNode()
        .add(number(size.length()))
        .add(number(size.width()))
        .add(number(size.thickness()));
  }
}
