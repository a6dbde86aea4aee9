/**
 * What a maker asks for, whichever face it is asked through: open a chair, fit it, write its
 * solids, draw it. Every answer says how the program should end; nothing here prints.
 */
package dryfit.app;
