package dryfit.export;

import dryfit.build.Part;
import dryfit.geometry.MassProperties;
import dryfit.timber.Species;

/**
 * What a part holds and weighs, by the average density of its timber at 12 percent moisture.
 *
 * @param volume cubic millimetres
 * @param mass kilograms; NaN if the timber is not in the table
 */
record Weights(double volume, double mass) {
  private static final double CUBIC_METRE = 1e9; // mm^3

  static Weights of(Part part) {
    double volume = MassProperties.of(part.solid().mesh()).volume();
    double density =
        Species.named(part.plan().common().timber()).map(Species::density12).orElse(Double.NaN);
    return new Weights(volume, volume / CUBIC_METRE * density);
  }
}
