package dryfit.view;

import dryfit.build.Chair;
import dryfit.build.Part;
import dryfit.fit.order.Assembling;
import dryfit.fit.order.Step;
import dryfit.fit.order.Stuck;
import dryfit.geometry.Vec3;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The chair pulled apart along its order of assembly, and what does not come apart. */
final class Pulling {
  private final Session session;
  private final ChairView chair;
  private final Slider apart = Seeing.slider("how far the parts are pulled apart");
  private final Label told = new Label();
  private final HBox row = new HBox(14, fixed("together"), apart, fixed("pulled apart"));
  private Optional<Apart> order = Optional.empty();
  private Shown shown;

  /** Where the eye was before it stood back for parts that left the picture, and where it went. */
  private Optional<Orbit> near = Optional.empty();

  private Optional<Orbit> far = Optional.empty();

  Pulling(Session session, ChairView chair) {
    this.session = session;
    this.chair = chair;
    apart.setId("apart");
    apart.setMinWidth(60);
    apart.valueProperty().addListener(o -> pull());
    // Not while a hand is on it: the chair would run away from it.
    apart.valueChangingProperty().addListener(o -> keepInSight());
    told.setId("apart-told");
    told.getStyleClass().add("quiet");
    told.setWrapText(true);
    told.setMinHeight(Label.USE_PREF_SIZE);
    told.managedProperty().bind(told.visibleProperty());
    say("");
    HBox.setHgrow(apart, Priority.ALWAYS);
    row.setAlignment(Pos.CENTER_LEFT);
  }

  HBox row() {
    return row;
  }

  Slider slider() {
    return apart;
  }

  /** One line on what holds together, while the parts are apart. */
  Label told() {
    return told;
  }

  void show(Shown next) {
    boolean same = next.is(shown);
    shown = next;
    if (!same) {
      order = Optional.empty();
      if (apart.getValue() > 0) {
        pull();
      }
    }
  }

  void end() {
    apart.setValue(0);
  }

  /** All the way. */
  void start() {
    apart.setValue(1);
  }

  private void pull() {
    if (shown == null) {
      return;
    }
    if (apart.getValue() == 0) {
      say("");
      chair.see(l -> l.moving(List.of()));
      comeBack();
    } else if (order.isPresent()) {
      List<Step> steps = order.get().order().steps();
      List<Vec3> moved = order.get().moved(apart.getValue());
      String lock = lock(order.get().order());
      say(lock.isEmpty() && !steps.isEmpty() ? step(order.get()) : lock);
      chair.see(l -> l.moving(moved));
      keepInSight();
    } else {
      Shown of = shown;
      say("Working out how it comes apart …");
      session.workOut(
          "apart",
          () -> Apart.of(Assembling.of(of.chair())),
          found -> {
            if (of.is(shown)) {
              order = Optional.of(found);
              pull();
            }
          });
    }
  }

  private void keepInSight() {
    if (!apart.isValueChanging() && apart.getValue() > 0) {
      Orbit before = chair.heading();
      chair
          .seeAllThatIsCutOff()
          .ifPresent(
              to -> {
                near = near.or(() -> Optional.of(before));
                far = Optional.of(to);
              });
    }
  }

  /** Near again, unless the chair was turned since the eye stood back. */
  private void comeBack() {
    if (far.isPresent() && far.get().equals(chair.heading())) {
      near.ifPresent(chair::goBack);
    }
    near = Optional.empty();
    far = Optional.empty();
  }

  private void say(String text) {
    told.setText(text);
    told.setVisible(!text.isEmpty());
  }

  /** Which parts hold one another, in one line; nothing where all come apart. */
  static String lock(Assembling order) {
    if (order.possible()) {
      return "";
    }
    return holding(order.chair(), order.stuck())
        + (order.steps().isEmpty() ? " No other part comes off." : " The rest comes apart.");
  }

  /** Which parts hold one another, as sentences. */
  static String holding(Chair chair, List<Stuck> all) {
    List<String> lines = new ArrayList<>();
    List<Integer> sharing =
        all.stream()
            .flatMap(s -> s.collide().stream())
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .toList();
    if (!sharing.isEmpty()) {
      lines.add("In each other’s wood, so they stay: " + names(chair, sharing) + ".");
    }
    for (Stuck stuck : all) {
      if (stuck.collide().isEmpty()) {
        lines.add("Lock one another, so they stay: " + names(chair, stuck.parts()) + ".");
      }
    }
    return String.join(" ", lines);
  }

  /** What comes off, as the slider stands. */
  private String step(Apart order) {
    List<Step> steps = order.order().steps();
    int done = order.begun(apart.getValue());
    Step step = steps.get(steps.size() - done);
    List<Integer> parts = step.moves().stream().flatMap(m -> m.parts().stream()).sorted().toList();
    return done + " of " + steps.size() + " apart: " + names(order.order().chair(), parts);
  }

  /** Parts by their names, a pair as one. */
  private static String names(Chair chair, List<Integer> parts) {
    Map<String, List<String>> hands = new LinkedHashMap<>();
    for (int i : parts) {
      Part part = chair.parts().get(i);
      hands.computeIfAbsent(part.name(), n -> new ArrayList<>()).add(Words.part(part.label()));
    }
    return hands.entrySet().stream()
        .map(e -> e.getValue().size() == 2 ? "both " + plural(e.getKey()) : each(e.getValue()))
        .collect(Collectors.joining("; "));
  }

  private static String plural(String name) {
    return name.replace('-', ' ') + "s";
  }

  private static String each(List<String> labels) {
    return String.join("; ", labels);
  }

  private static Label fixed(String text) {
    Label label = new Label(text);
    label.setMinWidth(Label.USE_PREF_SIZE);
    return label;
  }
}
