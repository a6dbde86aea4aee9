package dryfit.export;

/**
 * What pages of figures have in common: how they look by day and by night, on a wide screen and on
 * a telephone.
 */
final class PlainPage {
  private PlainPage() {}

  private static final String LOOK =
      ":root{--paper:#fbf8f1;--ink:#1d1712;--quiet:#6b6158;--line:#cfc6b8;--no:#a51d1d;"
          + "--good:#dfead9;--beyond:#e6e2da;--plot:#1f4e79;color-scheme:light dark}\n"
          + "@media (prefers-color-scheme:dark){:root{--paper:#191614;--ink:#f0e9dd;"
          + "--quiet:#a89d90;--line:#4a423a;--no:#ff8d7d;--good:#2c3a29;--beyond:#38342d;--plot:#8fbce6}}\n"
          + "*{box-sizing:border-box}\n"
          + "body{font:16px/1.45 Georgia,serif;margin:0 auto;max-width:70em;padding:1em 16px 4em;"
          + "background:var(--paper);color:var(--ink);overflow-wrap:break-word}\n"
          + ".wide{overflow-x:auto}pre{font-size:.9rem;margin:0}\n"
          + "table{border-collapse:collapse;margin:1em 0}th,td{padding:.15em .8em;"
          + "border-bottom:1px solid var(--line);text-align:right;white-space:nowrap}"
          + "th:first-child,td:first-child{text-align:left;padding-left:0;white-space:normal}\n"
          + ".grid{display:grid;gap:1em;"
          + "grid-template-columns:repeat(auto-fill,minmax(min(100%,15em),1fr))}\n"
          + ".plots{display:grid;gap:1em;margin:1em 0;"
          + "grid-template-columns:repeat(auto-fill,minmax(min(100%,26em),1fr))}\n"
          + "figure{margin:0}img,svg{display:block;width:100%;height:auto}"
          + "figcaption{color:var(--quiet);font-size:.9rem}.no{color:var(--no)}\n"
          + "svg text{fill:var(--ink)}svg .axis{stroke:var(--quiet)}svg .grid-line"
          + "{stroke:var(--line)}svg .good{fill:var(--good)}svg .beyond{fill:var(--beyond)}svg .line{stroke:var(--plot)}"
          + "svg .at{fill:var(--plot)}\n"
          + "@media print{body{max-width:none}}\n";

  /** Everything before what is in the page. */
  static String head(String title) {
    return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>"
        + ComparePage.escaped(title)
        + "</title>\n<style>"
        + LOOK
        + "</style></head><body>\n<h1>"
        + ComparePage.escaped(title)
        + "</h1>\n";
  }

  /** Everything after it. */
  static String foot() {
    return "<p>A solid that fits says nothing about strength or about the wood in your hand. Where"
        + " a chair tips is told for the chair alone, with no one on it, over the middles of two feet. Use guards and sharp tools, and follow your"
        + " machines' manuals and local codes.</p>\n</body></html>\n";
  }
}
