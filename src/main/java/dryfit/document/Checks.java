package dryfit.document;

import java.util.List;

/**
 * The ids of everything a fit may find, as a waiver names them; a test holds them to the sources.
 */
public final class Checks {
  private Checks() {}

  private static final List<String> IDS =
      List.of(
          "parts-collide",
          "tenons-meet",
          "tenon-too-fat",
          "tenon-outside",
          "mortise-breaks-out",
          "shoulder-open",
          "no-glue-room",
          "tenon-loose",
          "thin-wall",
          "mortises-meet",
          "tenon-short",
          "tenon-wide",
          "tenon-thin",
          "tenon-thick",
          "tenon-outgrows-stock",
          "tenon-short-grain",
          "dowel-thick",
          "wedges-slack",
          "twisted-leg",
          "mortise-near-end",
          "post-may-split",
          "arm-hole-near-edge",
          "arm-tenon-short",
          "side-rail-joint",
          "reveal-uneven",
          "out-of-square",
          "out-of-level",
          "rocks",
          "tips-over",
          "grain-runs-out",
          "short-fibre",
          "notch-idle",
          "could-not-measure",
          "waiver-idle");

  /** All of them. */
  public static List<String> ids() {
    return IDS;
  }
}
