/**
 * Full-size templates and the mouths of mortises, as data: what is drawn on a flat face of a part's
 * squared block, in millimetres, seen from outside. Nothing is wrapped round a sawn curve.
 */
package dryfit.shop.template;
