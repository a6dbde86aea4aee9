/**
 * Whether a chair can be put together, and in which order. Found backwards: the finished chair is
 * taken apart, each time two groups of parts by one straight move, and what comes apart last is put
 * together first. If neither group ever needs to be taken apart in another way, no choice can lead
 * into a dead end: what is free to leave a set of parts is free to leave any smaller set.
 */
package dryfit.fit.order;
