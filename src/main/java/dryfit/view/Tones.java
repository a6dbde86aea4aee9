package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Joint;
import java.util.BitSet;

/** Tones for cut faces, so that parts which are joined are told apart. */
final class Tones {
  private Tones() {}

  /**
   * A number for each part, as small as can be, that no part has which is joined to it and comes
   * before it; in the chair's order.
   */
  static int[] of(Chair chair) {
    int[] tones = new int[chair.parts().size()];
    for (int part = 0; part < tones.length; part++) {
      BitSet taken = new BitSet();
      for (Joint joint : chair.joints()) {
        if (joint.tenoned() == part && joint.mortised() < part) {
          taken.set(tones[joint.mortised()]);
        } else if (joint.mortised() == part && joint.tenoned() < part) {
          taken.set(tones[joint.tenoned()]);
        }
      }
      tones[part] = taken.nextClearBit(0);
    }
    return tones;
  }
}
