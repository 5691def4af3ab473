package org.lapmark.bench;

import java.io.IOException;
import java.util.List;

/** A part of the table that can be measured alone. */
interface Row {
  /** What it is chosen by. */
  String name();

  /** Measures. */
  List<Measured> measure() throws IOException;
}
