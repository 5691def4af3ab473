/**
 * How a figure's block is read: the values of each map by key, with a finding for each that is
 * amiss at its place, and nothing of it in any size. Which keys there are is stated by what they
 * belong to, in a {@link org.lapmark.figure.read.KeyTable}.
 */
package org.lapmark.figure.read;
