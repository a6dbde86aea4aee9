/**
 * Jigs for the bench as data: what each is, the solid of each piece as it lies on the printer's
 * bed, and where it sits on its part. Made by the same kernel as the chair, and proved on it.
 */
package dryfit.shop.jig;
