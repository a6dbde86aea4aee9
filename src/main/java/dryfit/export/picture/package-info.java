/**
 * Pictures of a chair, drawn without a display.
 *
 * <ol>
 *   <li>{@link dryfit.export.picture.Camera} says where points come to lie; a {@link
 *       dryfit.export.picture.View} is a plain place to look from.
 *   <li>Every surface is filled into a canvas of samples, the nearest one winning.
 *   <li>Creases and outlines are walked sample by sample, and inked where nothing stands before
 *       them.
 *   <li>The floor's shadow is worked out on a map from above.
 *   <li>Samples become colour (wood, paper, ink) and are averaged to pixels.
 * </ol>
 *
 * <p>Every pixel depends on the chair and the camera alone, so rows may be worked out side by side
 * and the bytes stay the same.
 */
package dryfit.export.picture;
