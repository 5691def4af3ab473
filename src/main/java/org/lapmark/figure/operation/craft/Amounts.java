package org.lapmark.figure.operation.craft;

import java.util.List;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Key;

/** The keys of amounts and materials, each of which means the same in all operations. */
public final class Amounts {
  public static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
  public static final Key<SourceText> WITH = Key.of("with", FigureForms.NAME);
  public static final Key<SourceText> BETWEEN = Key.of("between", FigureForms.NAME);
  public static final Key<SourceText> STRIP = Key.of("strip", FigureForms.NAME);
  public static final Key<SourceText> WADDING = Key.of("wadding", FigureForms.NAME);
  public static final Key<Entries<SourceText>> STACK =
      Key.of("stack", FigureForms.each(FigureForms.NAME));
  public static final Key<Formula> ALLOWANCE = Key.of("allowance", FigureForms.LENGTH);
  public static final Key<Formula> FIRST = Key.of("first", FigureForms.LENGTH);
  public static final Key<Formula> SECOND = Key.of("second", FigureForms.LENGTH);
  public static final Key<Formula> TRIMMED = Key.of("trimmed", FigureForms.LENGTH);
  public static final Key<Formula> WIDTH = Key.of("width", FigureForms.LENGTH);
  public static final Key<Formula> DISTANCE = Key.of("distance", FigureForms.LENGTH);
  public static final Key<Formula> DEPTH = Key.of("depth", FigureForms.LENGTH);
  public static final Key<Formula> CORD = Key.of("cord", FigureForms.LENGTH);
  public static final Key<Formula> ELASTIC = Key.of("elastic", FigureForms.LENGTH);
  public static final Key<Formula> SPACING = Key.of("spacing", FigureForms.LENGTH);
  public static final Key<Formula> GAP = Key.of("gap", FigureForms.LENGTH);
  public static final Key<Formula> LENGTH = Key.of("length", FigureForms.LENGTH);
  public static final Key<Formula> HEIGHT = Key.of("height", FigureForms.LENGTH);
  public static final Key<Formula> FULL = Key.of("full", FigureForms.LENGTH);
  public static final Key<Formula> RADIUS = Key.of("radius", FigureForms.LENGTH);
  public static final Key<Formula> DIAMETER = Key.of("diameter", FigureForms.LENGTH);
  public static final Key<Formula> HOLE = Key.of("hole", FigureForms.LENGTH);
  public static final Key<Formula> TAPE = Key.of("tape", FigureForms.LENGTH);
  public static final Key<Integer> TURNS = Key.of("turns", FigureForms.count(2)).unless("1");
  public static final Key<Boolean> DOUBLE = Key.of("double", FigureForms.YES).unless("no");
  public static final Key<Boolean> BOX = Key.of("box", FigureForms.YES).unless("no");
  public static final Key<String> PRESSED =
      Key.of("pressed", FigureForms.words("open", "aside")).unless("open");

  public static final Key<Boolean> PLAN = Key.of("plan", FigureForms.YES).unless("no");

  /** All of them, in the order in which the reference lists them. */
  public static final List<Key<?>> ALL =
      List.of(
          CLOTH, WITH, BETWEEN, STRIP, WADDING, STACK, ALLOWANCE, FIRST, SECOND, TRIMMED, WIDTH,
          DISTANCE, DEPTH, CORD, ELASTIC, SPACING, GAP, LENGTH, HEIGHT, FULL, RADIUS, DIAMETER,
          HOLE, TAPE, TURNS, DOUBLE, BOX, PRESSED, PLAN);

  private Amounts() {}
}
