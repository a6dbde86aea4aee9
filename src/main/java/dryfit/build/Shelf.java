package dryfit.build;

import dryfit.geometry.Vec2;
import dryfit.solid.Canonical;
import dryfit.solid.Content;
import dryfit.solid.Convex;
import dryfit.solid.Csg;
import dryfit.solid.Kernel;
import dryfit.solid.Solid;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What was made before, by what it was made from. A chair built again after a change of one
 * dimension takes from here all that the change did not touch, wherever it now stands. Because the
 * key is the whole content, to the last bit, what is taken is the same as what would be made.
 *
 * <p>One shelf serves one kernel and one builder at a time; the threads of that builder may share
 * it.
 */
public final class Shelf {
  /** How many builds something stays that is not used: a slider drawn there and back finds it. */
  private static final int STAYS = 24;

  private final Kernel kernel;
  private final Row<Content, List<Convex>> cells = new Row<>();
  private final Row<Content, Solid> solids = new Row<>();
  private final Row<Content, Solid> mirrored = new Row<>();
  private final Row<Content, List<List<Vec2>>> loops = new Row<>();
  private final Row<Object, Csg> forms = new Row<>();
  private int builds;

  public Shelf(Kernel kernel) {
    this.kernel = kernel;
  }

  Kernel kernel() {
    return kernel;
  }

  List<Convex> cells(Content of, Supplier<List<Convex>> make) {
    return cells.kept(of, builds, make);
  }

  Solid solid(Content of, Supplier<Solid> make) {
    return solids.kept(of, builds, make);
  }

  /** The left of a pair, kept apart so that it knows its twin also where the two are alike. */
  Solid mirrored(Content of, Supplier<Solid> make) {
    return mirrored.kept(of, builds, make);
  }

  boolean hasSolid(Content of) {
    return solids.has(of);
  }

  List<List<Vec2>> loops(Content of, Supplier<List<List<Vec2>>> make) {
    return loops.kept(of, builds, make);
  }

  /**
   * A shape of which the drawing is the key, canonical; the very same as long as it stays here.
   *
   * @param drawing equal for equal shapes
   */
  Csg form(Object drawing, Supplier<Csg> make) {
    return forms.kept(drawing, builds, () -> Canonical.lasting(make.get(), kernel.step()));
  }

  /** A shape as the kernel and the cells are to see it. */
  Csg canonical(Csg shape) {
    return Canonical.shape(shape, kernel.step());
  }

  /** One build is over: what was long not used goes. */
  void swept() {
    cells.drop(builds - STAYS);
    solids.drop(builds - STAYS);
    mirrored.drop(builds - STAYS);
    loops.drop(builds - STAYS);
    forms.drop(builds - STAYS);
    builds++;
  }

  /** Things of one sort. */
  private static final class Row<K, V> {
    private final Map<K, Thing<V>> things = new ConcurrentHashMap<>();

    boolean has(K key) {
      return things.containsKey(key);
    }

    /** Two threads that miss the same thing both make it; the things are equal. */
    V kept(K key, int build, Supplier<V> make) {
      Thing<V> known = things.get(key);
      V value = known == null ? make.get() : known.value();
      if (known == null || known.used() != build) {
        things.put(key, new Thing<>(value, build));
      }
      return value;
    }

    void drop(int before) {
      things.values().removeIf(t -> t.used() < before);
    }
  }

  private record Thing<V>(V value, int used) {}
}
