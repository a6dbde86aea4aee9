/**
 * Wood as a material: species with the published sources of their figures, weight, and movement
 * with moisture. Knows nothing of parts or chairs.
 */
package dryfit.timber;
