package dryfit.document;

import dryfit.document.JointPlan.End;
import dryfit.document.JointPlan.EndRef;
import dryfit.document.PartPlan.PartRef;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads how a document speaks of a part ({@code front-leg left}) or an end of it. */
final class Refs {
  private static final Map<String, Hand> HANDS = Map.of("left", Hand.LEFT, "right", Hand.RIGHT);
  private static final Map<String, End> ENDS = new LinkedHashMap<>();

  static {
    for (End end : End.values()) {
      ENDS.put(end.name().toLowerCase(Locale.ROOT), end);
    }
  }

  private final Context context;

  Refs(Context context) {
    this.context = context;
  }

  /** {@code part}, {@code part left} or {@code part right}. */
  PartRef part(Fields fields, Json node) {
    List<String> words = words(fields, node);
    String name = words.get(0);
    Hand hand = Hand.NONE;
    if (known(node, name) && words.size() > 1) {
      hand = hand(node, words.get(1), name);
      if (words.size() > 2) {
        notAWord(node, words.get(2), List.of(), "needed after the hand");
      }
    }
    return new PartRef(name, hand, node.pointer());
  }

  /**
   * Two parts, or more, that a part without a twin stands between: it cannot know by itself which
   * of a pair is meant.
   */
  void needHand(boolean pair, PartRef ref, Json node) {
    boolean ofPair = context.parts().getOrDefault(ref.part(), false);
    if (!pair && ofPair && ref.hand() == Hand.NONE) {
      context
          .problems()
          .add(
              "which-hand",
              node.at(),
              ref.part(),
              ref.part() + " right, " + ref.part() + " left",
              "there are two of "
                  + Problems.quoted(ref.part())
                  + "; say "
                  + Problems.quoted(ref.part() + " right")
                  + " or "
                  + Problems.quoted(ref.part() + " left"));
    }
  }

  /** {@code part end}, or for one of a pair {@code part left end}. */
  EndRef end(Fields fields, Json node) {
    List<String> words = words(fields, node);
    String name = words.get(0);
    Hand hand = Hand.NONE;
    End end = End.BOTH;
    if (known(node, name)) {
      int next = 1;
      boolean pair = context.parts().getOrDefault(name, false);
      if (words.size() == 3 && pair && HANDS.containsKey(words.get(1))) {
        hand = HANDS.get(words.get(1));
        next = 2;
      }
      String word = words.size() == next + 1 ? words.get(next) : "";
      if (ENDS.containsKey(word)) {
        end = ENDS.get(word);
      } else {
        String written =
            String.join(" ", words.subList(Math.min(next, words.size()), words.size()));
        context
            .problems()
            .unknown(
                "absent-end",
                node.at(),
                written,
                ENDS.keySet(),
                "an end of " + Problems.quoted(name));
      }
    }
    return new EndRef(name, hand, end, node.pointer());
  }

  /** A part followed by any words, for what is only written down: {@code arm underside}. */
  String loosely(Fields fields, Json node) {
    List<String> words = words(fields, node);
    known(node, words.get(0));
    return String.join(" ", words);
  }

  private Hand hand(Json node, String word, String part) {
    if (!HANDS.containsKey(word)) {
      notAWord(node, word, List.of("left", "right"), "a hand");
      return Hand.NONE;
    }
    if (!context.parts().get(part)) {
      context
          .problems()
          .add(
              "not-a-pair",
              node.at(),
              word,
              part,
              Problems.quoted(part) + " is not a pair, so it has no left and right");
    }
    return HANDS.get(word);
  }

  private void notAWord(Json node, String word, List<String> known, String what) {
    context.problems().unknown("unknown-word", node.at(), word, known, what);
  }

  private boolean known(Json node, String name) {
    if (name.isEmpty()) {
      return false;
    }
    if (!context.parts().containsKey(name)) {
      context
          .problems()
          .unknown(
              "absent-part", node.at(), name, context.parts().keySet(), "a part of this chair");
      return false;
    }
    return true;
  }

  /** The words of a text; a single empty one, and a problem, if it has none. */
  private List<String> words(Fields fields, Json node) {
    if (!(node instanceof Json.Text text)) {
      fields.wrongType(node, "the name of a part");
      return List.of("");
    }
    List<String> words = List.of(text.value().strip().split("\\s+"));
    if (words.get(0).isEmpty()) {
      context
          .problems()
          .add(
              "missing-value", node.at(), "nothing", "the name of a part", "no part is named here");
    }
    return words;
  }
}
