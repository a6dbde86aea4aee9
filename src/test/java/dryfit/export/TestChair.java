package dryfit.export;

import dryfit.build.Chair;
import dryfit.build.Joint;
import dryfit.build.Part;
import dryfit.document.Design;
import dryfit.document.Hand;
import dryfit.document.JointPlan;
import dryfit.document.JointSizes;
import dryfit.document.PartPlan;
import dryfit.fit.Finding;
import dryfit.fit.FitReport;
import dryfit.fit.JointFit;
import dryfit.fit.JointFit.Gap;
import dryfit.fit.Source;
import dryfit.geometry.Frame;
import dryfit.geometry.Mesh;
import dryfit.geometry.Plane;
import dryfit.geometry.Vec3;
import dryfit.solid.Csg;
import dryfit.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An invented armchair of boxes and one round stretcher, put together by hand: demo data. */
public final class TestChair {
  private TestChair() {}

  static final Design.FitPlan FIT = new Design.FitPlan(0.1, 0.5, 2, 6);

  public static Chair chair() {
    List<Part> parts = new ArrayList<>();
    pair(parts, "front-leg", v(259, 21, 0), v(259, 21, 630), 42, 42);
    pair(parts, "back-leg", v(214, 450, 0), v(226, 470, 460), 42, 34);
    pair(parts, "back-post", v(226, 470, 460), v(222, 540, 960), 38, 30);
    pair(parts, "side-rail", v(259, 42, 406), v(221, 446, 384), 68, 22);
    pair(parts, "arm", v(262, -20, 645), v(232, 500, 645), 62, 30);
    single(parts, "front-rail", v(238, 18, 406), v(-238, 18, 406), 68, 22);
    single(parts, "back-rail", v(200, 462, 384), v(-200, 462, 384), 68, 22);
    single(parts, "crest", v(205, 532, 900), v(-205, 532, 900), 90, 22);
    for (int i = -2; i <= 2; i++) {
      single(parts, "slat-" + (i + 3), v(i * 70, 474, 418), v(i * 70, 530, 856), 34, 12);
    }
    parts.add(
        part(
            "stretcher",
            Hand.NONE,
            round(11, 400),
            Frame.of(v(-200, 240, 180), Vec3.RIGHT, Vec3.UP),
            400,
            22,
            22));
    return new Chair(design(), parts, joints(parts));
  }

