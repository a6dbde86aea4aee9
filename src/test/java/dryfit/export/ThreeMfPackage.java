package dryfit.export;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * A 3MF package read by nothing of ours: the zip and the document tree of the JDK, followed as the
 * specification says from the content types over the relationship to the model.
 */
public record ThreeMfPackage(String unit, String title, List<Thing> objects, List<Double> lowest) {
  private static final String MODEL_TYPE = "application/vnd.ms-package.3dmanufacturing-3dmodel+xml";
  private static final String RELATIONSHIP =
      "http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel";
  private static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

  /** One object: its name, corners and triangles. */
  public record Thing(String name, double[][] corners, int[][] triangles) {

    /** By the divergence theorem, positive if triangles run anticlockwise from outside. */
    public double volume() {
      double six = 0;
      for (int[] t : triangles) {
        double[] a = corners[t[0]];
        double[] b = corners[t[1]];
        double[] c = corners[t[2]];
        six +=
            a[0] * (b[1] * c[2] - b[2] * c[1])
                + a[1] * (b[2] * c[0] - b[0] * c[2])
                + a[2] * (b[0] * c[1] - b[1] * c[0]);
      }
      return six / 6;
    }

    /** How many directed edges have not exactly one partner the other way. */
    public long unmatchedEdges() {
      Map<List<Integer>, Integer> count = new HashMap<>();
      for (int[] t : triangles) {
        for (int k = 0; k < 3; k++) {
          count.merge(List.of(t[k], t[(k + 1) % 3]), 1, Integer::sum);
        }
      }
      return count.entrySet().stream()
          .filter(
              e ->
                  e.getValue() != 1
                      || count.getOrDefault(List.of(e.getKey().get(1), e.getKey().get(0)), 0) != 1)
          .count();
    }
  }

  public static ThreeMfPackage open(Path path) throws Exception {
    try (ZipFile zip = new ZipFile(path.toFile())) {
      Element kind = named(tree(zip, "[Content_Types].xml"), "Default", "Extension", "model");
      require(kind.getAttribute("ContentType").equals(MODEL_TYPE), "content type");
      Element link = named(tree(zip, "_rels/.rels"), "Relationship", "Type", RELATIONSHIP);
      Document model = tree(zip, link.getAttribute("Target").substring(1));
      Element root = model.getDocumentElement();
      require(CORE.equals(root.getNamespaceURI()), "namespace");
      List<Thing> objects = new ArrayList<>();
      List<Double> lowest = new ArrayList<>(List.of(1e9, 1e9, 1e9));
      for (Element object : all(root, "object")) {
        Thing thing = thing(object);
        objects.add(thing);
        Element item = named(model, "item", "objectid", object.getAttribute("id"));
        String[] m = item.getAttribute("transform").split(" ");
        require(m.length == 12, "transform");
        for (double[] p : thing.corners()) {
          for (int k = 0; k < 3; k++) {
            double at =
                p[0] * Double.parseDouble(m[k])
                    + p[1] * Double.parseDouble(m[3 + k])
                    + p[2] * Double.parseDouble(m[6 + k])
                    + Double.parseDouble(m[9 + k]);
            lowest.set(k, Math.min(lowest.get(k), at));
          }
        }
      }
      Element title = named(model, "metadata", "name", "Title");
      return new ThreeMfPackage(root.getAttribute("unit"), title.getTextContent(), objects, lowest);
    }
  }

  private static Thing thing(Element object) {
    List<Element> vertices = all(object, "vertex");
    double[][] corners = new double[vertices.size()][];
    for (int i = 0; i < corners.length; i++) {
      Element v = vertices.get(i);
      corners[i] =
          new double[] {
            Double.parseDouble(v.getAttribute("x")),
            Double.parseDouble(v.getAttribute("y")),
            Double.parseDouble(v.getAttribute("z"))
          };
    }
    List<Element> faces = all(object, "triangle");
    int[][] triangles = new int[faces.size()][];
    for (int i = 0; i < triangles.length; i++) {
      Element t = faces.get(i);
      triangles[i] =
          new int[] {
            Integer.parseInt(t.getAttribute("v1")),
            Integer.parseInt(t.getAttribute("v2")),
            Integer.parseInt(t.getAttribute("v3"))
          };
    }
    return new Thing(object.getAttribute("name"), corners, triangles);
  }

  private static Document tree(ZipFile zip, String name) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
      return factory.newDocumentBuilder().parse(in);
    }
  }

  private static Element named(Document in, String tag, String key, String value) {
    return all(in.getDocumentElement(), tag).stream()
        .filter(e -> e.getAttribute(key).equals(value))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + tag + " with " + key + " " + value));
  }

  private static List<Element> all(Element in, String tag) {
    NodeList found = in.getElementsByTagNameNS("*", tag);
    List<Element> out = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      out.add((Element) found.item(i));
    }
    return out;
  }

  private static void require(boolean holds, String what) {
    if (!holds) {
      throw new AssertionError("not as the specification has it: " + what);
    }
  }
}
