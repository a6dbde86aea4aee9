package dryfit.view;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.application.HostServices;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** The desktop's own dialogs. */
final class SystemDesk implements Desk {
  private final Window window;
  private final HostServices services;

  SystemDesk(Window window, HostServices services) {
    this.window = window;
    this.services = services;
  }

  @Override
  public Optional<Path> open(String title, Path first) {
    FileChooser files = new FileChooser();
    files.setTitle(title);
    files.setInitialDirectory(there(first));
    files.getExtensionFilters().add(new FileChooser.ExtensionFilter("chairs", "*.json"));
    return Optional.ofNullable(files.showOpenDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> save(String title, Path first) {
    FileChooser files = new FileChooser();
    files.setTitle(title);
    files.setInitialDirectory(there(first.toAbsolutePath().getParent()));
    files.setInitialFileName(first.getFileName().toString());
    return Optional.ofNullable(files.showSaveDialog(window)).map(File::toPath);
  }

  @Override
  public Optional<Path> folder(String title, Path first) {
    DirectoryChooser folders = new DirectoryChooser();
    folders.setTitle(title);
    folders.setInitialDirectory(there(first));
    return Optional.ofNullable(folders.showDialog(window)).map(File::toPath);
  }

  /** The folder itself, or the nearest around it that there is. */
  private static File there(Path folder) {
    Path there = folder.toAbsolutePath();
    while (there.getParent() != null && !Files.isDirectory(there)) {
      there = there.getParent();
    }
    return there.toFile();
  }

  @Override
  public void show(Path folder) {
    services.showDocument(folder.toUri().toString());
  }
}
