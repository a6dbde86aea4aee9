package dryfit.build;

import dryfit.document.*;
import dryfit.solid.*;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class TryTest {
  @Test
  void tries() {
    for (String f : System.getProperty("try.file", "models/harbour-armchair.json").split(",")) {
      var r = DocumentReader.read(Path.of(f));
      if (r instanceof Reading.Refused<Document> x) {
        x.problems()
            .forEach(p -> System.out.println(p.line() + " " + p.pointer() + " " + p.message()));
        continue;
      }
      var doc = ((Reading.Accepted<Document>) r).value();
      var d = doc.design(Design.AS_DRAWN);
      if (d instanceof Reading.Refused<Design> x) {
        x.problems().forEach(p -> System.out.println(p.message()));
        continue;
      }
      var design = ((Reading.Accepted<Design>) d).value();
      for (int k = 0; k < 3; k++) {
        long t0 = System.nanoTime();
        var c = ChairBuilder.build(design, new dryfit.solid.jcsg.JcsgKernel());
        System.out.println("ms " + (System.nanoTime() - t0) / 1e6);
        if (c instanceof Reading.Refused<Chair> x) {
          x.problems()
              .forEach(p -> System.out.println(p.code() + " " + p.pointer() + " " + p.message()));
          break;
        }
        if (k > 0) continue;
        var chair = ((Reading.Accepted<Chair>) c).value();
        for (Part p : chair.parts()) {
          System.out.printf(
              "%-20s %d tris %d cells  V %.3f / %.3f blank %s at %s%n",
              p.label(),
              p.solid().mesh().triangleCount(),
              p.solid().cells().size(),
              dryfit.geometry.MassProperties.of(p.solid().mesh()).volume(),
              Cells.volume(p.solid().cells()),
              p.blank(),
              p.placedMesh().bounds());
        }
        for (Joint j : chair.joints())
          System.out.printf(
              "%-30s lean %.3f len %.2f at %s entry %s%n",
              j.label(), Math.toDegrees(j.lean()), j.length(), j.at(), j.entry());
      }
    }
  }
}
