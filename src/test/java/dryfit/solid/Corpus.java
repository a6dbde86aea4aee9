package dryfit.solid;

import dryfit.geometry.Mesh;
import dryfit.geometry.Meshes;
import dryfit.geometry.Vec3;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Reads the cases in {@code src/test/resources/kernel-corpus}: solids on which some program once
 * failed, with what the answer must be. One file a case.
 *
 * <p>A solid is {@code {"box": [x0, y0, z0, x1, y1, z1]}}, {@code cylinder} ({@code r}, {@code n}
 * sides, {@code z} from and to, {@code phase} in degrees; a corner at phase), {@code prism} ({@code
 * outline}, {@code z}), {@code polyhedron} ({@code points}, {@code faces}, each a loop of points
 * or, with holes, a list of loops), {@code rotate} ({@code axis}, {@code degrees}, {@code of}),
 * {@code translate} ({@code by}, {@code of}), {@code repeat} (the union of {@code times} copies,
 * each moved {@code by} or turned about {@code axis} by {@code degrees} more than the last), or a
 * list under {@code union}, {@code common} or {@code cut} (the first without the others).
 */
public final class Corpus {
  private Corpus() {}

  /**
   * What a case asks for; what is missing is not asked.
   *
   * @param onGrid the volume once the corners are on the grid of the exact kernel, worked out in
   *     rational numbers (signed tetrahedra, clipped); for what JCSG cannot do or is not sure of
   * @param refused part of the message with which a kernel must refuse it
   * @param knownWrong kernel name to the reason why it fails the case for now
   */
  public record Case(
      String name,
      Csg solid,
      OptionalDouble volume,
      double relative,
      OptionalDouble area,
      OptionalInt shells,
      OptionalInt genus,
      OptionalInt faces,
      OptionalInt points,
      OptionalDouble onGrid,
      Optional<String> refused,
      Map<String, String> knownWrong) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final JsonMapper JSON = new JsonMapper();

