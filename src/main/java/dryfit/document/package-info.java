/**
 * The chair as its maker wrote it. Text comes in, a {@link dryfit.document.Design} with every
 * number worked out goes up, or every {@link dryfit.document.Problem} of the document at once.
 *
 * <p>How reading goes:
 *
 * <ol>
 *   <li>{@code JsonTree}: text to a tree whose every node knows its JSON pointer and line; nothing
 *       is bound to classes, so nothing is silently filled in or converted.
 *   <li>{@code Variants}: a variant is laid over the tree as a merge patch (RFC 7386); nodes keep
 *       the place they were written at.
 *   <li>{@code Dimensions}: expressions are parsed, put in order, worked out with their units.
 *   <li>{@code DesignReader}: parts, joints and lists, every field through {@code Fields}, which
 *       refuses what it does not know. A fault is noted and reading goes on with a stand-in, since
 *       a document with one problem yields no design anyhow.
 * </ol>
 *
 * <p>This floor knows no geometry: that a joint's parts meet at all is found above.
 */
package dryfit.document;
