package dryfit.fit;

import java.util.List;

/** One question asked of a chair. Nothing found means that it was asked and all is well. */
interface Check {
  /**
   * @param measured the joints' measures, in the order of the chair's joints
   */
  List<Finding> findings(Assembly assembly, List<JointFit> measured);
}