  /** All cases, by name. */
  public static List<Case> all() {
    Path folder = Path.of("src", "test", "resources", "kernel-corpus");
    try (Stream<Path> files = Files.list(folder)) {
      List<Case> out = new ArrayList<>();
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        out.add(read(file));
      }
      return List.copyOf(out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** One case; also one that the program kept when a kernel failed. */
  public static Case read(Path file) throws IOException {
    JsonNode json = JSON.readTree(Files.readString(file));
    String name = file.getFileName().toString().replace(".json", "");
    Map<String, String> wrong = new LinkedHashMap<>();
    json.path("knownWrong")
        .properties()
        .forEach(e -> wrong.put(e.getKey(), e.getValue().asString()));
    return new Case(
        name,
        solid(json.required("solid"), Move.NONE),
        decimal(json, "volume"),
        json.required("relative").asDouble(),
        decimal(json, "area"),
        whole(json, "shells"),
        whole(json, "genus"),
        whole(json, "faces"),
        whole(json, "points"),
        decimal(json, "onGrid"),
        Optional.of(json.path("refused")).filter(JsonNode::isString).map(JsonNode::asString),
        Map.copyOf(wrong));
  }

  private static OptionalDouble decimal(JsonNode json, String key) {
    return json.has(key) ? OptionalDouble.of(json.get(key).asDouble()) : OptionalDouble.empty();
  }

  private static OptionalInt whole(JsonNode json, String key) {
    return json.has(key) ? OptionalInt.of(json.get(key).asInt()) : OptionalInt.empty();
  }

  private static Csg solid(JsonNode json, Move move) {
    Map.Entry<String, JsonNode> only = json.properties().iterator().next();
    JsonNode of = only.getValue();
    return switch (only.getKey()) {
      case "box" -> leaf(box(of), move);
      case "cylinder" -> leaf(cylinder(of), move);
      case "prism" -> leaf(prism(outline(of.required("outline")), of), move);
      case "polyhedron" -> leaf(polyhedron(of), move);
      case "rotate" -> solid(of.required("of"), move.after(turn(of, 1)));
      case "translate" -> solid(of.required("of"), move.after(Move.by(vector(of.required("by")))));
      case "repeat" -> repeat(of, move);
      case "union" -> new Csg.Union(list(of, move));
      case "common" -> new Csg.Common(list(of, move));
      case "cut" -> {
        List<Csg> all = list(of, move);
        yield new Csg.Cut(all.get(0), all.subList(1, all.size()));
      }
      default -> throw new IllegalArgumentException("no such solid: " + only.getKey());
    };
  }

  private static List<Csg> list(JsonNode of, Move move) {
    List<Csg> out = new ArrayList<>();
    of.forEach(part -> out.add(solid(part, move)));
    return out;
  }

  private static Csg repeat(JsonNode of, Move move) {
    List<Csg> out = new ArrayList<>();
    for (int i = 0; i < of.required("times").asInt(); i++) {
      Move step = of.has("by") ? Move.by(vector(of.get("by")).times(i)) : turn(of, i);
      out.add(solid(of.required("of"), move.after(step)));
    }
    return new Csg.Union(out);
  }

  private static Move turn(JsonNode of, int times) {
    return Move.about(vector(of.required("axis")), times * of.required("degrees").asDouble());
  }

  private static Vec3 vector(JsonNode json) {
    return new Vec3(json.get(0).asDouble(), json.get(1).asDouble(), json.get(2).asDouble());
  }

  private static Mesh box(JsonNode of) {
    return Meshes.box(
        new dryfit.geometry.Box(
            vector(of), new Vec3(of.get(3).asDouble(), of.get(4).asDouble(), of.get(5).asDouble())),
        "/box");
  }

  private static Mesh cylinder(JsonNode of) {
    int n = of.required("n").asInt();
    double r = of.required("r").asDouble();
    List<double[]> outline = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double degrees = of.path("phase").asDouble(0) + 360.0 * i / n;
      outline.add(new double[] {r * Move.cosine(degrees), r * Move.sine(degrees)});
    }
    return prism(outline, of);
  }

  private static List<double[]> outline(JsonNode json) {
    List<double[]> out = new ArrayList<>();
    json.forEach(p -> out.add(new double[] {p.get(0).asDouble(), p.get(1).asDouble()}));
    return out;
  }

  private static Mesh prism(List<double[]> outline, JsonNode of) {
    JsonNode z = of.required("z");
    return Meshes.prism(outline, z.get(0).asDouble(), z.get(1).asDouble(), "/prism");
  }

  private static Mesh polyhedron(JsonNode of) {
    List<Vec3> points = new ArrayList<>();
    of.required("points").forEach(p -> points.add(vector(p)));
    List<int[][]> faces = new ArrayList<>();
    of.required("faces")
        .forEach(
            f -> {
              List<int[]> loops = new ArrayList<>();
              if (f.get(0).isArray()) {
                f.forEach(loop -> loops.add(loop(loop)));
              } else {
                loops.add(loop(f));
              }
              faces.add(loops.toArray(int[][]::new));
            });
    return Meshes.ofFaces(
        points, faces.toArray(int[][][]::new), of.path("origin").asString("/polyhedron"));
  }

  private static int[] loop(JsonNode json) {
    int[] loop = new int[json.size()];
    for (int i = 0; i < loop.length; i++) {
      loop[i] = json.get(i).asInt();
    }
    return loop;
  }

  private static Csg leaf(Mesh mesh, Move move) {
    List<Vec3> points = new ArrayList<>();
    for (int i = 0; i < mesh.pointCount(); i++) {
      points.add(move.apply(mesh.point(i)));
    }
    int[][][] faces = new int[mesh.faceCount()][][];
    for (int f = 0; f < faces.length; f++) {
      faces[f] = mesh.loops(f);
    }
    return new Csg.Leaf(Meshes.ofFaces(points, faces, mesh.origin(0)), List.of());
  }

  /** A turn and a shift; multiples of 90 degrees are exact. */
  private record Move(Vec3 x, Vec3 y, Vec3 z, Vec3 shift) {
    static final Move NONE = new Move(Vec3.RIGHT, Vec3.BACK, Vec3.UP, Vec3.ZERO);

    static Move by(Vec3 shift) {
      return new Move(Vec3.RIGHT, Vec3.BACK, Vec3.UP, shift);
    }

    /** Right-handed about an axis through the origin, by Rodrigues' formula. */
    static Move about(Vec3 axis, double degrees) {
      Vec3 k = axis.unit();
      double c = cosine(degrees);
      double s = sine(degrees);
      return new Move(
          turned(Vec3.RIGHT, k, c, s),
          turned(Vec3.BACK, k, c, s),
          turned(Vec3.UP, k, c, s),
          Vec3.ZERO);
    }

    private static Vec3 turned(Vec3 v, Vec3 k, double c, double s) {
      return v.times(c).plus(k.cross(v).times(s)).plus(k.times(k.dot(v) * (1 - c)));
    }

    static double sine(double degrees) {
      return degrees % 90 == 0
          ? new double[] {0, 1, 0, -1}[Math.floorMod((int) (degrees / 90), 4)]
          : Math.sin(Math.toRadians(degrees));
    }

    static double cosine(double degrees) {
      return degrees % 90 == 0 ? sine(degrees + 90) : Math.cos(Math.toRadians(degrees));
    }

    private Vec3 turn(Vec3 p) {
      return x.times(p.x()).plus(y.times(p.y())).plus(z.times(p.z()));
    }

    Vec3 apply(Vec3 p) {
      return turn(p).plus(shift);
    }

    /** First {@code inner}, then this. */
    Move after(Move inner) {
      return new Move(turn(inner.x), turn(inner.y), turn(inner.z), apply(inner.shift));
    }
  }
}
