package dryfit.view;

import dryfit.build.Joint;
import dryfit.geometry.Box;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * The chair sawn open: upright from the front or from the side, or level from above. It begins at
 * what the maker has taken up, and the slider moves it from there.
 */
final class Slicing {
  /** A cut face that turns away from the eye further than this is not worth looking at, cosine. */
  private static final double FACING = 0.3;

  private final Session session;
  private final ChairView chair;
  private final ToggleButton word = Seeing.word("slice");
  private final Slider where = Seeing.slider("where the slice is");
  private final ToggleGroup sides = new ToggleGroup();
  private final HBox row = new HBox(14);
  private Optional<Place> place = Optional.empty();
  private Shown shown;
  private Side side = Side.SIDE;
  private boolean setting;

  /** From where the cut is looked at. */
  private enum Side {
    FRONT("from the front"),
    SIDE("from the side"),
    ABOVE("from above");

    private final String words;

    Side(String words) {
      this.words = words;
    }
  }

  /** What is to be sawn through, and from where it shows best. */
  private record Place(Vec3 at, Side side) {}

  Slicing(Session session, ChairView chair) {
    this.session = session;
    this.chair = chair;
    where.setValue(0.5);
    where.setId("slice-at");
    where
        .valueProperty()
        .addListener(
            o -> {
              if (!setting) {
                cut();
              }
            });
    word.setOnAction(e -> turnedOn());
    row.getChildren().addAll(new Label("slice"), where);
    HBox.setHgrow(where, Priority.ALWAYS);
    for (Side each : Side.values()) {
      row.getChildren().add(choice(each));
    }
    row.setAlignment(Pos.CENTER_LEFT);
    row.setVisible(false);
    row.managedProperty().bind(row.visibleProperty());
  }

  private ToggleButton choice(Side each) {
    ToggleButton choice = Seeing.word(each.words);
    choice.setId("slice-" + each.words.replace(' ', '-'));
    choice.setAccessibleText("slice, seen " + each.words);
    choice.setUserData(each);
    choice.setMinWidth(ToggleButton.USE_PREF_SIZE);
    choice.setToggleGroup(sides);
    choice.setSelected(each == side);
    choice.setOnAction(
        e -> {
          choice.setSelected(true);
          begin(each);
        });
    return choice;
  }

  ToggleButton word() {
    return word;
  }

  HBox row() {
    return row;
  }

  void show(Shown next) {
    boolean same = next.is(shown);
    shown = next;
    if (!same) {
      cut();
    }
  }

  void end() {
    word.setSelected(false);
    row.setVisible(false);
    place = Optional.empty();
    side(Side.SIDE);
    slide(0.5);
  }

  /** The next slice goes through the middle of what goes in there, along it. */
  void through(Joint joint) {
    Vec3 mouth = joint.tenons().isEmpty() ? joint.at() : joint.tenons().get(0).at();
    Vec3 at = mouth.plus(joint.entry().times(joint.length() / 2));
    // A saw held along the tenon and across its cheeks shows walls, shoulder and bottom in one.
    take(new Place(at, lookingAlong(joint.wide())));
  }

  /** The next slice goes through a finding: its joint, or the place where its joints meet. */
  void through(Vec3 at, List<Joint> joints) {
    if (joints.isEmpty()) {
      take(new Place(at, side));
      return;
    }
    if (joints.size() == 1) {
      through(joints.get(0));
      return;
    }
    Vec3 one = joints.get(0).entry();
    Vec3 square = one.cross(joints.get(1).entry());
    // Two that run the same way are seen together from wherever each is seen well.
    take(new Place(at, lookingAlong(square.length() > FACING ? square : joints.get(0).wide())));
  }

  /** Nothing is taken up any more; a slice that is there stays where it is. */
  void throughNothing() {
    place = Optional.empty();
  }

  private void take(Place next) {
    place = Optional.of(next);
    if (word.isSelected()) {
      begin(next.side());
    }
  }

  private static Side lookingAlong(Vec3 v) {
    double level = Math.max(Math.abs(v.x()), Math.abs(v.y()));
    if (Math.abs(v.z()) >= level) {
      return Side.ABOVE;
    }
    return Math.abs(v.x()) >= Math.abs(v.y()) ? Side.SIDE : Side.FRONT;
  }

  private void turnedOn() {
    row.setVisible(word.isSelected());
    if (word.isSelected()) {
      begin(place.map(Place::side).orElse(side));
    } else {
      chair.see(l -> l.cut(Optional.empty()));
    }
  }

  /** Saws from one side, through what is taken up if anything is, and looks at the cut. */
  private void begin(Side from) {
    side(from);
    if (shown == null) {
      return;
    }
    place.ifPresent(p -> slide(share(p.at())));
    chair.face(normal(), FACING);
    cut();
  }

  private void side(Side next) {
    side = next;
    sides.getToggles().stream()
        .filter(t -> t.getUserData() == next)
        .forEach(t -> t.setSelected(true));
  }

  private void slide(double share) {
    setting = true;
    where.setValue(share);
    setting = false;
  }

  /** How far along the chair a place is, the way the slice goes; 0 to 1. */
  private double share(Vec3 at) {
    Vec3 size = shown.bounds().size();
    Vec3 in = at.minus(shown.bounds().low());
    return switch (side) {
      case FRONT -> in.y() / size.y();
      case SIDE -> in.x() / size.x();
      case ABOVE -> in.z() / size.z();
    };
  }

  /** Square to the cut, towards what is taken away. */
  private Vec3 normal() {
    return switch (side) {
      case FRONT -> Vec3.BACK.negated();
      // Of a joint on the left the left is taken away, so that the chair is not in the way.
      case SIDE -> left() ? Vec3.RIGHT.negated() : Vec3.RIGHT;
      case ABOVE -> Vec3.UP;
    };
  }

  private boolean left() {
    return place.filter(p -> p.at().x() < shown.bounds().middle().x() - 1).isPresent();
  }

  private void cut() {
    if (!word.isSelected() || shown == null) {
      return;
    }
    Shown of = shown;
    Box box = of.bounds();
    Plane plane = Plane.through(box.low().plus(box.size().times(where.getValue())), normal());
    session.workOut(
        "slice", () -> Cutaway.of(of, plane), cut -> see(of, l -> l.cut(Optional.of(cut))));
  }

  private void see(Shown of, UnaryOperator<Look> change) {
    if (of.is(shown) && word.isSelected()) {
      chair.see(change);
    }
  }
}
