package dryfit.app;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.export.NamedMesh;
import dryfit.export.UnsoundFile;
import dryfit.geometry.Mesh;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Writes a chair as solids: a file for each part, and one with all parts in place. */
public final class WriteSolids {
  private static final String ASSEMBLED = "assembled";

  private final Path folder;
  private final boolean inPlace;
  private final SolidFormat format;

  /**
   * @param folder where the files go; made if it is missing
   * @param inPlace the parts where they stand in the chair; otherwise each lying along x from its
   *     own start
   */
  public WriteSolids(Path folder, boolean inPlace, SolidFormat format) {
    this.folder = folder;
    this.inPlace = inPlace;
    this.format = format;
  }

  /**
   * Writes all files, stopping at the first that fails.
   *
   * @param each is told of every file as it is finished or fails
   */
  public Exit write(Chair chair, Consumer<WrittenFiles> each) {
    FileNames names = new FileNames(ASSEMBLED);
    for (Part part : chair.parts()) {
      Mesh mesh = inPlace ? part.placedMesh() : part.solid().mesh();
      WrittenFiles result =
          write(names.next(part.label()), part.label(), List.of(new NamedMesh(part.label(), mesh)));
      each.accept(result);
      if (result instanceof WrittenFiles.Failed failed) {
        return failed.exit();
      }
    }
    List<NamedMesh> placed =
        chair.parts().stream().map(p -> new NamedMesh(p.label(), p.placedMesh())).toList();
    WrittenFiles result = write(ASSEMBLED, chair.design().name(), placed);
    each.accept(result);
    return result.exit();
  }

  private WrittenFiles write(String fileName, String title, List<NamedMesh> solids) {
    Path path = folder.resolve(fileName + "." + format.ending());
    try {
      return new WrittenFiles.Finished<>(format.write(path, solids, title));
    } catch (IOException e) {
      return WrittenFiles.Failed.of(path, e);
    } catch (UnsoundFile e) {
      return WrittenFiles.Failed.of(path, e);
    }
  }
}
