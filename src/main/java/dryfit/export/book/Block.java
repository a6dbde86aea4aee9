package dryfit.export.book;

import dryfit.export.paper.Ink;
import dryfit.export.paper.Png;
import java.util.List;

/** One thing on a sheet of the book. */
public sealed interface Block {

  /** A title within a sheet. */
  record Heading(String text) implements Block {}

  /** A paragraph. */
  record Text(String text) implements Block {
    public Text {
      text = neat(text);
    }
  }

  /** A paragraph that nobody should overlook. */
  record Caution(String text) implements Block {
    public Caution {
      text = neat(text);
    }
  }

  /** Something done one after the other, with a box to tick. */
  record Steps(List<String> sentences) implements Block {
    public Steps {
      sentences = sentences.stream().map(Block::neat).toList();
    }
  }

  /**
   * A table; every row has as many cells as the head.
   *
   * @param shares of the width that each column gets
   * @param box whether there is an empty box at the end of each row to write into
   */
  record Table(List<String> head, List<List<String>> rows, List<Double> shares, boolean box)
      implements Block {
    public Table {
      head = List.copyOf(head);
      rows = rows.stream().map(row -> row.stream().map(Block::neat).toList()).toList();
      shares = List.copyOf(shares);
    }
  }

  /**
   * A drawing to scale.
   *
   * @param width on paper, mm
   * @param height on paper, mm
   * @param ink its lower left corner is the origin
   * @param scale millimetres on paper for one of the chair
   */
  record Drawing(String caption, double width, double height, List<Ink> ink, double scale)
      implements Block {
    public Drawing {
      ink = List.copyOf(ink);
    }
  }

  /**
   * Pictures side by side.
   *
   * @param share of the width of the page that they take together
   */
  record Pictures(List<Picture> pictures, double share) implements Block {
    public Pictures {
      pictures = List.copyOf(pictures);
    }
  }

  /**
   * A picture.
   *
   * @param aspect width over height
   */
  record Picture(String caption, Png png, double aspect) {}

  /** A picture on the left and facts on the right. */
  record Facts(Picture picture, List<Fact> facts) implements Block {
    public Facts {
      facts = List.copyOf(facts);
    }
  }

  /** A name and what it is. */
  record Fact(String name, String text) {
    public Fact {
      text = neat(text);
    }
  }

  /** Without remainders too small to print: on a page they only fill the line. */
  private static String neat(String text) {
    return text.replace(" (+0.000)", "").replace(" (−0.000)", "");
  }
}
