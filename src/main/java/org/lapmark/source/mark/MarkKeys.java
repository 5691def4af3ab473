package org.lapmark.source.mark;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;

/** The keys by which several kinds of marks are stated. */
final class MarkKeys {
  static final Key<SourceText> EDGE = Key.of("edge", Forms.LINE);
  static final Key<SourceText> CORNER = Key.of("corner", Forms.CORNER);
  static final Key<Formula> AT = Key.of("at", Forms.PLACE);
  static final Key<Formula> FROM = Key.of("from", Forms.PLACE);
  static final Key<Formula> TO = Key.of("to", Forms.PLACE);
  static final Key<Formula> INSET = Key.of("inset", Forms.LENGTH);
  static final Key<Formula> LENGTH = Key.of("length", Forms.LENGTH);
  static final Key<SourceText> FROM_EDGE = Key.of("from_edge", Forms.LINE);
  static final Key<SourceText> TO_EDGE = Key.of("to_edge", Forms.LINE);

  /** Those that name edges or chains of the panel. */
  static final List<Key<SourceText>> EDGES = List.of(EDGE, FROM_EDGE, TO_EDGE);

  private MarkKeys() {}
}
