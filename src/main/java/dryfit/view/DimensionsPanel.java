package dryfit.view;

import dryfit.document.Design.Dimension;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;

/**
 * All dimensions of the chair: what can be slid first, then fixed sizes, then what is worked out.
 */
final class DimensionsPanel extends VBox {
  private final Session session;
  private final TextField search = new TextField();
  private final VBox list = new VBox(7);
  private final Map<String, DimensionRow> rows = new LinkedHashMap<>();
  private List<Dimension> dimensions = List.of();
  private List<List<String>> groups = List.of();

  DimensionsPanel(Session session) {
    super(8);
    this.session = session;
    getStyleClass().add("side");
    setId("dimensions");
    setPrefWidth(268);
    setMinWidth(268);
    Label title = new Label("Dimensions");
    title.getStyleClass().add("heading");
    search.setPromptText("find a dimension");
    search.setAccessibleText("find a dimension");
    search.setId("find");
    search.getStyleClass().add("find");
    search.textProperty().addListener(o -> sort(true));
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("side-scroll");
    javafx.scene.layout.VBox.setVgrow(scroll, javafx.scene.layout.Priority.ALWAYS);
    getChildren().addAll(title, search, scroll);
  }

  void show(Shown shown, Length.Unit unit) {
    dimensions = shown.design().dimensions();
    rows.keySet().retainAll(dimensions.stream().map(Dimension::name).toList());
    for (Dimension d : dimensions) {
      rows.computeIfAbsent(d.name(), name -> new DimensionRow(session, name))
          .show(d, shown.design(), unit);
    }
    sort(false);
  }

  private void sort(boolean always) {
    String wanted = search.getText().strip().toLowerCase(Locale.ROOT);
    List<List<String>> now = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    for (Dimension d : dimensions) {
      if (rows.get(d.name()).matches(wanted)) {
        boolean derived = !d.formula().isEmpty();
        boolean range = Double.isFinite(d.from()) && Double.isFinite(d.to());
        now.get(derived ? 2 : range ? 0 : 1).add(d.name());
      }
    }
    if (now.equals(groups) && !always) {
      return;
    }
    groups = now;
    List<Node> nodes = new ArrayList<>();
    String[] heads = {"", "fixed sizes", "worked out from others"};
    for (int i = 0; i < heads.length; i++) {
      if (!now.get(i).isEmpty() && !heads[i].isEmpty()) {
        Label head = new Label(heads[i]);
        head.getStyleClass().add("group");
        nodes.add(head);
      }
      now.get(i).forEach(name -> nodes.add(rows.get(name)));
    }
    list.getChildren().setAll(nodes);
  }
}
