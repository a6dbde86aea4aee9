package dryfit.cli;

import dryfit.export.picture.Picture;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * The size of a picture as it is typed: {@code 1200x900}.
 *
 * @param width pixels
 * @param height pixels
 */
record PictureSize(int width, int height) {
  private static final Pattern TYPED = Pattern.compile("(\\d{1,5})[xX](\\d{1,5})");

  /** Reads it. */
  static final class Reader implements ITypeConverter<PictureSize> {
    @Override
    public PictureSize convert(String text) {
      Matcher typed = TYPED.matcher(text);
      if (typed.matches()) {
        int width = Integer.parseInt(typed.group(1));
        int height = Integer.parseInt(typed.group(2));
        if (Math.min(width, height) >= Picture.SMALLEST
            && Math.max(width, height) <= Picture.LARGEST) {
          return new PictureSize(width, height);
        }
      }
      throw new TypeConversionException(
          "'"
              + text
              + "' is no size such as 1200x900; each side may be "
              + Picture.SMALLEST
              + " to "
              + Picture.LARGEST
              + " pixels");
    }
  }
}