  static Design design() {
    return new Design(
        "test-chair.json",
        "Test armchair",
        "Demo data, invented.",
        Design.LengthUnit.MM,
        Design.Labels.AS_YOU_FACE_IT,
        Design.AS_DRAWN,
        "ash-white",
        FIT,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Vec3 v(double x, double y, double z) {
    return new Vec3(x, y, z);
  }

  private static void pair(
      List<Part> to, String name, Vec3 from, Vec3 end, double width, double thickness) {
    for (Hand hand : List.of(Hand.RIGHT, Hand.LEFT)) {
      boolean right = hand == Hand.RIGHT;
      to.add(
          stick(
              name,
              hand,
              right ? from : from.mirrored(),
              right ? end : end.mirrored(),
              width,
              thickness));
    }
  }

  private static void single(
      List<Part> to, String name, Vec3 from, Vec3 end, double width, double thickness) {
    to.add(stick(name, Hand.NONE, from, end, width, thickness));
  }

  private static Part stick(
      String name, Hand hand, Vec3 from, Vec3 end, double width, double thickness) {
    Vec3 along = end.minus(from);
    boolean standing = Math.abs(along.unit().z()) > 0.7;
    boolean flat = name.equals("arm");
    Frame frame = Frame.of(from, along, standing || flat ? Vec3.RIGHT : Vec3.UP);
    double l = along.length();
    return part(
        name,
        hand,
        box(0, l, -width / 2, width / 2, -thickness / 2, thickness / 2),
        frame,
        l,
        width,
        thickness);
  }

  private static Part part(
      String name, Hand hand, Mesh mesh, Frame frame, double l, double w, double t) {
    String pointer = "/parts/" + name;
    PartPlan plan =
        new PartPlan.Straight(
            new PartPlan.Common(
                name,
                pointer,
                hand != Hand.NONE,
                "ash-white",
                new PartPlan.Grain.AlongLength(),
                ""),
            new PartPlan.Placement.Run(new PartPlan.Spot(0, 0, 0), new PartPlan.Spot(l, 0, 0)),
            new PartPlan.Section.Rectangle(w, t),
            List.of(),
            0);
    return new Part(
        plan,
        hand,
        name + hand.suffix(),
        frame,
        new Csg.Leaf(mesh, List.of()),
        List.of(),
        new Solid(mesh, List.of()),
        new Part.Blank(l, w, t),
        Vec3.RIGHT);
  }

  /** A closed box in a part's own frame. */
  public static Mesh box(double x0, double x1, double y0, double y1, double z0, double z1) {
    double[] xyz = {
      x0, y0, z0, x1, y0, z0, x1, y1, z0, x0, y1, z0, x0, y0, z1, x1, y0, z1, x1, y1, z1, x0, y1, z1
    };
    int[][] quads = {
      {0, 3, 2, 1}, {4, 5, 6, 7}, {0, 1, 5, 4}, {1, 2, 6, 5}, {2, 3, 7, 6}, {3, 0, 4, 7}
    };
    return ofConvexFaces(xyz, quads);
  }

  /** A closed round bar along x. */
  public static Mesh round(double radius, double length) {
    int n = 32;
    double[] xyz = new double[6 * n];
    int[][] loops = new int[n + 2][];
    loops[n] = new int[n];
    loops[n + 1] = new int[n];
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      for (int end = 0; end < 2; end++) {
        int p = 3 * (i + end * n);
        xyz[p] = end * length;
        xyz[p + 1] = radius * Math.cos(a);
        xyz[p + 2] = radius * Math.sin(a);
      }
      int next = (i + 1) % n;
      loops[i] = new int[] {i, next, next + n, i + n};
      loops[n][n - 1 - i] = i;
      loops[n + 1][i] = i + n;
    }
    return ofConvexFaces(xyz, loops);
  }

  private static Mesh ofConvexFaces(double[] xyz, int[][] loops) {
    int[][][] faces = new int[loops.length][1][];
    List<int[]> triangles = new ArrayList<>();
    List<Integer> faceOf = new ArrayList<>();
    for (int f = 0; f < loops.length; f++) {
      faces[f][0] = loops[f];
      for (int i = 1; i + 1 < loops[f].length; i++) {
        triangles.add(new int[] {loops[f][0], loops[f][i], loops[f][i + 1]});
        faceOf.add(f);
      }
    }
    return new Mesh(
        xyz,
        faces,
        triangles.stream().flatMapToInt(java.util.Arrays::stream).toArray(),
        faceOf.stream().mapToInt(Integer::intValue).toArray(),
        new int[loops.length],
        List.of("/parts/test"));
  }

  private static List<Joint> joints(List<Part> parts) {
    List<Joint> joints = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      Hand hand = side == 0 ? Hand.RIGHT : Hand.LEFT;
      joints.add(joint("side rail to front leg", hand, parts, 6 + side, true, side, 0.094));
    }
    joints.add(joint("front rail to leg", Hand.RIGHT, parts, 10, true, 0, 0));
    return joints;
  }

