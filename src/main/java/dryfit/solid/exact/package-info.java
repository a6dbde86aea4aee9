/**
 * The kernel that computes without rounding.
 *
 * <p>It looks at one plane at a time. In the plane of a face, every other shape shows as a section:
 * a pattern of loops. The sections of all shapes divide the face into cells, and within a cell it
 * is known which shapes hold the wood just in front of the plane and just behind it. The
 * expression, evaluated on both sides, says whether the cell is surface. So any number of shapes is
 * combined in one pass, and faces that coincide, edges that touch and corners that meet are no
 * special cases.
 *
 * <ol>
 *   <li>The corners of all shapes go to a grid of 2^-14 mm ({@link dryfit.solid.exact.Grid}), or a
 *       coarser one if they reach beyond 2048 mm; from there on every decision is exact. Faces that
 *       stay flat stay whole, others go on as their triangles; faces of one plane that share an
 *       edge become one {@link dryfit.solid.exact.Facet}.
 *   <li>Planes are kept in a table under ids ({@link dryfit.solid.exact.Planes}), points too
 *       ({@link dryfit.solid.exact.Points}). A point off the grid is where an edge passes through a
 *       plane, or where three planes meet. Its side towards a plane is read off rounded coordinates
 *       where these leave no doubt, then from exact sides of the ends of its edge, and only then
 *       from integers of any length ({@link dryfit.solid.exact.Meeting}).
 *   <li>Facets of different shapes whose boxes meet are neighbours ({@link
 *       dryfit.solid.exact.Neighbours}). Facets without neighbours are kept or dropped whole, one
 *       answer for all that hang together ({@link dryfit.solid.exact.Untouched}).
 *   <li>The neighbours of the others are cut with their plane ({@link
 *       dryfit.solid.exact.Sections}): once with corners on the plane counted as behind it, which
 *       gives the section just in front, and once the other way round. Both consist of closed loops
 *       whatever touches.
 *   <li>The segments are divided where they meet ({@link dryfit.solid.exact.Splits}) and make a
 *       planar graph ({@link dryfit.solid.exact.Arrangement}); {@link dryfit.solid.exact.Nesting}
 *       joins its cycles to cells.
 *   <li>{@link dryfit.solid.exact.PlaneWork} counts, for each cell and each shape, how often the
 *       shape covers it in front and behind: from outside along one line ({@link
 *       dryfit.solid.exact.Rays}), then from cell to cell over the segments between them. Nothing
 *       is put to the vote.
 *   <li>{@link dryfit.solid.exact.FaceTracer} walks round what is kept. Cells of one plane that
 *       share an edge are one face; where something only touches a face along an edge, the face is
 *       divided there.
 *   <li>{@link dryfit.solid.exact.Seams} makes neighbouring faces name the same points along the
 *       line they share, so that no corner stands in the middle of another face's edge.
 *   <li>{@link dryfit.solid.exact.Umbrellas} tells apart what only touches: each wedge of wood at
 *       an edge, and each fan of faces at a point, gets vertices of its own.
 *   <li>{@link dryfit.solid.exact.Filling} fills the faces with triangles over the rounded points.
 *       Since edges match by number, the mesh is closed whatever rounding does; {@link
 *       dryfit.solid.exact.FloatShape} asks whether 32-bit floats would flatten a triangle, and
 *       only then is the mesh taken to floats here already.
 * </ol>
 *
 * <p>If the surface does not close, a shape overlapped itself, as thin triangles may once they are
 * on the grid. Then everything is done again with the shapes' own facets among the neighbours,
 * which gives the region that each covers at least once.
 *
 * <p>Ideas came from: Zhou, Grinspun, Zorin and Jacobson, <i>Mesh Arrangements for Solid
 * Geometry</i>, ACM Transactions on Graphics 35(4), 2016 (any number of solids at once, cells known
 * by how often each solid winds round them); Bernstein and Fussell, <i>Fast, Exact, Linear
 * Booleans</i>, Computer Graphics Forum 28(5), 2009 (points as meetings of planes, few predicates);
 * Trettner, Nehring-Wirxel and Kobbelt, <i>EMBER: Exact Mesh Booleans via Efficient and Robust
 * Local Arrangements</i>, ACM Transactions on Graphics 41(4), 2022 (integer corners, work local to
 * a face). The sections just in front of a plane and just behind it are our own. Cited from memory.
 */
package dryfit.solid.exact;
