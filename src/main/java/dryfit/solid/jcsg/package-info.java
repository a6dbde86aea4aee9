/**
 * The kernel that has its booleans done by JCSG, a library of binary space partition trees.
 *
 * <p>JCSG is given only what it can do well, and its answer is not trusted until it closes:
 *
 * <ol>
 *   <li>Leaves become flat convex polygons whose first three corners span the widest triangle,
 *       because JCSG takes a polygon's plane from those three.
 *   <li>Empty and far-apart operands never reach it, and its own short cuts stay switched off: they
 *       give wrong solids for a shape inside another and for shapes apart.
 *   <li>Tools that are apart are handed over as one, because each cut splits all that is there.
 *   <li>It runs on a thread with a deep stack: its trees are as deep as a round part has facets.
 *   <li>After every operation the volume must lie between the bounds its operands set.
 *   <li>Its polygons never close, since a side may end in the middle of another. They are welded,
 *       sides are divided at every corner on them, and all fragments of one plane are merged by
 *       cancelling the sides they share (see {@link dryfit.solid.jcsg.Seams} and {@link
 *       dryfit.solid.jcsg.Merging}).
 * </ol>
 */
package dryfit.solid.jcsg;
