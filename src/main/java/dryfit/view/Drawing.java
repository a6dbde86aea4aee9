package dryfit.view;

import java.util.Optional;
import javafx.scene.Node;

/** Draws the chair. All calls on the window's thread. */
interface Drawing {
  /** What to put on screen. */
  Node node();

  /** Takes the room there is, pixels. */
  void resize(double width, double height);

  /** Another chair, or the same one changed. */
  void show(Shown shown);

  /** Another design laid over it in ink, or none any more; not every drawing can do that. */
  void lay(Optional<Shown> over);

  /** From where it is looked at. */
  void look(Orbit from);

  /** How its parts are seen. */
  void see(Look how);
}
