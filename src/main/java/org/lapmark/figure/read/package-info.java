/**
 * How a figure's block is read: the values of each map by key, with a finding for each that is
 * amiss at its place, and nothing of it in any size. Keys stand in tables as those of the source
 * do; {@link org.lapmark.figure.read.FigureForms} has their forms, which speak of figures.
 */
package org.lapmark.figure.read;
