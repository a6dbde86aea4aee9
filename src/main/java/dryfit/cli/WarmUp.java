package dryfit.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/**
 * Packs what a quick start needs: runs what makers start most, a fit and the window, in a Java of
 * their own, and keeps the classes they loaded as they lie in memory, one archive for each. Whose
 * Java that was, and where, is kept beside them, for they are of no use to another one or
 * elsewhere.
 */
public final class WarmUp {
  private WarmUp() {}

  /**
   * Where there is no screen the window ends at once, and its archive has only what it needed to
   * find that out. A Java that keeps no classes leaves none, and every start is as slow as its
   * first.
   *
   * @param args the folder with the program's jar, and the chair document
   */
  public static void main(String[] args) throws IOException, InterruptedException {
    Path lib = Path.of(args[0]).toRealPath();
    keep(lib, "classes", "fit", args[1]);
    keep(lib, "window", "window", "--until-shown", args[1]);
    Path home = Path.of(System.getProperty("java.home"));
    List<String> release = Files.readAllLines(home.resolve("release"));
    Files.copy(
        home.resolve("release"),
        lib.resolve("classes.release"),
        StandardCopyOption.REPLACE_EXISTING);
    // Read by the launcher line by line: where, by which Java, and the first words of its release.
    List<String> place = new ArrayList<>(List.of(lib.toString(), home.toString()));
    place.addAll(release.subList(0, Math.min(3, release.size())));
    Files.writeString(lib.resolve("classes.place"), String.join("\n", place) + "\n");
  }

  private static void keep(Path lib, String name, String... command)
      throws IOException, InterruptedException {
    Path list = lib.resolve(name + ".txt");
    Path jar = lib.resolve("dryfit.jar");
    List<String> loading = new ArrayList<>();
    loading.add("-XX:DumpLoadedClassList=" + list);
    loading.add("-XX:TieredStopAtLevel=1");
    loading.addAll(List.of("-jar", jar.toString()));
    loading.addAll(List.of(command));
    java(loading);
    java(
        List.of(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + list,
            "-XX:SharedArchiveFile=" + lib.resolve(name + ".jsa"),
            "-Xlog:disable",
            "-jar",
            jar.toString()));
    Files.deleteIfExists(list);
  }

  private static void java(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(arguments);
    File nowhere = new File(File.separatorChar == '/' ? "/dev/null" : "NUL");
    new ProcessBuilder(command).redirectOutput(nowhere).redirectError(nowhere).start().waitFor();
  }
}
