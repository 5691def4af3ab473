package org.lapmark.source.drawing;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Position;
import org.lapmark.source.key.Reading;

/** Counts what gets one note for all. */
final class CountedNote {
  private final FindingCode code;
  private Position position;
  private String name;
  private int count;

  CountedNote(FindingCode code) {
    this.code = code;
  }

  void add(Position at, String what) {
    count++;
    position = position == null ? at : position;
    name = name == null ? what : name;
  }

  void report(Reading reading) {
    if (count > 0) {
      reading.findings().add(code, position, "count", count, "name", name, "roles", Role.listed());
    }
  }
}
