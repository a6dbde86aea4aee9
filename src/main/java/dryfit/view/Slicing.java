package dryfit.view;

import dryfit.build.Joint;
import dryfit.export.TextStyle;
import dryfit.fit.Finding;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * A saw cut through the whole chair: upright from the side or from the front, or level. It begins
 * at what is taken up, if anything is, and leaves the half that is farther from the eye.
 */
final class Slicing {
  /** From how far the beginning of a slice is looked at, mm. */
  private static final double NEAR = 900;

  /** So far off square the cut face is looked at: one sees it whole and what is behind it. */
  private static final double ASLANT = Math.toRadians(35);

  private final Session session;
  private final ChairView chair;
  private final ToggleButton word = Seeing.word("slice");
  private final Slider where = Seeing.slider("where the slice is");
  private final Label told = new Label();
  private final List<ToggleButton> ways = new ArrayList<>();
  private final HBox row;
  private Optional<Place> taken = Optional.empty();

  /**
   * How far the slice is through the chair along each axis, 0 to 1: it stays when the chair
   * changes.
   */
  private Vec3 shares = new Vec3(0.5, 0.5, 0.5);

  private Way way = Way.SIDE;
  private Vec3 left = Vec3.ZERO;
  private Length.Unit unit = Length.Unit.MM;
  private Shown shown;

  /** Which way the saw goes. */
  enum Way {
    SIDE("from the side"),
    FRONT("from the front"),
    ABOVE("from above");

    private final String word;

    Way(String word) {
      this.word = word;
    }

    /** Square to the cut. */
    Vec3 axis() {
      return switch (this) {
        case SIDE -> Vec3.RIGHT;
        case FRONT -> Vec3.BACK;
        case ABOVE -> Vec3.UP;
      };
    }
  }

  /**
   * What is taken up, as a slice sees it.
   *
   * @param at where the slice goes through, chair space
   * @param within directions that it should show in their full length, the most important first
   */
  record Place(Vec3 at, List<Vec3> within) {

    /** The middle of a joint; along its tenon, and across the width of that. */
    static Place of(Joint joint) {
      return new Place(middle(joint), List.of(joint.entry(), joint.wide()));
    }

    /** Where a finding is: where two tenons meet, both of them; else the middle of its joint. */
    static Place of(Finding finding, Shown in) {
      List<Joint> joints =
          finding.joints().stream().flatMap(l -> in.joint(l).stream()).map(f -> f.joint()).toList();
      if (joints.size() == 1) {
        return of(joints.get(0));
      }
      List<Vec3> within = new ArrayList<>();
      if (joints.isEmpty()) {
        finding.parts().stream()
            .map(in::part)
            .filter(i -> i >= 0)
            .forEach(i -> within.add(in.chair().parts().get(i).frame().x()));
      }
      joints.forEach(j -> within.add(j.entry()));
      return new Place(finding.at(), within);
    }

    private static Vec3 middle(Joint joint) {
      Vec3 at = joint.tenons().isEmpty() ? joint.at() : joint.tenons().get(0).at();
      return at.plus(joint.entry().times(joint.length() / 2));
    }

    /** The way that cuts least across what should be seen along. */
    Way best() {
      return Arrays.stream(Way.values()).min(Comparator.comparingDouble(this::lost)).orElseThrow();
    }

    private double lost(Way way) {
      double lost = 0;
      for (int i = 0; i < within.size(); i++) {
        double off = within.get(i).dot(way.axis());
        lost += off * off / (i + 1);
      }
      return lost;
    }
  }

  Slicing(Session session, ChairView chair) {
    this.session = session;
    this.chair = chair;
    word.setOnAction(e -> turned());
    where.setId("slice-at");
    where.setValue(0.5);
    where.setBlockIncrement(0.01);
    where.valueProperty().addListener(o -> slid());
    told.setId("slice-told");
    told.getStyleClass().add("quiet");
    told.setMinWidth(Label.USE_PREF_SIZE);
    row = new HBox(14, where, told);
    for (Way one : Way.values()) {
      ToggleButton word = Seeing.word(one.word);
      word.setId("slice-" + one.word.replace(' ', '-'));
      word.setUserData(one);
      ways.add(word);
      word.setMinWidth(ToggleButton.USE_PREF_SIZE);
      word.setAccessibleText("slice " + one.word);
      word.setOnAction(
          e -> {
            begin(one);
          });
      row.getChildren().add(word);
    }
    mark();
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("against");
    HBox.setHgrow(where, Priority.ALWAYS);
    row.setVisible(false);
    row.managedProperty().bind(row.visibleProperty());
    chair.orbit().addListener((o, was, now) -> turnedRound());
  }