  private static Joint joint(
      String name,
      Hand hand,
      List<Part> parts,
      int tenoned,
      boolean atStart,
      int mortised,
      double lean) {
    String pointer = "/joints/" + name;
    PartPlan.PartRef into = new PartPlan.PartRef(parts.get(mortised).name(), Hand.NONE, pointer);
    JointPlan plan =
        new JointPlan(
            name,
            pointer,
            new JointPlan.EndRef(
                parts.get(tenoned).name(), Hand.NONE, JointPlan.End.START, pointer),
            into,
            new JointSizes.MortiseAndTenon(
                9.9,
                48,
                new JointSizes.Reach(
                    OptionalDouble.of(26), JointPlan.LengthIs.ALONG_THE_TENON, false, 0),
                JointSizes.Row.ONE,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            new JointPlan.Entry.AlongThePart(),
            new JointPlan.Place(
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty()),
            JointPlan.Shoulder.FLAT,
            FIT,
            JointPlan.Role.STRUCTURAL);
    double outward = hand == Hand.LEFT ? -1 : 1;
    Vec3 entry = new Vec3(outward * Math.sin(lean), -Math.cos(lean), 0);
    return new Joint(
        plan,
        hand,
        name + "," + hand.suffix(),
        tenoned,
        atStart,
        mortised,
        Plane.through(new Vec3(259, 42, 406), Vec3.BACK),
        new Vec3(hand == Hand.LEFT ? -259 : 259, 42, 406),
        entry,
        Vec3.RIGHT.across(entry).unit(),
        Vec3.UP,
        26,
        List.of(),
        List.of());
  }

  /** What a dry fit of the chair might find; the findings are as given. */
  public static FitReport report(Finding... findings) {
    Chair chair = chair();
    List<JointFit> fits = new ArrayList<>();
    for (Joint joint : chair.joints()) {
      fits.add(
          new JointFit(
              joint,
              gap(0.1, 0.1),
              gap(0.5, 0.5),
              gap(2, 2.4),
              gap(0, 0),
              OptionalDouble.of(15.9),
              "outside",
              joint.lean(),
              0,
              joint.lean(),
              28 * Math.cos(joint.lean()),
              28,
              joint.lean(),
              0,
              2500,
              0));
    }
    return new FitReport(chair, fits, List.of(findings));
  }

  /** The same report with other wood left at one joint. */
  static FitReport withWall(FitReport report, int at, double wall) {
    List<JointFit> fits = new ArrayList<>(report.joints());
    JointFit f = fits.get(at);
    fits.set(
        at,
        new JointFit(
            f.joint(),
            f.cheek(),
            f.edge(),
            f.bottom(),
            f.shoulder(),
            OptionalDouble.of(wall),
            f.wallFace(),
            f.lean(),
            f.leanAlong(),
            f.leanAcross(),
            f.depthSquare(),
            f.depthAlong(),
            f.shoulderWide(),
            f.shoulderNarrow(),
            f.glueLong(),
            f.glueOther()));
    return new FitReport(report.chair(), fits, report.findings());
  }

  private static Gap gap(double least, double greatest) {
    return new Gap(OptionalDouble.of(least), OptionalDouble.of(greatest));
  }

  public static Finding stops() {
    return new Finding(
        "tenons-meet",
        Finding.Severity.STOPS,
        List.of("front-rail", "side-rail right"),
        List.of("front rail to leg, right", "side rail to front leg, right"),
        7.6,
        0,
        -7.6,
        "mm",
        new Source(Source.Kind.GEOMETRY, "two solids cannot be in one place"),
        "Two tenons meet inside front-leg right, 7.6 mm deep; shorten one by 7.6 mm or mitre both.",
        "/joints/front rail to leg/length",
        new Vec3(255, 30, 406),
        Optional.empty());
  }

  public static Finding look() {
    return new Finding(
        "least-wall",
        Finding.Severity.LOOK,
        List.of("back-leg left"),
        List.of("side rail to front leg, left"),
        5.2,
        6,
        -0.8,
        "mm",
        new Source(Source.Kind.THE_MAKER, "the document's /fit/least-wall"),
        "Only 5.2 mm of wood is left beside this mortise; move it in by 0.8 mm.",
        "/joints/side rail to front leg",
        new Vec3(-259, 42, 406),
        Optional.empty());
  }

  public static Finding waived() {
    Finding f = look();
    return new Finding(
        f.check(),
        Finding.Severity.STOPS,
        f.parts(),
        f.joints(),
        f.measured(),
        f.limit(),
        f.margin(),
        f.unit(),
        f.source(),
        f.message(),
        f.pointer(),
        f.at(),
        Optional.of("the panel carries the arm"));
  }
}
