package dryfit.export.book;

import dryfit.app.KernelChoice;
import dryfit.app.OpenChair;
import dryfit.build.Chair;
import dryfit.document.Design;
import dryfit.export.TextStyle;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;
import dryfit.fit.order.Assembling;
import java.nio.file.Path;

/** A shipped chair with its fit and its order of assembly. */
record Chairs(FitReport report, Assembling order, TextStyle style) {

  static Chairs of(String model) {
    OpenChair.Opened opened =
        OpenChair.open(
            Path.of("models", model + ".json"), Design.AS_DRAWN, KernelChoice.USUAL.kernel());
    Chair chair = ((OpenChair.Ready) opened).chair();
    return new Chairs(DryFit.of(chair), Assembling.of(chair), TextStyle.of(chair.design().unit()));
  }

  Chair chair() {
    return report.chair();
  }
}
