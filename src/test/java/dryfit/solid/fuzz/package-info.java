/**
 * Random parts and tools that meet in awkward ways, the laws that must hold for any two solids, and
 * second opinions from code that shares nothing with the kernels.
 */
package dryfit.solid.fuzz;
