package dryfit.solid.exact;

import dryfit.geometry.Mesh;
import dryfit.solid.Csg;
import java.util.ArrayList;
import java.util.List;

/** One evaluation of one expression, from leaves to mesh. */
final class Evaluation {
  private final Expression expression;
  private final Planes planes;
  private final Points points;
  private final Facets facets;
  private final Grid grid;
  private final int[] leafStart;

  /**
   * @param coarser how many times the grid's step is doubled
   */
  Evaluation(Csg what, int coarser) {
    expression = new Expression(what);
    int corners = 64;
    int faces = 64;
    for (Mesh leaf : expression.leaves) {
      corners += leaf.pointCount();
      faces += leaf.faceCount();
    }
    planes = new Planes(2 * faces);
    points = new Points(planes, 2 * corners);
    grid = Grid.over(expression.leaves, coarser);
    facets = new Facets(planes, points, grid, 3 * corners);
    leafStart = new int[expression.leaves.size() + 1];
    for (int l = 0; l < expression.leaves.size(); l++) {
      leafStart[l + 1] = facets.add(l, expression.leaves.get(l));
    }
  }

  /**
   * The result.
   *
   * @throws IllegalStateException if a leaf was not closed
   */
  Mesh mesh() {
    Surface surface = surface(false);
    if (surface == null) {
      // A leaf that overlaps itself, if only by a grid step: look at its own facets as well.
      surface = surface(true);
    }
    if (surface == null) {
      throw new IllegalStateException("a shape is not closed, so that it has no inside");
    }
    return new MeshMaker(planes, points, grid, surface).mesh();
  }

  private Surface surface(boolean careful) {
    List<Facet> all = facets.all;
    for (Facet f : all) {
      f.near.clear();
    }
    Neighbours neighbours = new Neighbours(all, leafStart);
    neighbours.find(careful);
    PlaneWork work = new PlaneWork(planes, points, expression, all, leafStart, neighbours);
    List<Face> untouched = new ArrayList<>();
    if (!careful) {
      new Untouched(planes, points, expression, all, leafStart, neighbours).add(untouched);
    }
    List<List<Facet>> groups = groups(careful);
    List<List<Face>> made = new ArrayList<>();
    LongList touched = new LongList();
    int[] touchedUntil = new int[groups.size() + 1];
    KeyMap seams = new KeyMap(16);
    for (int g = 0; g < groups.size(); g++) {
      made.add(new ArrayList<>());
      work.add(groups.get(g), careful, seams, touched, made.get(g));
      touchedUntil[g + 1] = touched.size;
    }
    if (touched.size > 0) {
      for (List<Face> faces : made) {
        for (Face f : faces) {
          listRims(f, seams);
        }
      }
    }
    for (int g = 0; g < groups.size(); g++) {
      if (anyIn(touched, touchedUntil[g], touchedUntil[g + 1], seams)) {
        made.get(g).clear();
        work.add(groups.get(g), careful, seams, new LongList(), made.get(g));
      }
    }
    List<Face> faces = new ArrayList<>(untouched);
    made.forEach(faces::addAll);
    return new Seams(planes, points).closed(Surface.of(faces));
  }

  private static boolean anyIn(LongList keys, int from, int to, KeyMap map) {
    for (int k = from; k < to; k++) {
      if (map.get(keys.at[k]) != KeyMap.NONE) {
        return true;
      }
    }
    return false;
  }

  private static void listRims(Face f, KeyMap into) {
    for (int[] loop : f.loops()) {
      for (int i = 0; i < loop.length; i++) {
        into.put(KeyMap.pair(loop[i], loop[i + 1 < loop.length ? i + 1 : 0]), 0);
      }
    }
  }

  /** Facets that need arranging, gathered by plane where they may touch. */
  private List<List<Facet>> groups(boolean careful) {
    List<Facet> all = facets.all;
    Sets sets = new Sets();
    sets.reset(all.size());
    for (Facet f : all) {
      for (int k = 0; k < f.near.size; k++) {
        if (all.get(f.near.at[k]).plane == f.plane) {
          sets.join(f.id, f.near.at[k]);
        }
      }
    }
    List<List<Facet>> groups = new ArrayList<>();
    int[] groupOf = new int[all.size()];
    for (Facet f : all) {
      if (careful || !Untouched.isUntouched(f)) {
        int root = sets.find(f.id);
        if (root == f.id) {
          groupOf[root] = groups.size();
          groups.add(new ArrayList<>());
        }
        groups.get(groupOf[root]).add(f);
      }
    }
    return groups;
  }
}
