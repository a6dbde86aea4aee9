package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;

/** An expression of shapes in postfix form: decides from "inside which shapes" to "is it wood". */
final class Expression {
  private static final int AND = -1;
  private static final int OR = -2;
  private static final int AND_NOT = -3;
  private static final int NOTHING = -4;

  final List<Mesh> leaves = new ArrayList<>();
  private final IntList steps = new IntList();
  private final boolean[] stack;

  Expression(Csg what) {
    int depth = compile(what);
    stack = new boolean[depth];
  }

  /** Appends the steps of one branch and returns how deep a stack it needs. */
  private int compile(Csg what) {
    if (what instanceof Csg.Leaf leaf) {
      steps.add(leaves.size());
      leaves.add(leaf.mesh());
      return 1;
    }
    if (what instanceof Csg.Union union) {
      return compile(union.of(), OR);
    }
    if (what instanceof Csg.Common common) {
      return compile(common.of(), AND);
    }
    Csg.Cut cut = (Csg.Cut) what;
    int depth = compile(cut.from());
    for (Csg tool : cut.tools()) {
      depth = Math.max(depth, 1 + compile(tool));
      steps.add(AND_NOT);
    }
    return depth;
  }

  private int compile(List<Csg> of, int join) {
    int depth = 1;
    if (of.isEmpty()) {
      steps.add(NOTHING);
    }
    for (int i = 0; i < of.size(); i++) {
      depth = Math.max(depth, (i > 0 ? 1 : 0) + compile(of.get(i)));
      if (i > 0) {
        steps.add(join);
      }
    }
    return depth;
  }

  /** Whether a place inside exactly these leaves is inside the whole. */
  boolean holds(boolean[] inside) {
    int top = 0;
    for (int i = 0; i < steps.size; i++) {
      int step = steps.at[i];
      if (step >= 0) {
        stack[top++] = inside[step];
      } else if (step == NOTHING) {
        stack[top++] = false;
      } else {
        top--;
        boolean second = stack[top];
        boolean first = stack[top - 1];
        stack[top - 1] =
            step == AND ? first && second : step == OR ? first || second : first && !second;
      }
    }
    return stack[0];
  }
}
