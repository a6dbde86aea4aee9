/**
 * The chair as rigid parts tied together by its joints, for small errors: how an error at one joint
 * moves what is on the other side of it, once round a closed frame to the joint that stays open,
 * and how the parts that are still to be made can take up the errors of those that are.
 *
 * <p>All of it is linear: an error of a millimetre over a length of four hundred turns a part by
 * 0.0025 radians, and what is left out is of the order of that squared times the length, 0.003 mm.
 */
package dryfit.fit.loop;
