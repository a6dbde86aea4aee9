package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StateFolderTest {
  private static Path of(String system, Map<String, String> variables, Map<String, String> more) {
    Map<String, String> properties = new HashMap<>(more);
    properties.put("user.home", "/home/maker");
    properties.put("os.name", system);
    return StateFolder.of(variables::get, properties::get).path();
  }

  @ParameterizedTest
  @CsvSource({
    "Linux, /home/maker/.local/state/dryfit",
    "Mac OS X, /home/maker/Library/Application Support/dryfit",
    "Windows 11, /home/maker/AppData/Local/dryfit"
  })
  void everySystemHasItsPlace(String system, Path place) {
    assertThat(of(system, Map.of(), Map.of())).isEqualTo(place);
  }

  /** XDG Base Directory Specification, version 0.8, from memory. */
  @Test
  void theStateHomeIsFollowedUnlessItIsRelative() {
    assertThat(of("Linux", Map.of("XDG_STATE_HOME", "/var/me"), Map.of()))
        .isEqualTo(Path.of("/var/me/dryfit"));
    assertThat(of("Linux", Map.of("XDG_STATE_HOME", "me"), Map.of()))
        .isEqualTo(Path.of("/home/maker/.local/state/dryfit"));
  }

  @Test
  void aPropertyGoesBeforeAVariableAndBothBeforeTheSystem() {
    Map<String, String> variables = Map.of("DRYFIT_STATE", "/a", "XDG_STATE_HOME", "/c");
    assertThat(of("Linux", variables, Map.of())).isEqualTo(Path.of("/a"));
    assertThat(of("Linux", variables, Map.of("dryfit.state", "/b"))).isEqualTo(Path.of("/b"));
  }
}
