package dryfit.cli;

import dryfit.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The units of length by their symbols. */
final class Units extends Words<Length.Unit> {
  Units() {
    super(List.of(Length.Unit.MM.symbol(), Length.Unit.IN.symbol()), Units::named);
  }

  static Optional<Length.Unit> named(String symbol) {
    return Arrays.stream(Length.Unit.values()).filter(u -> u.symbol().equals(symbol)).findFirst();
  }
}
