package dryfit.app;

import dryfit.build.Chair;
import dryfit.export.FindingText;
import dryfit.export.SafeFile;
import dryfit.export.UnsoundFile;
import dryfit.export.picture.Figure;
import dryfit.export.picture.Mark;
import dryfit.export.picture.Picture;
import dryfit.export.picture.View;
import dryfit.fit.Finding;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Draws a chair into a PNG file. */
public final class DrawPicture {
  private final View view;
  private final int width;
  private final int height;

  /**
   * @param width pixels, from {@link Picture#SMALLEST} to {@link Picture#LARGEST}
   * @param height pixels, likewise
   */
  public DrawPicture(View view, int width, int height) {
    this.view = view;
    this.width = width;
    this.height = height;
  }

  /** Draws the chair, with what was found ringed and numbered as in the report. */
  public WrittenFiles draw(Chair chair, List<Finding> findings, Path path) {
    Picture picture = new Picture(Figure.of(chair, List.of()), marks(findings));
    byte[] png = picture.png(view, width, height);
    try {
      SafeFile.write(path, png, readBack -> same(png, readBack));
      return new WrittenFiles.Finished<>(path);
    } catch (IOException e) {
      return WrittenFiles.Failed.of(path, e);
    } catch (UnsoundFile e) {
      return WrittenFiles.Failed.of(path, e);
    }
  }

  /** Numbered as the report lists them, where both hands have one number. */
  private static List<Mark> marks(List<Finding> findings) {
    List<Mark> marks = new ArrayList<>();
    int number = 1;
    for (Finding.Severity severity : List.of(Finding.Severity.STOPS, Finding.Severity.LOOK)) {
      List<Finding> of =
          findings.stream().filter(f -> f.waived().isEmpty() && f.severity() == severity).toList();
      for (List<Finding> alike : FindingText.alike(of)) {
        String label = Integer.toString(number++);
        alike.forEach(f -> marks.add(new Mark(f.at(), label)));
      }
    }
    return marks;
  }

  private static void same(byte[] written, byte[] readBack) {
    if (!Arrays.equals(written, readBack)) {
      throw new UnsoundFile("the picture reads back differently");
    }
  }
}
