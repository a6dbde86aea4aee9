package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FileNamesTest {
  @Test
  void namesArePlain() {
    assertThat(FileNames.plain("front-leg right")).isEqualTo("front-leg-right");
    assertThat(FileNames.plain("Élan No. 2")).isEqualTo("elan-no-2");
    assertThat(FileNames.plain("../../etc")).isEqualTo("etc");
    assertThat(FileNames.plain("...")).isEqualTo("chair");
  }

  @Test
  void noNameIsGivenOutTwice() {
    FileNames names = new FileNames("assembled");
    assertThat(names.next("leg right")).isEqualTo("leg-right");
    assertThat(names.next("leg-right")).isEqualTo("leg-right-2");
    assertThat(names.next("Assembled")).isEqualTo("assembled-2");
  }
}
