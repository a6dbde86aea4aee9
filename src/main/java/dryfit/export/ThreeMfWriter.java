package dryfit.export;

import dryfit.geometry.Box;
import dryfit.geometry.Mesh;
import dryfit.geometry.Vec3;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * 3MF: named objects with a unit, in a zip package of three files. Unlike STL it keeps which points
 * are one, so a reader need not guess. Source: 3MF Consortium, "3MF Core Specification", 1.4.0,
 * sections 2 to 4.
 *
 * <p>The files in the package are stored, not packed: packing differs between machines, and the
 * same chair shall give the same bytes.
 */
final class ThreeMfWriter {
  static final String MODEL = "3D/3dmodel.model";
  static final String CORE = "http://schemas.microsoft.com/3dmanufacturing/core/2015/02";

  private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";

  private static final String TYPES =
      XML
          + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">\n"
          + "  <Default Extension=\"rels\""
          + " ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\n"
          + "  <Default Extension=\"model\""
          + " ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>\n"
          + "</Types>\n";

  private static final String RELATIONSHIPS =
      XML
          + "<Relationships"
          + " xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">\n"
          + "  <Relationship Id=\"rel0\" Target=\"/"
          + MODEL
          + "\" Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>\n"
          + "</Relationships>\n";

  private ThreeMfWriter() {}

  /**
   * The package.
   *
   * @param objects closed, each coordinate a float, mm
   */
  static byte[] bytes(List<NamedMesh> objects, String title) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      store(zip, "[Content_Types].xml", TYPES);
      store(zip, "_rels/.rels", RELATIONSHIPS);
      store(zip, MODEL, model(objects, title));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static void store(ZipOutputStream zip, String name, String text) throws IOException {
    byte[] content = text.getBytes(StandardCharsets.UTF_8);
    CRC32 sum = new CRC32();
    sum.update(content);
    ZipEntry entry = new ZipEntry(name);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(content.length);
    entry.setCrc(sum.getValue());
    // The first day that a zip knows; a true one would change the bytes from run to run.
    entry.setTimeLocal(LocalDateTime.of(1980, 1, 1, 0, 0));
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private static String model(List<NamedMesh> objects, String title) {
    StringBuilder xml = new StringBuilder(XML);
    xml.append("<model unit=\"millimeter\" xml:lang=\"en\" xmlns=\"").append(CORE).append("\">\n");
    xml.append("  <metadata name=\"Title\">").append(escaped(title)).append("</metadata>\n");
    xml.append("  <resources>\n");
    for (int i = 0; i < objects.size(); i++) {
      object(xml, i + 1, objects.get(i));
    }
    xml.append("  </resources>\n  <build>\n");
    String shift = shift(objects);
    for (int i = 0; i < objects.size(); i++) {
      xml.append("    <item objectid=\"").append(i + 1).append("\" transform=\"1 0 0 0 1 0 0 0 1");
      xml.append(shift).append("\"/>\n");
    }
    return xml.append("  </build>\n</model>\n").toString();
  }

  /** What is built should have no coordinate below zero; all objects move as one. */
  private static String shift(List<NamedMesh> objects) {
    Vec3 low = objects.stream().map(o -> o.mesh().bounds()).reduce(Box::with).orElseThrow().low();
    return " " + (float) (0 - low.x()) + " " + (float) (0 - low.y()) + " " + (float) (0 - low.z());
  }

  private static void object(StringBuilder xml, int id, NamedMesh object) {
    Mesh mesh = object.mesh();
    xml.append("    <object id=\"").append(id).append("\" type=\"model\" name=\"");
    xml.append(escaped(object.name())).append("\">\n      <mesh>\n        <vertices>\n");
    for (int i = 0; i < mesh.pointCount(); i++) {
      Vec3 p = mesh.point(i);
      xml.append("          <vertex x=\"").append((float) p.x());
      xml.append("\" y=\"").append((float) p.y());
      xml.append("\" z=\"").append((float) p.z()).append("\"/>\n");
    }
    xml.append("        </vertices>\n        <triangles>\n");
    for (int t = 0; t < mesh.triangleCount(); t++) {
      xml.append("          <triangle v1=\"").append(mesh.corner(t, 0));
      xml.append("\" v2=\"").append(mesh.corner(t, 1));
      xml.append("\" v3=\"").append(mesh.corner(t, 2)).append("\"/>\n");
    }
    xml.append("        </triangles>\n      </mesh>\n    </object>\n");
  }

  /** A name as XML has it; what XML cannot hold at all becomes a hyphen. */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(isInXml(c) ? c : '-');
              }
            });
    return out.toString();
  }

  private static boolean isInXml(int c) {
    boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
    return c >= 0x20 && !surrogate && c != 0xFFFE && c != 0xFFFF;
  }
}
