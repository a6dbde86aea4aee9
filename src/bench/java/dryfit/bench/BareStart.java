package dryfit.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What a start costs that does nothing: loads the classes in a list, one name a line, and prints
 * how many there were. Argument: the list.
 */
public final class BareStart {
  private BareStart() {}

  public static void main(String[] arguments) throws IOException, ClassNotFoundException {
    int loaded = 0;
    for (String name : Files.readAllLines(Path.of(arguments[0]))) {
      Class.forName(name, false, BareStart.class.getClassLoader());
      loaded++;
    }
    System.out.println(loaded + " classes");
  }
}
