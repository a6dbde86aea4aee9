package dryfit.export;

import dryfit.geometry.Mesh;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Reads the objects of a 3MF file as far as we write it: meshes with names, in millimetres. */
final class ThreeMfReader {
  private final List<NamedMesh> objects = new ArrayList<>();
  private final List<Double> xyz = new ArrayList<>();
  private final List<Integer> corners = new ArrayList<>();
  private String name = "";

  private ThreeMfReader() {}

  /**
   * The objects in the order of the file, in their own coordinates.
   *
   * @throws UnsoundFile if it is not such a file
   */
  static List<NamedMesh> objects(byte[] file) {
    ThreeMfReader reader = new ThreeMfReader();
    try {
      reader.read(model(file));
    } catch (IOException | XMLStreamException | NumberFormatException e) {
      throw new UnsoundFile("this is not a 3MF file: " + e.getMessage());
    }
    return List.copyOf(reader.objects);
  }

  private static byte[] model(byte[] file) throws IOException {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        if (e.getName().equals(ThreeMfWriter.MODEL)) {
          return zip.readAllBytes();
        }
      }
    }
    throw new UnsoundFile("the 3MF package holds no model");
  }

  private void read(byte[] model) throws XMLStreamException {
    XMLInputFactory factory = XMLInputFactory.newInstance();
    // Nothing outside the file is ever looked up.
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(model));
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        begin(xml);
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("object")) {
        end();
      }
    }
  }

  private void begin(XMLStreamReader xml) {
    switch (xml.getLocalName()) {
      case "model" -> {
        if (!"millimeter".equals(xml.getAttributeValue(null, "unit"))) {
          throw new UnsoundFile("the 3MF model is not in millimetres");
        }
      }
      case "object" -> name = xml.getAttributeValue(null, "name");
      case "vertex" -> {
        for (String axis : List.of("x", "y", "z")) {
          xyz.add((double) Float.parseFloat(xml.getAttributeValue(null, axis)));
        }
      }
      case "triangle" -> {
        for (String corner : List.of("v1", "v2", "v3")) {
          corners.add(Integer.parseInt(xml.getAttributeValue(null, corner)));
        }
      }
      default -> {
        // Other elements carry no shape.
      }
    }
  }

  private void end() {
    objects.add(
        new NamedMesh(
            name,
            triangles(
                xyz.stream().mapToDouble(Double::doubleValue).toArray(),
                corners.stream().mapToInt(Integer::intValue).toArray())));
    xyz.clear();
    corners.clear();
  }

  /**
   * A mesh of points and triangles, every triangle a face of its own.
   *
   * @throws UnsoundFile if a triangle names a point that is not there
   */
  static Mesh triangles(double[] xyz, int[] corners) {
    for (int c : corners) {
      if (c < 0 || c >= xyz.length / 3) {
        throw new UnsoundFile("a triangle names a corner that is not there");
      }
    }
    int count = corners.length / 3;
    int[][][] faces = new int[count][1][];
    int[] faceOf = new int[count];
    for (int t = 0; t < count; t++) {
      faces[t][0] = new int[] {corners[3 * t], corners[3 * t + 1], corners[3 * t + 2]};
      faceOf[t] = t;
    }
    return new Mesh(xyz, faces, corners, faceOf, new int[count], List.of(""));
  }
}
