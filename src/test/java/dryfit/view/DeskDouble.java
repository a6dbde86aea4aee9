package dryfit.view;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A desktop whose dialogs are answered by the test. */
final class DeskDouble implements Desk {
  volatile Optional<Path> answer = Optional.empty();
  final List<Path> shown = new ArrayList<>();
  final List<String> proposed = new ArrayList<>();
  final List<Path> folders = new ArrayList<>();

  @Override
  public Optional<Path> open(String title, Path first) {
    return answer;
  }

  @Override
  public Optional<Path> save(String title, Path first) {
    proposed.add(first.getFileName().toString());
    folders.add(first.getParent());
    return answer;
  }

  @Override
  public Optional<Path> folder(String title, Path first) {
    return answer;
  }

  @Override
  public void show(Path folder) {
    shown.add(folder);
  }
}
