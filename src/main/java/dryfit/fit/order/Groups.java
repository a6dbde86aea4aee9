package dryfit.fit.order;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.geometry.Box;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** The names a maker gives to what is glued up before the rest. */
public final class Groups {
  /** A leg stands in the lowest tenth of the chair. */
  private static final double LOW = 0.1;

  private final Chair chair;
  private final Box all;
  private final BitSet legs;

  public Groups(Chair chair) {
    this.chair = chair;
    List<Box> boxes = chair.parts().stream().map(p -> p.placedMesh().bounds()).toList();
    this.all = boxes.stream().reduce(Box::with).orElseThrow();
    double low = all.low().z() + LOW * all.size().z();
    this.legs = new BitSet();
    for (int i = 0; i < boxes.size(); i++) {
      Box box = boxes.get(i);
      boolean upright = box.size().z() > Math.max(box.size().x(), box.size().y());
      legs.set(i, upright && box.low().z() <= low);
    }
  }

  /** Right or left side, front or back frame: a group with two legs that is one. */
  public Optional<String> frame(BitSet group) {
    BitSet standing = (BitSet) group.clone();
    standing.and(legs);
    if (standing.cardinality() != 2 || group.cardinality() < 3) {
      return Optional.empty();
    }
    Hand hand = hand(group);
    if (hand != Hand.NONE) {
      boolean seated = chair.design().labels() == Design.Labels.AS_SEATED;
      return Optional.of((seated ? hand.other() : hand) == Hand.RIGHT ? "right side" : "left side");
    }
    Part one = chair.parts().get(standing.nextSetBit(0));
    Part other = chair.parts().get(standing.length() - 1);
    return one.name().equals(other.name()) ? end(group) : Optional.empty();
  }

  /** The hand of all parts of a group, if it is one hand. */
  private Hand hand(BitSet group) {
    Hand first = chair.parts().get(group.nextSetBit(0)).hand();
    return group.stream().allMatch(i -> chair.parts().get(i).hand() == first) ? first : Hand.NONE;
  }

  private Optional<String> end(BitSet group) {
    Box box =
        group.stream()
            .mapToObj(i -> chair.parts().get(i).placedMesh().bounds())
            .reduce(Box::with)
            .orElseThrow();
    double middle = all.middle().y();
    if (box.high().y() < middle) {
      return Optional.of("front frame");
    }
    return box.low().y() > middle ? Optional.of("back frame") : Optional.empty();
  }
}
