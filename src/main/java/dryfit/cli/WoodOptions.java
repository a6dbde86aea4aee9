package dryfit.cli;

import dryfit.document.BoardsPlan;
import dryfit.document.BoardsPlan.Allowance;
import dryfit.document.BoardsPlan.Board;
import dryfit.document.Design;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What the maker says about boards and blanks when asking, over what the document says. */
final class WoodOptions {
  @Option(
      names = "--allow",
      paramLabel = "L,W,T",
      description = "what blanks are longer, wider and thicker than the finished parts")
  private String allow;

  @Option(
      names = "--waste",
      paramLabel = "SHARE",
      description = "the share to buy on top of the blanks, such as 0.3")
  private Double waste;

  @Option(names = "--kerf", paramLabel = "LENGTH", description = "width of the saw cut")
  private String kerf;

  @Option(
      names = "--margin",
      paramLabel = "LENGTH",
      description = "what is left along the edges and ends of a board")
  private String margin;

  @Option(
      names = "--grain-within",
      paramLabel = "DEGREES",
      description = "greatest angle between the grain of a part and that of its board")
  private Double within;

  @Option(
      names = "--board",
      paramLabel = "LxWxT",
      description = {
        "a board that is there: length, width and thickness as it lies; several boards",
        "by several options; they take the place of those in the document"
      })
  private List<String> boards = new ArrayList<>();

  /** The plan of the document with these options over it; lengths in the document's unit. */
  BoardsPlan over(Design design, CommandLine command) {
    Length.Unit unit = design.unit().printed();
    BoardsPlan plan = design.boards();
    Allowance allowance = plan.allow();
    if (allow != null) {
      double[] sizes = sizes("--allow", allow, ",", unit, command);
      allowance = new Allowance(sizes[0], sizes[1], sizes[2]);
    }
    List<Board> have = new ArrayList<>();
    for (String board : boards) {
      double[] s = sizes("--board", board, "[x×]", unit, command);
      if (s[0] <= 0 || s[1] <= 0 || s[2] <= 0) {
        throw new ParameterException(command, "--board: every size is above zero");
      }
      String name = "board " + (have.size() + 1);
      have.add(
          new Board(name, design.timber(), s[0], s[1], s[2], false, 0, 1, List.of(), "--board"));
    }
    return new BoardsPlan(
        allowance,
        waste == null ? plan.waste() : notNegative("--waste", waste, 10, command),
        kerf == null ? plan.kerf() : length("--kerf", kerf, unit, command),
        margin == null ? plan.margin() : length("--margin", margin, unit, command),
        within == null
            ? plan.grainWithin()
            : Math.toRadians(notNegative("--grain-within", within, 45, command)),
        boards.isEmpty() ? plan.have() : have);
  }

  private static double[] sizes(
      String option, String text, String between, Length.Unit unit, CommandLine command) {
    String[] parts = text.split(between, -1);
    if (parts.length != 3) {
      throw new ParameterException(command, option + " needs three lengths, not '" + text + "'");
    }
    double[] out = new double[3];
    for (int i = 0; i < 3; i++) {
      out[i] = length(option, parts[i], unit, command);
    }
    return out;
  }

  private static double length(String option, String text, Length.Unit unit, CommandLine command) {
    OptionalDouble mm = Length.parse(text.strip(), unit);
    if (mm.isEmpty() || !(mm.getAsDouble() >= 0) || mm.getAsDouble() > 100_000) {
      throw new ParameterException(
          command, option + ": '" + text + "' is not a length from 0 to 100 metres");
    }
    return mm.getAsDouble();
  }

  private static double notNegative(String option, double value, double most, CommandLine command) {
    if (!(value >= 0 && value <= most)) {
      throw new ParameterException(
          command, option + " is from 0 to " + Math.round(most) + ", not " + value);
    }
    return value;
  }
}
