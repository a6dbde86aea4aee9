package dryfit.app;

import dryfit.build.Chair;
import dryfit.fit.DryFit;
import dryfit.fit.FitReport;

/** The dry fit of a chair, and how a command that asked for it ends. */
public record FitChair(FitReport report) {

  /** Fits the chair together. */
  public static FitChair of(Chair chair) {
    return new FitChair(DryFit.of(chair));
  }

  public Exit exit() {
    return report.fits() ? Exit.FITS : Exit.DOES_NOT_FIT;
  }
}
