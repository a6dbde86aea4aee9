package dryfit.app;

import dryfit.document.Design;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names for files that every system takes: lower-case letters, digits and hyphens. */
public final class FileNames {
  private final Set<String> taken = new HashSet<>();

  /** Names that will differ from each other and from {@code reserved}. */
  FileNames(String... reserved) {
    taken.addAll(Set.of(reserved));
  }

  /** The plain form of {@code text}, with a number behind it if that was given out before. */
  String next(String text) {
    String plain = plain(text);
    String name = plain;
    for (int i = 2; !taken.add(name); i++) {
      name = plain + "-" + i;
    }
    return name;
  }

  /** {@code "Front leg, right"} becomes {@code front-leg-right}. */
  static String plain(String text) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-|-$", "");
    return plain.isEmpty() ? "chair" : plain;
  }

  /** Where the files of a chair go unless said otherwise: {@code exports}, model, variant. */
  public static Path folder(Design design) {
    String file = Path.of(design.file()).getFileName().toString();
    String model = plain(file.replaceFirst("\\.[^.]*$", ""));
    boolean drawn = design.variant().equals(Design.AS_DRAWN);
    return Path.of("exports", drawn ? model : model + "-" + plain(design.variant()));
  }
}
