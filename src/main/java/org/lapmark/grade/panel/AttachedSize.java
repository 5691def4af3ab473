package org.lapmark.grade.panel;

/**
 * How much room something takes that is attached, in millimetres.
 *
 * @param width how wide it is where it begins; 0 where nobody says so
 * @param length how far it reaches from there; 0 where nobody says so
 */
public record AttachedSize(double width, double length) {}
