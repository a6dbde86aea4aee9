package dryfit.app;

import dryfit.export.TextStyle;
import dryfit.export.book.Book;
import dryfit.export.book.BookMaker;
import dryfit.export.book.BookPages;
import dryfit.export.paper.Page;
import dryfit.export.paper.PdfFile;
import dryfit.fit.FitReport;
import dryfit.fit.order.Assembling;
import java.nio.file.Path;

/** Makes the bench book of a chair and writes it. */
public final class MakeBook {
  private final TextStyle style;
  private final Page.Paper paper;

  /**
   * @param style of all numbers
   * @param paper of the PDF; drawings are made to fit it in both forms
   */
  public MakeBook(TextStyle style, Page.Paper paper) {
    this.style = style;
    this.paper = paper;
  }

  /** What the book says; it is made whether the chair fits or not, and says so. */
  public Book book(FitReport report) {
    return BookMaker.of(report, Assembling.of(report.chair()), style, paper);
  }

  /** The book for a printer. */
  public WrittenFiles pdf(Book book, Path path) {
    return WrittenFiles.of(path, PdfFile.bytes(BookPages.of(book, paper), book.title()));
  }
}
