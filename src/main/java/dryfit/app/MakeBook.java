package dryfit.app;

import dryfit.export.TextStyle;
import dryfit.export.book.Book;
import dryfit.export.book.BookHtml;
import dryfit.export.book.BookMaker;
import dryfit.export.book.BookPages;
import dryfit.export.paper.Page;
import dryfit.export.paper.PdfFile;
import dryfit.fit.FitReport;
import dryfit.fit.order.Assembling;
import java.nio.file.Path;
import java.util.Locale;

/** Makes the bench book of a chair and writes it. */
public final class MakeBook {
  private final TextStyle style;
  private final Page.Paper paper;

  /**
   * @param style of all numbers
   * @param paper of the PDF
   */
  public MakeBook(TextStyle style, Page.Paper paper) {
    this.style = style;
    this.paper = paper;
  }

  /** The form of a book. */
  public enum Format {
    PDF,
    HTML;

    /** How it is asked for, and the ending of its file. */
    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Writes the book. It is made whether the chair fits or not, and says so.
   *
   * @param ordered is run when the order of assembly is known, and drawing begins
   */
  public WrittenFiles write(FitReport report, Format format, Path path, Runnable ordered) {
    Assembling order = Assembling.of(report.chair());
    ordered.run();
    return WrittenFiles.of(path, format == Format.PDF ? pdf(report, order) : html(report, order));
  }

  private byte[] pdf(FitReport report, Assembling order) {
    Book book = BookMaker.of(report, order, style, paper);
    return PdfFile.bytes(BookPages.of(book, paper), book.title());
  }

  private byte[] html(FitReport report, Assembling order) {
    return BookHtml.bytes(BookMaker.forPhone(report, order, style), report.chair());
  }
}
