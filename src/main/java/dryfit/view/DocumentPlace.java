package dryfit.view;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Where something stands in the document, told quietly; a click copies the place. */
final class DocumentPlace extends Button {

  /**
   * @param pointer JSON pointer into the document
   */
  DocumentPlace(String pointer) {
    super("in the document: " + pointer);
    getStyleClass().setAll("place");
    setWrapText(true);
    setMinHeight(USE_PREF_SIZE);
    setMinWidth(0);
    setAccessibleText("in the document: " + pointer + "; copy the place");
    setTooltip(new Tooltip("copy the place"));
    setOnAction(
        e -> {
          ClipboardContent content = new ClipboardContent();
          content.putString(pointer);
          Clipboard.getSystemClipboard().setContent(content);
          setText("copied: " + pointer);
        });
  }
}
