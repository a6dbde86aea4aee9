package dryfit.export.book;

import dryfit.build.Chair;
import dryfit.export.book.Block.Caution;
import dryfit.export.book.Block.Text;
import dryfit.export.book.Book.Sheet;
import dryfit.shop.Step.Kind;
import dryfit.shop.Steps;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The usual cautions for the work that this chair takes (common practice, no source). */
final class Cautions {
  private Cautions() {}

  private static final Set<Kind> SAWN =
      EnumSet.of(Kind.SAW, Kind.SAW_FIRST, Kind.SAW_SECOND, Kind.TAPER, Kind.BLOCK_END);

  private static final Set<Kind> BORED =
      EnumSet.of(
          Kind.MORTISE,
          Kind.MORTISE_BEFORE_SAWING,
          Kind.MORTISE_LYING_FLAT,
          Kind.MORTISE_IN_OFFCUTS,
          Kind.MORTISE_IN_A_CRADLE,
          Kind.PIN_HOLE,
          Kind.PIN_HOLE_IN_TENON);

  private static final Set<Kind> TENONED =
      EnumSet.of(Kind.TENON, Kind.TENON_ON_BENT, Kind.HOUSED_END, Kind.FOOT);

  private static final Set<Kind> PLOUGHED = EnumSet.of(Kind.REBATE, Kind.GROOVE, Kind.NOTCH);

  private static final Set<Kind> TURNED = EnumSet.of(Kind.TURN, Kind.TURN_TENON, Kind.TURN_END);

  static Sheet sheet(Chair chair) {
    Set<Kind> kinds = EnumSet.noneOf(Kind.class);
    Steps.of(chair).forEach(s -> s.steps().forEach(step -> kinds.add(step.kind())));
    List<Block> out = new ArrayList<>();
    out.add(
        new Text(
            "Follow the manual of each machine and the rules where you work. Guards stay on;"
                + " protect eyes, ears and lungs; no gloves, loose sleeves or long hair near what"
                + " turns. Unplug before you change a blade or a bit."));
    out.add(
        new Caution(
            "Planer and jointer: not for pieces shorter or thinner than the machine's manual"
                + " allows; mill them as one long blank and cut it up after. Push blocks, never"
                + " fingers, over the knives."));
    if (any(kinds, TENONED)) {
      out.add(
          new Caution(
              "Table saw and mitre saw: riving knife and guard in place; a tall piece goes through a"
                  + " jig that holds it, not past the fence by hand; never use gauge and fence"
                  + " together on a piece that is cut off. Check each tilt on an offcut."));
    }
    if (any(kinds, SAWN)) {
      out.add(
          new Caution(
              "Band saw: guide set just above the work; a part that does not lie flat must be held"
                  + " in its offcuts or a cradle, or the blade pulls it down. Relief cuts before"
                  + " tight curves; hands beside the line of cut, not in it."));
    }
    if (any(kinds, BORED)) {
      out.add(
          new Caution(
              "Drill and mortiser: clamp the work, also when it seems heavy enough; a leaning hole"
                  + " pulls the bit aside, so start it slowly, with a bit that has a point and"
                  + " spurs. Back up what is bored through."));
    }
    if (any(kinds, PLOUGHED)) {
      out.add(
          new Caution(
              "Router: feed against the turn of the bit, in several passes; a bit that follows a"
                  + " pattern grabs at end grain, so cut downhill, and turn the part over where the"
                  + " grain turns."));
    }
    if (any(kinds, TURNED)) {
      out.add(
          new Caution(
              "Lathe: sound blanks without checks; turn it by hand once before you switch on; slow"
                  + " until it is round; face shield on; rest close to the work and never moved"
                  + " while it turns."));
    }
    if (kinds.contains(Kind.BEND)) {
      out.add(
          new Caution(
              "Steam: never close the box tight; steam that you cannot see burns. Gloves for hot"
                  + " wood, and everything ready before it leaves the box. What springs back or"
                  + " breaks does so without warning: stand out of its way."));
    }
    if (kinds.contains(Kind.HOLLOW)) {
      out.add(
          new Caution("Hollowing: clamp the seat; both hands behind the edge, whatever the tool."));
    }
    out.add(
        new Caution(
            "Chisel and knife: both hands behind the edge, work clamped, edges sharp; a dull one"
                + " slips."));
    out.add(
        new Caution(
            "Glue, finish and dust: read the label, air the room, and put oily rags flat to dry out"
                + " of doors: heaped they can catch fire by themselves. Dust of some timbers harms"
                + " lungs and skin."));
    out.add(
        new Text(
            "A solid that fits says nothing about strength, the wood in your hand, or how it will"
                + " move. Where people depend on a load being carried, and for anything sold or for"
                + " the public, follow local codes and ask a licensed professional."));
    return new Sheet("Cautions", out);
  }

  private static boolean any(Set<Kind> have, Set<Kind> of) {
    return of.stream().anyMatch(have::contains);
  }
}