  /** The word that turns it on. */
  ToggleButton word() {
    return word;
  }

  /** The slider and the ways, in sight while it is on. */
  HBox row() {
    return row;
  }

  void show(Shown next, Length.Unit in) {
    boolean other = !next.is(shown);
    shown = next;
    unit = in;
    if (other) {
      cut();
    }
    tell();
  }

  /** Begins at what is taken up now; with nothing taken up it stays where it is. */
  void take(Optional<Place> place) {
    taken = place;
    if (word.isSelected() && taken.isPresent()) {
      begin(taken.get().best());
    }
  }

  /** No slice any more. */
  void end() {
    taken = Optional.empty();
    shares = new Vec3(0.5, 0.5, 0.5);
    word.setSelected(false);
    turned();
  }

  private void turned() {
    row.setVisible(word.isSelected());
    if (word.isSelected() && taken.isPresent()) {
      begin(taken.get().best());
    } else if (word.isSelected()) {
      where.setValue(shares.dot(way.axis()));
      cut();
    } else {
      chair.see(l -> l.cut(Optional.empty()));
    }
  }

  /** Saws one way, through the middle of what is taken up if anything is, and looks at the cut. */
  private void begin(Way next) {
    way = next;
    mark();
    if (shown == null) {
      return;
    }
    Vec3 at = taken.map(Place::at).orElse(at());
    Box box = shown.bounds();
    shares =
        new Vec3(
            share(at.x(), box.low().x(), box.high().x()),
            share(at.y(), box.low().y(), box.high().y()),
            share(at.z(), box.low().z(), box.high().z()));
    where.setValue(shares.dot(way.axis()));
    Orbit now = chair.heading();
    Vec3 target = taken.isPresent() ? at : now.target();
    chair.face(target, outward(at), ASLANT, taken.isPresent() ? NEAR : now.distance());
    cut();
  }

  /** From where the cut is looked at first: what is taken away is the smaller half of the width. */
  private Vec3 outward(Vec3 at) {
    double off = at.x() - shown.bounds().middle().x();
    return switch (way) {
      case SIDE -> Math.abs(off) < 1 ? towardsEye() : Vec3.RIGHT.times(Math.signum(off));
      case FRONT -> Vec3.BACK.negated();
      case ABOVE -> Vec3.UP;
    };
  }

  private static double share(double at, double low, double high) {
    return high > low ? Math.max(0, Math.min(1, (at - low) / (high - low))) : 0.5;
  }

  private void mark() {
    ways.forEach(t -> t.setSelected(t.getUserData() == way));
  }

  private void slid() {
    Vec3 rest = shares.minus(way.axis().times(shares.dot(way.axis())));
    shares = rest.plus(way.axis().times(where.getValue()));
    cut();
  }

  private Vec3 at() {
    Box box = shown.bounds();
    Vec3 size = box.size();
    return box.low()
        .plus(new Vec3(size.x() * shares.x(), size.y() * shares.y(), size.z() * shares.z()));
  }

  /** Square to the slice, to the side from which it is looked at. */
  private Vec3 towardsEye() {
    boolean beyond = chair.heading().camera().eye().minus(at()).dot(way.axis()) < 0;
    return beyond ? way.axis().negated() : way.axis();
  }

  /** The half that stays follows the eye round the chair. */
  private void turnedRound() {
    if (word.isSelected() && shown != null && !towardsEye().equals(left)) {
      cut();
    }
  }

  private void cut() {
    if (!word.isSelected() || shown == null) {
      return;
    }
    tell();
    Shown of = shown;
    left = towardsEye();
    Plane plane = Plane.through(at(), left);
    session.workOut(
        "slice",
        () -> Sawn.of(of, plane),
        cut -> {
          if (of.is(shown) && word.isSelected()) {
            chair.see(l -> l.cut(Optional.of(cut)));
          }
        });
  }

  private void tell() {
    if (shown == null) {
      return;
    }
    TextStyle style = new TextStyle(unit, 16, false, false);
    double off = at().dot(way.axis());
    told.setText(
        style.length(Math.abs(off))
            + switch (way) {
              case SIDE -> " from the middle";
              case FRONT -> off < 0 ? " before the seat" : " behind the front";
              case ABOVE -> " above the floor";
            });
  }
}
