/** What the bench needs, as data: the order of the cuts, and the angles and lengths of ends. */
package dryfit.shop;
