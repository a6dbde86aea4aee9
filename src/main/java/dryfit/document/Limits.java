package dryfit.document;

/**
 * How large a document may be, so that a hostile file costs a message and not a machine. Each limit
 * is far above any chair; the last value allowed is the limit itself.
 */
final class Limits {
  private Limits() {}

  /** Size of the file in bytes of UTF-8: 1 MiB. */
  static int bytes() {
    return 1 << 20;
  }

  /** Objects and lists inside one another. */
  static int nesting() {
    return 64;
  }

  /** Characters of the name of a chair, dimension, part, joint or variant. */
  static int name() {
    return 80;
  }

  /** Characters of a note or another text that is not a name. */
  static int text() {
    return 2000;
  }

  static int dimensions() {
    return 1000;
  }

  static int parts() {
    return 1000;
  }

  static int joints() {
    return 4000;
  }

  /** Each variant is a chair to be read whole, hence fewer of them. */
  static int variants() {
    return 50;
  }

  /** Points, stations, references or other items in any one list. */
  static int items() {
    return 2000;
  }

  /** Tenons, dowels, screws or wedges in one joint. */
  static int row() {
    return 20;
  }

  /** Characters of an expression. */
  static int expression() {
    return 500;
  }

  /** Brackets, calls and signs inside one another in an expression. */
  static int expressionDepth() {
    return 50;
  }

  /** Greatest length, in millimetres: a hundred metres. */
  static double longest() {
    return 100_000;
  }

  /** Problems reported for one document; the rest are counted. */
  static int problems() {
    return 200;
  }
}
