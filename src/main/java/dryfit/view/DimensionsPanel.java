package dryfit.view;

import dryfit.document.Design;
import dryfit.document.Design.Dimension;
import dryfit.document.Document;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/**
 * All dimensions of the chair: what can be slid first, then fixed sizes, then what is worked out.
 */
final class DimensionsPanel extends VBox {
  /** Pixels. */
  static final double WIDTH = 268;

  private final Label title = new Label("Dimensions");
  private final Session session;
  private final TextField search = new TextField();
  private final VBox list = new VBox(7);
  private final Label help = new Label();
  private final Map<String, DimensionRow> rows = new LinkedHashMap<>();
  private List<Dimension> dimensions = List.of();
  private List<List<String>> groups = List.of();

  /** Where each stands, the same as long as a design is worked on: a row does not run away. */
  private final Map<String, Integer> standing = new HashMap<>();

  private String design = "";

  DimensionsPanel(Session session) {
    super(8);
    this.session = session;
    getStyleClass().add("side");
    setId("dimensions");
    setPrefWidth(WIDTH);
    setMinWidth(WIDTH);
    title.getStyleClass().add("heading");
    search.setPromptText("find a dimension");
    search.setAccessibleText("find a dimension");
    search.setId("find");
    search.getStyleClass().add("find");
    search.textProperty().addListener(o -> sort(true));
    search.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    help.setId("help");
    help.getStyleClass().add("quiet");
    help.setWrapText(true);
    help.setMinHeight(USE_PREF_SIZE);
    help.visibleProperty().bind(help.textProperty().isNotEmpty());
    help.managedProperty().bind(help.visibleProperty());
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("side-scroll");
    javafx.scene.layout.VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
    getChildren().addAll(title, search, scroll, help);
    session
        .busy()
        .addListener(
            (o, was, now) -> {
              if (!now) {
                rows.values().forEach(DimensionRow::settle);
              }
            });
  }

  private DimensionRow row(String name) {
    DimensionRow row = new DimensionRow(session, name);
    // With the keyboard nobody points at anything, so the note of what is in hand stands below.
    row.focusWithinProperty().addListener((o, was, now) -> help.setText(now ? row.note() : ""));
    return row;
  }

  private void key(KeyEvent e) {
    if (e.getCode() == KeyCode.ESCAPE && !search.getText().isEmpty()) {
      search.clear();
      e.consume();
    }
  }

  void show(Shown shown, Length.Unit unit) {
    show(shown.document(), shown.design(), unit);
  }

  /**
   * Shows what the document says though no chair comes of it, and with which sizes none does.
   *
   * @param last what could be built last, if anything
   */
  void show(Unbuilt unbuilt, Optional<Shown> last, Length.Unit unit) {
    show(unbuilt.document(), unbuilt.design(), unit);
    List<Dimension> built = last.map(l -> l.design().dimensions()).orElse(List.of());
    for (Dimension d : dimensions) {
      boolean changed =
          built.stream().anyMatch(b -> b.name().equals(d.name()) && !b.value().equals(d.value()));
      if (changed && d.formula().isEmpty()) {
        rows.get(d.name()).cannotBeBuilt();
      }
    }
  }

  private void show(Document document, Design of, Length.Unit unit) {
    dimensions = of.dimensions();
    title.setText("Dimensions, in " + (unit == Length.Unit.IN ? "inches" : "mm"));
    String now = document.file() + "\n" + of.variant();
    if (!now.equals(design)) {
      design = now;
      standing.clear();
    }
    rows.keySet().retainAll(dimensions.stream().map(Dimension::name).toList());
    for (Dimension d : dimensions) {
      rows.computeIfAbsent(d.name(), this::row)
          .show(d, of, unit, document.written(d.pointer()).orElse(""));
    }
    sort(false);
  }

  private static int group(Dimension d) {
    boolean range = Double.isFinite(d.from()) && Double.isFinite(d.to());
    return !d.formula().isEmpty() ? 2 : range ? 0 : 1;
  }

  private void sort(boolean always) {
    String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
    List<List<String>> now = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (Dimension d : dimensions) {
      if (rows.get(d.name()).matches(wanted)) {
        now.get(standing.computeIfAbsent(d.name(), name -> group(d))).add(d.name());
      }
    }
    if (now.equals(groups) && !always) {
      return;
    }
    groups = now;
    List<Node> nodes = new ArrayList<>();
    String[] heads = {"to slide", "fixed sizes", "worked out from others"};
    for (int i = 0; i < heads.length; i++) {
      if (!now.get(i).isEmpty()) {
        Label head = new Label(heads[i]);
        head.getStyleClass().add("group");
        nodes.add(head);
      }
      now.get(i).forEach(name -> nodes.add(rows.get(name)));
    }
    if (nodes.isEmpty() && !dimensions.isEmpty()) {
      Label none = new Label("No dimension has “" + search.getText().strip() + "” in its name.");
      none.setId("none-found");
      none.getStyleClass().add("quiet");
      none.setWrapText(true);
      nodes.add(none);
    }
    list.getChildren().setAll(nodes);
  }
}
