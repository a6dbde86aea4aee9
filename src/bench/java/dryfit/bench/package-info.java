/** How fast solids, whole chairs and changes to them are, always beside a peer in the same run. */
package dryfit.bench;
