package dryfit.export;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Holds JSON to one of our published schemas. */
public final class Schemas {
  private Schemas() {}

  /** What is wrong with it; empty if it is valid. */
  public static List<String> problems(String schema, String json) {
    String text = text("/dryfit/" + schema);
    return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
        .getSchema(text, InputFormat.JSON)
        .validate(json, InputFormat.JSON)
        .stream()
        .map(Error::toString)
        .toList();
  }

  private static String text(String resource) {
    try (InputStream in = Schemas.class.getResourceAsStream(resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
