package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecentFilesTest {
  @TempDir Path folder;
  private StateFolder state;
  private RecentFiles recent;

  @BeforeEach
  void none() {
    state = new StateFolder(folder.resolve("state"));
    recent = new RecentFiles(state);
  }

  private Path file(String name) throws IOException {
    return Files.writeString(folder.resolve(name), "{}");
  }

  @Test
  void theLatestComesFirstAndNoneTwice() throws IOException {
    Path one = file("one.json");
    Path two = file("two, 50 % größer.json");
    recent.opened(one);
    recent.opened(two);
    recent.opened(folder.resolve("state").resolve("..").resolve("one.json"));
    assertThat(new RecentFiles(state).all()).containsExactly(one, two);
  }

  @Test
  void onlySoManyAreRemembered() throws IOException {
    for (int i = 0; i < RecentFiles.MOST + 3; i++) {
      recent.opened(file("chair-" + i + ".json"));
    }
    assertThat(recent.all()).hasSize(RecentFiles.MOST);
    assertThat(recent.all().get(0)).isEqualTo(folder.resolve("chair-14.json"));
  }

  @Test
  void whatIsGoneIsDropped() throws IOException {
    Path one = file("one.json");
    Path two = file("two.json");
    recent.opened(one);
    recent.opened(two);
    Files.delete(two);
    assertThat(recent.all()).containsExactly(one);
    recent.forget(one);
    assertThat(recent.all()).isEmpty();
  }

  @Test
  void aListThatIsNoneIsEmptyAndWrittenAnew() throws IOException {
    Files.createDirectories(state.path());
    Files.write(state.path().resolve("recent-files.txt"), new byte[] {(byte) 0xff, '%', 'z'});
    assertThat(recent.all()).isEmpty();
    Path one = file("one.json");
    assertThat(recent.opened(one)).isTrue();
    assertThat(recent.all()).containsExactly(one);
  }

  @Test
  void aListThatCannotBeWrittenIsOnlyForgotten() throws IOException {
    Files.writeString(state.path(), "a file stands here");
    assertThat(recent.opened(file("one.json"))).isFalse();
    assertThat(recent.all()).isEmpty();
  }
}
