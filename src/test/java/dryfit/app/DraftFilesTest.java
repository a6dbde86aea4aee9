package dryfit.app;

import static org.assertj.core.api.Assertions.assertThat;

import dryfit.document.Difference;
import dryfit.document.Problem;
import dryfit.document.Reading;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DraftFilesTest {
  @TempDir Path folder;
  private Path path;

  @BeforeEach
  void aFile() throws IOException {
    path = Files.writeString(folder.resolve("posts.json"), Benches.TEXT);
  }

  private static Draft open(Path path) {
    return ((Reading.Accepted<Draft>) Draft.open(path)).value();
  }

  private static OnDisk disk(Draft draft) {
    return draft.look().orElseThrow().now();
  }

  @Test
  void anOpenedDraftIsSavedUntilItChangesAndAgainWhenTheChangeIsTakenBack() {
    Draft draft = open(path);
    assertThat(draft.unsaved()).isFalse();
    draft.choose("low");
    assertThat(draft.unsaved()).isFalse();
    draft.dimension("width", "330");
    assertThat(draft.unsaved()).isTrue();
    draft.undo();
    assertThat(draft.unsaved()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "\uFEFF"})
  void whatIsSavedUnchangedIsTheSameByteForByte(String mark) throws IOException {
    byte[] bytes = (mark + Benches.TEXT.replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
    Files.write(path, bytes);
    Draft draft = open(path);
    Path other = folder.resolve("other.json");
    draft.dimension("width", "330");
    draft.undo();
    assertThat(draft.saveAs(other)).isEqualTo(new Saving.Done(other));
    assertThat(Files.readAllBytes(other)).isEqualTo(bytes);
  }

  @Test
  void lineEndingsAndMarkStayThroughAChange() throws IOException {
    String text = "\uFEFF" + Benches.TEXT.replace("\n", "\r\n");
    Files.writeString(path, text);
    Draft draft = open(path);
    draft.dimension("width", "330");
    draft.save();
    assertThat(Files.readString(path)).isEqualTo(text.replace("\"width\": 320", "\"width\": 330"));
  }

  @Test
  void savingKeepsWhoMayReadTheFileAndTheLinkThatLeadsToIt() throws IOException {
    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("posts.json"));
    Draft draft = open(link);
    draft.dimension("width", "330");
    assertThat(draft.save()).isEqualTo(new Saving.Done(link));
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(path)).contains("\"width\": 330");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
        .isEqualTo("rw-r-----");
  }

  @Test
  void aDraftWithoutAFileAsksForAName() {
    Draft draft = Draft.begun("new chair", Benches.TEXT);
    assertThat(draft.unsaved()).isTrue();
    assertThat(draft.save()).isEqualTo(new Saving.NeedsName());
    Path target = folder.resolve("first.json");
    assertThat(draft.saveAs(target)).isEqualTo(new Saving.Done(target));
    assertThat(draft.unsaved()).isFalse();
    assertThat(draft.file()).contains(target);
    assertThat(draft.now().document().orElseThrow().file()).isEqualTo(target.toString());
  }

  @Test
  void aSaveThatFailsLeavesTheDraftUnsavedAndSaysWhy() {
    Draft draft = Draft.begun("new chair", Benches.TEXT);
    Path nowhere = folder.resolve("none").resolve("chair.json");
    assertThat(draft.saveAs(nowhere)).isInstanceOf(Saving.Failed.class);
    assertThat(draft.unsaved()).isTrue();
    assertThat(draft.file()).isEmpty();
  }

  @Test
  void whatIsNoTextIsRefusedAndWhatIsNoChairOpensToBeMended() throws IOException {
    Files.write(path, new byte[] {(byte) 0xff});
    assertThat(((Reading.Refused<Draft>) Draft.open(path)).problems())
        .extracting(Problem::code)
        .containsExactly("not-json");
    Files.writeString(path, "{ \"format\": ");
    Draft draft = open(path);
    assertThat(draft.now().document()).isEmpty();
    draft.text("write", Benches.TEXT);
    assertThat(draft.now().document()).isPresent();
  }

  @Test
  void aChangeOnDiskIsNoticedByContentAndToldInParts() throws IOException {
    Draft draft = open(path);
    draft.dimension("width", "330");
    var before = Files.getLastModifiedTime(path);
    Files.writeString(path, Benches.TEXT.replace("440", "444").replace("[40, 40]", "[41, 40]"));
    Files.setLastModifiedTime(path, before);
    OnDisk.Changed changed = (OnDisk.Changed) disk(draft);
    assertThat(changed.differences())
        .extracting(d -> d.section() + " " + d.name())
        .containsExactly(
            "dimensions height value",
            "dimensions width",
            "parts post-right section",
            "parts post-left section");
    Difference width = changed.differences().get(1);
    assertThat(width.mine()).contains("330");
    assertThat(width.theirs()).contains("320");
  }

  @Test
  void aFileWrittenAgainWithTheSameContentIsTheSame() throws IOException {
    Draft draft = open(path);
    Files.writeString(path, Benches.TEXT);
    assertThat(disk(draft)).isEqualTo(new OnDisk.Same());
  }

  @Test
  void savingDoesNotReplaceWhatSomeoneElseWroteUntilTold() throws IOException {
    Draft draft = open(path);
    draft.dimension("width", "330");
    String theirs = Benches.TEXT.replace("440", "444");
    Files.writeString(path, theirs);
    Saving.Moved moved = (Saving.Moved) draft.save();
    assertThat(Files.readString(path)).isEqualTo(theirs);
    draft.keepMine((OnDisk.Changed) moved.disk());
    assertThat(draft.save()).isEqualTo(new Saving.Done(path));
    assertThat(Files.readString(path)).isEqualTo(draft.now().text());
  }

  @Test
  void theirsCanBeTakenAndOnesOwnHadBack() throws IOException {
    Draft draft = open(path);
    draft.dimension("width", "330");
    String mine = draft.now().text();
    String theirs = Benches.TEXT.replace("440", "444");
    Files.writeString(path, theirs);
    draft.takeTheirs((OnDisk.Changed) disk(draft));
    assertThat(draft.now().text()).isEqualTo(theirs);
    assertThat(draft.unsaved()).isFalse();
    assertThat(disk(draft)).isEqualTo(new OnDisk.Same());
    draft.undo();
    assertThat(draft.now().text()).isEqualTo(mine);
    assertThat(draft.unsaved()).isTrue();
  }

  @Test
  void aFileThatIsGoneIsToldAndSavingWritesItAgain() throws IOException {
    Draft draft = open(path);
    Files.delete(path);
    assertThat(disk(draft)).isEqualTo(new OnDisk.Gone());
    assertThat(draft.save()).isEqualTo(new Saving.Done(path));
    assertThat(Files.readString(path)).isEqualTo(Benches.TEXT);
  }

  @Test
  void aFileThatBecameUnreadableIsNotReplaced() throws IOException {
    Draft draft = open(path);
    Files.write(path, new byte[] {(byte) 0xff});
    assertThat(disk(draft)).isInstanceOf(OnDisk.Unreadable.class);
    assertThat(draft.save()).isInstanceOf(Saving.Moved.class);
    assertThat(Files.readAllBytes(path)).containsExactly(0xff);
  }
}
