package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Intake;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;

/** What marks are stated by; kinds choose among them. */
final class MarkKeys {
  static final Key<SourceText> EDGE = Key.of("edge", Forms.LINE);
  static final Key<SourceText> LINE = Key.of("line", Forms.LINE.shown("name of a line"));
  static final Key<SourceText> CORNER = Key.of("corner", Forms.CORNER);
  static final Key<SourceText> PRESS = Key.of("press", Forms.CORNER);
  static final Key<SourceText> TOWARDS = Key.of("towards", Forms.CORNER);
  static final Key<SourceText> FROM_EDGE = Key.of("from_edge", Forms.LINE);
  static final Key<SourceText> TO_EDGE = Key.of("to_edge", Forms.LINE);

  static final Key<Formula> AT = Key.of("at", Forms.PLACE);
  static final Key<Formula> FROM = Key.of("from", Forms.PLACE);
  static final Key<Formula> TO = Key.of("to", Forms.PLACE);
  static final Key<Formula> INSET = Key.of("inset", Forms.LENGTH);
  static final Key<Formula> WIDTH = Key.of("width", Forms.LENGTH);
  static final Key<Formula> LENGTH = Key.of("length", Forms.LENGTH);
  static final Key<Formula> CUT_LENGTH = Key.required("length", Forms.LENGTH);
  static final Key<Formula> TAKE_UP = Key.required("take_up", Forms.LENGTH);
  static final Key<Formula> COUNT = Key.of("count", Forms.COUNT);
  static final Key<Formula> SPACING = Key.of("spacing", Forms.LENGTH);

  static final Key<Intake.PleatKind> KIND =
      Key.of("kind", Forms.words(KeyCode.MARK_WORD_UNKNOWN, Intake.PleatKind.class))
          .unless("knife");
  static final Key<Boolean> ACROSS = Key.of("across", Forms.TRUTH).unless("no");

  /** Where single marks or rows stand, in the order in which hints list the keys. */
  static final List<Key<?>> ROW = List.of(EDGE, LINE, INSET, AT, COUNT, FROM, TO, SPACING);

  static final List<Key<SourceText>> NAMES =
      List.of(EDGE, LINE, CORNER, PRESS, TOWARDS, FROM_EDGE, TO_EDGE);
  static final List<Key<Formula>> FORMULAS =
      List.of(AT, FROM, TO, INSET, WIDTH, LENGTH, CUT_LENGTH, TAKE_UP, COUNT, SPACING);

  private MarkKeys() {}
}
