/** The commands in a terminal. What they say goes to the streams they are given. */
package dryfit.cli;
