package dryfit.export.book;

import dryfit.build.Joint;
import dryfit.export.AssemblyText;
import dryfit.export.TextStyle;
import dryfit.export.book.Block.Caution;
import dryfit.export.book.Block.Heading;
import dryfit.export.book.Block.Text;
import dryfit.export.book.Book.Sheet;
import dryfit.fit.FitReport;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import java.util.ArrayList;
import java.util.List;

/**
 * The order of work: joints while faces are flat, a dry fit, shaping, another dry fit, glue (common
 * practice, no source), and what to measure when.
 */
final class WorkSheets {
  private WorkSheets() {}

  static List<Sheet> of(FitReport report, Assembling order, TextStyle style) {
    return List.of(stages(order, style), dryFit(report, order, style));
  }

  private static Sheet stages(Assembling order, TextStyle style) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Text(
            "Each part's own steps are on its page. This is how they go together; tick what is"
                + " done."));
    blocks.add(
        new Block.Steps(
            List.of(
                "Square all blanks; mark face side, face edge, which way is up, and the hand.",
                "Cut feet, and bend what is bent: heights and joints are marked from them.",
                "Cut every mortise, groove and rebate while faces are flat. Test on an offcut of the"
                    + " same thickness first.",
                "Cut shoulders and tenons, each fitted to its own mortise; letter both sides.",
                "First dry fit, joint by joint and then frame by frame, in the order below. Measure"
                    + " what the next page lists and write it down.",
                "Saw, taper and turn to shape, with the joints dry in your mind: no cut may reach a"
                    + " mortise.",
                "Cut the mortises that go into finished faces, and bore for pins.",
                "Second dry fit of everything, with the clamps you will use. Measure again.",
                "Ease edges, clean up what glue will make hard to reach, then glue in the order"
                    + " below.")));
    if (!order.possible()) {
      blocks.add(new Caution("Not everything goes together:"));
      AssemblyText.stuck(order, style).forEach(line -> blocks.add(new Text(line)));
    }
    blocks.add(new Heading("How it goes together"));
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < order.steps().size(); i++) {
      Step step = order.steps().get(i);
      rows.add(
          List.of(
              Integer.toString(i + 1),
              String.join("\n", AssemblyText.sentences(order, i, style)),
              String.join("\n", step.closes().stream().map(Joint::label).toList())));
    }
    blocks.add(
        new Block.Table(List.of("", "step", "closes"), rows, List.of(0.05, 0.55, 0.4), false));
    List<String> marks = AssemblyText.marks(order, style);
    if (!marks.isEmpty()) {
      blocks.add(new Heading("Mark these: they also go in wrong"));
      marks.forEach(m -> blocks.add(new Text(m + ".")));
    }
    return new Sheet("Order of work", blocks);
  }

  private static Sheet dryFit(FitReport report, Assembling order, TextStyle style) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Text(
            "What was measured on the solids, and a box for what you find. The number of the step"
                + " says when it can be measured: the step after which both parts are there. Shoulders"
                + " that are not listed close all round: no light between them."));
    List<List<String>> rows = new ArrayList<>();
    for (DryMeasures.Measure m : DryMeasures.of(report, order, style)) {
      rows.add(List.of(Integer.toString(m.after()), m.what(), m.expected()));
    }
    blocks.add(
        new Block.Table(
            List.of("step", "measure", "expected"), rows, List.of(0.07, 0.68, 0.25), true));
    return new Sheet("What to measure at the dry fit", blocks);
  }
}
