/**
 * The bench book: a chair as pages for the bench. It is values first ({@link
 * dryfit.export.book.Book}: chapters, sheets, blocks), then ink on paper or a page for a phone.
 */
package dryfit.export.book;
