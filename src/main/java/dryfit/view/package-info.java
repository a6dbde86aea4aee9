/**
 * The window: the chair turned in the maker's hands, its dimensions on rules, its findings as
 * tickets, its joints drawn true.
 *
 * <p>{@code Session} holds the document and has everything built and fitted on a thread of its own;
 * what comes of it is a {@code Shown}, and the window's parts only draw that. {@code Orbit} is
 * where the maker stands. {@code Drawing} draws the chair from there: {@code SceneDrawing} in 3D,
 * {@code PaperDrawing} by the renderer of pictures where the machine has no 3D.
 */
package dryfit.view;
