package dryfit.document;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;

/** The examples on the page that explains the format, as whole documents. */
public final class FormatPage {
  private FormatPage() {}

  static final Path PAGE = Path.of("models", "FORMAT.md");
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```json (\\w+)\\n(.*?)^```");

  /** An example and where it belongs: a whole document, or pieces for one of its objects. */
  record Example(String where, String text) {}

  static List<Example> examples() throws IOException {
    return BLOCK
        .matcher(Files.readString(PAGE))
        .results()
        .map(found -> new Example(found.group(1), found.group(2)))
        .toList();
  }

  /** Each example as a document of its own: pieces are added to the first document of the page. */
  public static List<String> documents() throws IOException {
    List<Example> examples = examples();
    String first = examples.get(0).text();
    return examples.stream().map(example -> whole(example, first)).toList();
  }

  private static String whole(Example example, String first) {
    if (example.where().equals("document")) {
      return example.text();
    }
    String opening = example.where().equals("top") ? "{\n" : "  \"" + example.where() + "\": {\n";
    int at = first.indexOf(opening);
    if (at < 0) {
      throw new AssertionError("the first document has no " + example.where());
    }
    at += opening.length();
    return first.substring(0, at) + example.text().stripTrailing() + ",\n" + first.substring(at);
  }
}
