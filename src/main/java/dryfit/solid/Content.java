package dryfit.solid;

import dryfit.geometry.Mesh;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Everything that a shape is, as a key: two shapes with equal content are built into the same
 * solid. Equal means every number to the last bit, every loop and every origin, in the same order.
 */
public final class Content {
  private final long[] numbers;
  private final List<String> words;
  private final int hash;

  private Content(long[] numbers, List<String> words) {
    this.numbers = numbers;
    this.words = List.copyOf(words);
    this.hash = 31 * Arrays.hashCode(numbers) + this.words.hashCode();
  }

  public static Content of(Csg shape) {
    Writer writer = new Writer();
    writer.shape(shape);
    return writer.content();
  }

  /** The content of plain lists of numbers. */
  public static Content of(List<double[]> lists) {
    Writer writer = new Writer();
    for (double[] list : lists) {
      writer.all(list);
    }
    return writer.content();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Content content
        && hash == content.hash
        && Arrays.equals(numbers, content.numbers)
        && words.equals(content.words);
  }

  @Override
  public int hashCode() {
    return hash;
  }

  /** Writes a shape down; each list is led by its length, so no two shapes are written alike. */
  private static final class Writer {
    private long[] numbers = new long[256];
    private int count;
    private final List<String> words = new ArrayList<>();

    Content content() {
      return new Content(Arrays.copyOf(numbers, count), words);
    }

    void shape(Csg shape) {
      if (shape instanceof Csg.Leaf leaf) {
        add('L');
        mesh(leaf.mesh());
        add(leaf.cells().size());
        leaf.cells().forEach(this::cell);
      } else if (shape instanceof Csg.Union union) {
        add('U');
        shapes(union.of());
      } else if (shape instanceof Csg.Common common) {
        add('C');
        shapes(common.of());
      } else {
        Csg.Cut cut = (Csg.Cut) shape;
        add('-');
        shape(cut.from());
        shapes(cut.tools());
      }
    }

    private void shapes(List<Csg> shapes) {
      add(shapes.size());
      shapes.forEach(this::shape);
    }

    private void mesh(Mesh mesh) {
      all(mesh.coordinates());
      add(mesh.faceCount());
      for (int f = 0; f < mesh.faceCount(); f++) {
        words.add(mesh.origin(f));
        loops(mesh.loops(f));
      }
      all(mesh.triangles());
    }

    private void cell(Convex cell) {
      all(cell.xyz);
      loops(cell.faces);
    }

    private void loops(int[][] loops) {
      add(loops.length);
      for (int[] loop : loops) {
        all(loop);
      }
    }

    void all(double[] values) {
      add(values.length);
      for (double value : values) {
        add(Double.doubleToRawLongBits(value));
      }
    }

    private void all(int[] values) {
      add(values.length);
      for (int value : values) {
        add(value);
      }
    }

    private void add(long value) {
      if (count == numbers.length) {
        numbers = Arrays.copyOf(numbers, 2 * count);
      }
      numbers[count++] = value;
    }
  }
}
