package dryfit.cli;

import dryfit.measure.Length;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The units that lengths are printed in, by their words. */
final class Units implements ITypeConverter<Length.Unit> {
  @Override
  public Length.Unit convert(String word) {
    return switch (word) {
      case "in" -> Length.Unit.IN;
      case "mm" -> Length.Unit.MM;
      default -> throw new TypeConversionException("'" + word + "' is neither in nor mm");
    };
  }
}
