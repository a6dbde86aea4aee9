package dryfit.document;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;

/** The kinds of jigs that can be made. */
public enum JigKind {
  /** Blocks on the mortised face that guide the chisel along the cheeks and the drill down. */
  ANGLE_GUIDE("angle-guide"),
  /** A plate that has the angles of a joint at its ends, to set a bevel gauge by. */
  BEVEL_SETTER("bevel-setter"),
  /** A stick from the end of the mortised part to the mortise. */
  HEIGHT_STICK("height-stick"),
  /** A stick as long as the distance between two places. */
  SPACER("spacer"),
  /** A tongue as deep as the mortise. */
  DEPTH_GAUGE("depth-gauge"),
  /** A square that leads the saw in the plane of the shoulder. */
  SHOULDER_GUIDE("shoulder-guide"),
  /** A bed that holds the mortised part with the joint's line plumb, under a drill. */
  CRADLE("cradle"),
  /** A pad on the far side of the mortised part, square to the line of the clamp. */
  CAUL("caul");

  private final String word;

  JigKind(String word) {
    this.word = word;
  }

  /** The word in the document and on the command line. */
  public String word() {
    return word;
  }

  /** All of them by their words, in order. */
  public static Map<String, JigKind> byWord() {
    Map<String, JigKind> words = new LinkedHashMap<>();
    Arrays.stream(values()).forEach(k -> words.put(k.word, k));
    return words;
  }
}
