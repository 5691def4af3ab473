/**
 * What moments of an operation look like from above: sheets of cloth, sewing, cuts, arrows and
 * dimensions as plain numbers in millimetres of cloth.
 */
package org.lapmark.figure.operation.plan;
