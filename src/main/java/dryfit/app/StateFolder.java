package dryfit.app;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The folder for what the program remembers from one day to the next: work not yet saved, files
 * opened lately. It may be missing until something is written.
 */
public record StateFolder(Path path) {
  /** Names another folder: an environment variable. */
  public static final String VARIABLE = "DRYFIT_STATE";

  /** The same: a system property, which goes before the variable. */
  public static final String PROPERTY = "dryfit.state";

  /** The one of whoever runs the program. */
  public static StateFolder usual() {
    return of(System::getenv, System::getProperty);
  }

  /**
   * @param variables environment variables by name, null where there is none
   * @param properties system properties likewise
   */
  static StateFolder of(UnaryOperator<String> variables, UnaryOperator<String> properties) {
    Path home = Path.of(properties.apply("user.home"));
    String system =
        Optional.ofNullable(properties.apply("os.name")).orElse("").toLowerCase(Locale.ROOT);
    Optional<Path> named =
        filled(properties.apply(PROPERTY)).or(() -> filled(variables.apply(VARIABLE)));
    if (named.isPresent()) {
      return new StateFolder(named.get());
    }
    Path base;
    if (system.startsWith("windows")) {
      base = absolute(variables.apply("LOCALAPPDATA")).orElse(home.resolve("AppData/Local"));
    } else if (system.startsWith("mac")) {
      base = home.resolve("Library/Application Support");
    } else {
      // XDG Base Directory Specification: relative paths are invalid and are to be ignored.
      base = absolute(variables.apply("XDG_STATE_HOME")).orElse(home.resolve(".local/state"));
    }
    return new StateFolder(base.resolve("dryfit"));
  }

  private static Optional<Path> filled(String value) {
    return Optional.ofNullable(value).filter(v -> !v.isBlank()).map(Path::of);
  }

  private static Optional<Path> absolute(String value) {
    return filled(value).filter(Path::isAbsolute);
  }
}
