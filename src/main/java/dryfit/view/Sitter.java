package dryfit.view;

/**
 * Someone to hold a chair against: body sizes, unshod, mm. Medians of the women (1986) and men
 * (4082) of ANSUR II, the US Army's survey of 2012: Gordon et al., NATICK/TR-15/007, 2014, worked
 * out from its public data. A person is not a median: measure who the chair is for.
 *
 * @param word what to call them
 * @param stature standing height
 * @param knee height of the top of the knee, sitting
 * @param hollow height of the hollow of the knee above the floor, sitting (popliteal)
 * @param toHollow from the buttocks to the hollow of the knee
 * @param toKnee from the buttocks to the front of the knee
 * @param sitting from the seat to the top of the head
 * @param elbow from the seat to the elbow at rest
 * @param hips breadth of the hips, sitting
 * @param shoulders breadth over the shoulders
 */
record Sitter(
    String word,
    double stature,
    double knee,
    double hollow,
    double toHollow,
    double toKnee,
    double sitting,
    double elbow,
    double hips,
    double shoulders) {
  static final String SOURCE = "ANSUR II 2012, medians, without shoes";

  static final Sitter WOMAN = new Sitter("a woman", 1626, 510, 387, 483, 589, 857, 233, 397, 450);

  static final Sitter MAN = new Sitter("a man", 1755, 553, 430, 502, 617, 918, 246, 378, 509);
}
