package dryfit.shop.jig;

import dryfit.document.Hand;
import dryfit.document.JigKind;
import dryfit.geometry.Plane;
import java.util.List;

/**
 * A jig: what it is for, and its pieces.
 *
 * @param kind of jig
 * @param name for people; no two of a chair are alike
 * @param part index of the part it sits on; -1 if it sits on none
 * @param joint index of the joint it serves; -1 if it serves none
 * @param hand which of a pair; none if both take the same jig
 * @param letters what is engraved, line by line
 * @param pieces as printed; more than one where the bed is too small
 * @param rests faces of the part that it has to touch, chair space, normals out of the wood
 * @param guides faces of the jig that lead a tool, chair space, normals out of the jig
 * @param bores holes that lead a drill
 * @param notes what the maker has to know, one sentence each
 */
public record Jig(
    JigKind kind,
    String name,
    int part,
    int joint,
    Hand hand,
    List<String> letters,
    List<JigPiece> pieces,
    List<Plane> rests,
    List<Plane> guides,
    List<Bore> bores,
    List<String> notes) {
  public Jig {
    letters = List.copyOf(letters);
    pieces = List.copyOf(pieces);
    rests = List.copyOf(rests);
    guides = List.copyOf(guides);
    bores = List.copyOf(bores);
    notes = List.copyOf(notes);
  }
}
