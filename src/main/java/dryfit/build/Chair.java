package dryfit.build;

import dryfit.document.Design;
import java.util.List;

/** A chair of placed, finished parts and the joints between them; order follows the document. */
public record Chair(Design design, List<Part> parts, List<Joint> joints) {
  public Chair {
    parts = List.copyOf(parts);
    joints = List.copyOf(joints);
  }
}
