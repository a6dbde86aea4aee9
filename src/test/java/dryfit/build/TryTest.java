package dryfit.build;

import dryfit.document.Design;
import dryfit.document.Document;
import dryfit.document.DocumentReader;
import dryfit.document.Reading;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class TryTest {
  @Test
  void tries() {
    for (String f : "models/harbour-armchair.json".split(",")) {
      var r = DocumentReader.read(Path.of(f));
      if (r instanceof Reading.Refused<Document> x) {
        x.problems()
            .forEach(p -> System.out.println(p.line() + " " + p.pointer() + " " + p.message()));
        continue;
      }
      var doc = ((Reading.Accepted<Document>) r).value();
      for (String v : new String[] {Design.AS_DRAWN, "deep tenons"}) {
        var d = doc.design(v);
        if (d instanceof Reading.Refused<Design> x) {
          x.problems().forEach(p -> System.out.println(p.message()));
          continue;
        }
        var design = ((Reading.Accepted<Design>) d).value();
        long t0 = System.nanoTime();
        var c = ChairBuilder.build(design, new dryfit.solid.jcsg.JcsgKernel());
        System.out.println("ms " + (System.nanoTime() - t0) / 1e6);
        if (c instanceof Reading.Refused<Chair> x) {
          x.problems()
              .forEach(p -> System.out.println(p.code() + " " + p.pointer() + " " + p.message()));
          break;
        }
        var chair = ((Reading.Accepted<Chair>) c).value();
        for (int k = 0; k < 4; k++) {
          t0 = System.nanoTime();
          var rep = dryfit.fit.DryFit.of(chair);
          System.out.println("fit ms " + (System.nanoTime() - t0) / 1e6);
          if (k > 0) continue;
          for (var j : rep.joints())
            System.out.println(
                j.joint().label()
                    + " cheek "
                    + j.cheek()
                    + " edge "
                    + j.edge()
                    + " bottom "
                    + j.bottom()
                    + " sh "
                    + j.shoulder()
                    + " wall "
                    + j.wall()
                    + j.wallFace()
                    + " lean "
                    + Math.toDegrees(j.lean())
                    + " "
                    + Math.toDegrees(j.leanAlong())
                    + " "
                    + Math.toDegrees(j.leanAcross())
                    + " depth "
                    + j.depthSquare()
                    + " "
                    + j.depthAlong()
                    + " glue "
                    + j.glueLong()
                    + " "
                    + j.glueOther());
          for (var j : rep.findings())
            System.out.println(
                j.severity()
                    + " "
                    + j.check()
                    + " "
                    + j.message()
                    + " m "
                    + j.measured()
                    + " l "
                    + j.limit()
                    + " at "
                    + j.at());
        }
      }
    }
  }
}
