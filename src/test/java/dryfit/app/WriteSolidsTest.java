package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dryfit.build.Chair;
import dryfit.export.StlFile;
import dryfit.export.TestChair;
import dryfit.geometry.Box;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteSolidsTest {
  @TempDir Path folder;

  private static final Chair CHAIR = TestChair.chair();

  private List<StlFile> written(boolean inPlace) {
    List<StlFile> files = new ArrayList<>();
    Exit exit =
        new WriteSolids(folder, inPlace, SolidFormat.STL)
            .write(CHAIR, r -> files.add((StlFile) ((WrittenFiles.Finished<?>) r).file()));
    assertThat(exit).isEqualTo(Exit.FITS);
    return files;
  }

  @Test
  void everyPartHasAFileAndTheAssembledChairHoldsThemAll() {
    List<StlFile> files = written(false);
    assertThat(files).hasSize(CHAIR.parts().size() + 1);
    StlFile assembled = files.get(files.size() - 1);
    assertThat(assembled.path()).isEqualTo(folder.resolve("assembled.stl")).exists();
    assertThat(assembled.solids()).isEqualTo(CHAIR.parts().size());
    double parts =
        files.subList(0, CHAIR.parts().size()).stream().mapToDouble(StlFile::volume).sum();
    assertThat(assembled.volume()).isCloseTo(parts, within(1e-6 * parts));
  }

  @Test
  void aPartLiesAlongXUnlessItIsWantedInPlace() {
    Box lying = written(false).get(0).bounds();
    assertThat(lying.size().x()).isCloseTo(630, within(1e-3));
    Box standing = written(true).get(0).bounds();
    assertThat(standing.size().z()).isCloseTo(630, within(1e-3));
    assertThat(standing.low().x()).isCloseTo(238, within(1e-3));
  }

  @Test
  void whereNothingMayBeWrittenItSaysSoAndStops() throws IOException {
    Path file = Files.writeString(folder.resolve("taken"), "a file");
    List<WrittenFiles> results = new ArrayList<>();
    Exit exit = new WriteSolids(file, false, SolidFormat.STL).write(CHAIR, results::add);
    assertThat(exit).isEqualTo(Exit.USAGE);
    assertThat(results).hasSize(1).first().isInstanceOf(WrittenFiles.Failed.class);
    assertThat(file).hasContent("a file");
  }
}
