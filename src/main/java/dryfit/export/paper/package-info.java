/**
 * Drawings to scale: ink on pages measured in millimetres, written as PDF and as SVG. The origin of
 * a page is its lower left corner, x to the right, y up. Only this package knows the PDF library.
 */
package dryfit.export.paper;
