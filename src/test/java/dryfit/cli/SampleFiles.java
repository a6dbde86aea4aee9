package dryfit.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The samples in {@code exports}, by the table of its page; run as a program, makes them anew. */
final class SampleFiles {
  static final Path EXPORTS = Path.of("exports");

  private static final Pattern ROW = Pattern.compile("\\| `([^`]+)` \\| `([^`]+)` \\|");

  /** A word of a command, in quotation marks if it has spaces. */
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

  private SampleFiles() {}

  /** Makes them anew. */
  public static void main(String[] args) throws IOException {
    Path made = Files.createTempDirectory("dryfit-samples");
    write(made);
    for (String file : commands().keySet()) {
      Path to = EXPORTS.resolve(file);
      Files.createDirectories(to.getParent());
      Files.write(to, Files.readAllBytes(made.resolve(file)));
    }
  }

  /** Which command wrote which file, as the page says. */
  static Map<String, String> commands() throws IOException {
    Map<String, String> all = new LinkedHashMap<>();
    Matcher rows = ROW.matcher(Files.readString(EXPORTS.resolve("README.md")));
    while (rows.find()) {
      all.put(rows.group(1), rows.group(2));
    }
    return all;
  }

  /** Runs every command once, with another folder in the place of {@code exports}. */
  static void write(Path folder) throws IOException {
    for (String command : commands().values().stream().distinct().toList()) {
      run(command, folder);
    }
  }

  private static void run(String command, Path folder) throws IOException {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      String text = word.group(1) != null ? word.group(1) : word.group(2);
      words.add(text.startsWith("exports/") ? folder.resolve(text.substring(8)).toString() : text);
    }
    int into = words.indexOf(">");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    List<String> arguments = into < 0 ? words : words.subList(0, into);
    int code =
        Main.run(
            arguments.toArray(String[]::new),
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            false);
    if (code != 0) {
      throw new AssertionError(command + " ends with " + code + ": " + err);
    }
    if (into >= 0) {
      Path file = Path.of(words.get(into + 1));
      Files.createDirectories(file.getParent());
      Files.write(file, out.toByteArray());
    }
  }
}
