/**
 * What each tool at the bench is set to, joint by joint and cut by cut, left and right by
 * themselves. Angles come from {@link dryfit.fit.JointAngles}, gaps and depths from the dry fit;
 * lengths between parts are measured on their solids.
 */
package dryfit.shop.setting;
