package dryfit.view;

import dryfit.export.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/**
 * Two or three designs of one document, chosen by the maker, turned together, and what differs:
 * beside each other, or two of them laid over each other, one in wood and the other in blue ink.
 */
final class SideBySide extends BorderPane {
  /** As many go beside each other. */
  private static final int MOST = 3;

  private static final int LEAST = 2;

  /** Left and right of the words, pixels. */
  private static final double EDGES = 34;

  /** Share of the height that the table has. */
  private static final double TABLE = 0.42;

  /** The same below two designs laid over each other, whose words take more room. */
  private static final double TABLE_LAID = 0.3;

  private final HBox chairs = new HBox(1);
  private final DifferenceTable table = new DifferenceTable();
  private final ScrollPane below = new ScrollPane();
  private final List<ChairView> views = new ArrayList<>();
  private final ChairView both = new ChairView();
  private final ToggleButton over = new ToggleButton("lay over each other");
  private final FlowPane inWood = new FlowPane(8, 4);
  private final FlowPane inInk = new FlowPane(8, 4);
  private final FlowPane choice = new FlowPane(8, 4);
  private final FlowPane words = new FlowPane(18, 4, choice, over);
  private final Runnable chosenAnew;
  private final AllTogether together;

  /** In the order they were asked for, so that the oldest makes room. */
  private final List<String> chosen = new ArrayList<>();

  private List<Shown> designs = List.of();
  private int wood;
  private int ink = 1;

  /**
   * @param chosenAnew called when other designs are wanted
   * @param trouble told of faults
   */
  SideBySide(Runnable chosenAnew, Consumer<Throwable> trouble) {
    this.chosenAnew = chosenAnew;
    this.together = new AllTogether(trouble, table::together);
    setId("side-by-side");
    setMinSize(0, 0);
    chairs.setMinSize(0, 0);
    both.setId("chair-over");
    both.setAccessibleText("Two variants laid over each other. Arrow keys turn them.");
    follow(both);
    over.getStyleClass().setAll("word");
    over.setId("lay-over");
    over.setOnAction(e -> arrange());
    over.setDisable(true);
    words.getStyleClass().add("view-bar");
    for (FlowPane row : List.of(choice, inWood, inInk)) {
      row.setAlignment(Pos.CENTER_LEFT);
      // In a narrow window the names go on in a second line.
      row.prefWrapLengthProperty().bind(words.widthProperty().subtract(EDGES));
    }
    below.setContent(table);
    table.stayIn(below);
    below.setId("differing");
    below.getStyleClass().add("side-scroll");
    below.setFitToWidth(true);
    setTop(words);
    setCenter(chairs);
    setBottom(below);
  }

  /**
   * Which designs are wanted, in the order of the document.
   *
   * @param all there are
   * @param onBench the one that is being worked on
   */
  List<String> chosen(List<String> all, String onBench) {
    chosen.retainAll(all);
    List<String> usual = new ArrayList<>(all);
    usual.remove(onBench);
    usual.add(Math.min(1, usual.size()), onBench);
    for (String name : usual) {
      boolean begins = views.isEmpty() && chosen.size() < MOST;
      if (!chosen.contains(name) && (begins || chosen.size() < LEAST)) {
        chosen.add(name);
      }
    }
    offer(all);
    return all.stream().filter(chosen::contains).toList();
  }

  private void offer(List<String> all) {
    List<Node> nodes = new ArrayList<>();
    Label label = new Label("beside each other:");
    label.getStyleClass().add("quiet");
    nodes.add(label);
    for (String name : all) {
      ToggleButton one = new ToggleButton(name);
      one.getStyleClass().setAll("word");
      one.setId("beside-" + name.replace(' ', '-'));
      one.setAccessibleText(name + " among those beside each other");
      one.setSelected(chosen.contains(name));
      one.setOnAction(e -> choose(name, one.isSelected()));
      nodes.add(one);
    }
    choice.getChildren().setAll(nodes);
  }

  private void choose(String name, boolean wanted) {
    if (wanted) {
      chosen.add(name);
    } else if (chosen.size() > LEAST) {
      chosen.remove(name);
    }
    if (chosen.size() > MOST) {
      chosen.remove(0);
    }
    chosenAnew.run();
  }

  void show(Variants.Beside beside, TextStyle style) {
    designs = beside.shown();
    while (views.size() > designs.size()) {
      views.remove(views.size() - 1);
      chairs.getChildren().remove(views.size());
    }
    while (views.size() < designs.size()) {
      add();
    }
    for (int i = 0; i < designs.size(); i++) {
      views.get(i).show(designs.get(i));
      VBox column = (VBox) chairs.getChildren().get(i);
      ((Label) column.getChildren().get(0)).setText(variant(i));
    }
    // On paper nothing can be seen through.
    over.setDisable(designs.size() < 2 || !ChairView.hasDepth());
    arrange();
    table.show(beside.comparison(), style);
    together.show(designs);
  }

  /** Nobody looks at it any more. */
  void close() {
    together.close();
  }

  private String variant(int design) {
    return designs.get(design).design().variant();
  }

  private void add() {
    ChairView view = new ChairView();
    view.setId("chair-" + views.size());
    follow(view);
    Label name = new Label();
    name.getStyleClass().add("heading");
    VBox column = new VBox(name, view);
    column.getStyleClass().add("beside");
    column.setMinSize(0, 0);
    HBox.setHgrow(column, Priority.ALWAYS);
    VBox.setVgrow(view, Priority.ALWAYS);
    column.setPrefWidth(100);
    views.add(view);
    chairs.getChildren().add(column);
  }

  /** Where one is turned, the others turn. */
  private void follow(ChairView view) {
    view.orbit()
        .addListener(
            (o, was, now) -> {
              views.forEach(other -> other.follow(now));
              both.follow(now);
            });
  }

  private void arrange() {
    boolean laid = over.isSelected() && !over.isDisabled();
    setCenter(laid ? both : chairs);
    below.prefHeightProperty().bind(heightProperty().multiply(laid ? TABLE_LAID : TABLE));
    words
        .getChildren()
        .setAll(laid ? List.of(choice, over, inWood, inInk) : List.<Node>of(choice, over));
    if (!laid) {
      return;
    }
    wood = Math.min(wood, designs.size() - 1);
    if (ink >= designs.size() || ink == wood) {
      ink = wood == 0 ? 1 : 0;
    }
    pick(inWood, "in wood", wood, this::inWood);
    pick(inInk, "over it in blue ink", ink, this::inInk);
    both.show(designs.get(wood));
    both.lay(Optional.of(designs.get(ink)));
  }

  private void inWood(int design) {
    if (design == ink) {
      ink = wood;
    }
    wood = design;
    arrange();
  }

  private void inInk(int design) {
    if (design == wood) {
      wood = ink;
    }
    ink = design;
    arrange();
  }

  private void pick(FlowPane row, String what, int chosen, IntConsumer choose) {
    List<Node> nodes = new ArrayList<>();
    Label label = new Label(what + ":");
    label.getStyleClass().add("quiet");
    nodes.add(label);
    for (int i = 0; i < designs.size(); i++) {
      ToggleButton one = new ToggleButton(variant(i));
      one.getStyleClass().setAll("word");
      one.setId(what.replace(' ', '-') + "-" + i);
      one.setAccessibleText(variant(i) + " " + what);
      one.setSelected(i == chosen);
      int design = i;
      one.setOnAction(e -> choose.accept(design));
      nodes.add(one);
    }
    row.getChildren().setAll(nodes);
  }
}
