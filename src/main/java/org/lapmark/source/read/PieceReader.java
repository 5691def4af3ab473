package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads the pieces. */
final class PieceReader {
  private static final Key<SourceText> MATERIAL = Key.required("material", Forms.NAME);
  private static final Key<Formula> COUNT = Key.required("count", Forms.COUNT);
  private static final Key<Formula> REVERSED = Key.of("reversed", Forms.COUNT);
  private static final Table CUT_TABLE = Table.of("cut", MATERIAL, COUNT, REVERSED, Stated.WHEN);

  private static final Key<Integer> NUMBER = Key.required("number", Forms.number(1, 9999));
  private static final Key<TemplateText> NAME = Key.required("name", Forms.NAME_TEMPLATE);
  private static final Key<SourceText> PANEL = Key.required("panel", Forms.NAME);
  private static final Key<List<Stated>> CUT =
      Key.required("cut", Forms.list(Forms.map(CUT_TABLE), 1, Integer.MAX_VALUE));
  private static final Key<Formula> ALLOWANCE = Key.of("allowance", Forms.LENGTH).unless("0 mm");
  private static final Key<List<SourceText>> ON_FOLD =
      Key.of("on_fold", Forms.list(Forms.FOLD_END).with("minItems", 2, "maxItems", 2));
  private static final Key<Boolean> PRINTED = Key.of("printed", Forms.TRUTH);
  private static final Table TABLE =
      Table.of("piece", NUMBER, NAME, PANEL, CUT, ALLOWANCE)
          .with(AllowanceReader.KEYS)
          .with(List.of(ON_FOLD, PRINTED, Stated.WHEN));

  /** The pieces of a pattern. */
  static final Key<List<Stated>> PIECES =
      Key.required("pieces", Forms.list(Forms.map(TABLE), 1, Limits::pieces));

  private final Reading reading;

  PieceReader(Reading reading) {
    this.reading = reading;
  }

  List<PieceSource> read(Stated pattern) {
    List<PieceSource> pieces = new ArrayList<>();
    Map<Integer, Position> numbers = new LinkedHashMap<>();
    for (Stated in : pattern.all(PIECES)) {
      PieceSource piece = piece(in, numbers);
      if (piece != null) {
        pieces.add(piece);
      }
    }
    return pieces;
  }

  private PieceSource piece(Stated in, Map<Integer, Position> numbers) {
    Integer number = in.get(NUMBER);
    Position position = in.has(NUMBER) ? in.position(NUMBER) : in.owner();
    Ref ref = Ref.of(Ref.Kind.PIECE, number == null ? "" : Integer.toString(number));
    in.condition(ref);
    if (number != null) {
      Position first = numbers.putIfAbsent(number, position);
      if (first != null) {
        reading
            .findings()
            .add(
                SourceCode.PIECE_NUMBER_DUPLICATE,
                position,
                "number",
                Integer.toString(number),
                "line",
                Integer.toString(first.line()));
      }
    }
    AllowanceReader allowances = new AllowanceReader(reading);
    PieceSource piece =
        new PieceSource(
            number == null ? 0 : number,
            position,
            in.get(NAME),
            in.get(PANEL),
            in.get(ALLOWANCE),
            allowances.edges(ref, in),
            allowances.corners(in),
            cuts(ref, in),
            fold(in),
            in.get(PRINTED) == null
                ? null
                : new PieceSource.Printed(in.get(PRINTED), in.position(PRINTED)));
    return in.isSound(NUMBER, NAME, PANEL) && in.has(CUT) ? piece : null;
  }

  private Optional<PieceSource.FoldSource> fold(Stated in) {
    List<SourceText> ends = in.all(ON_FOLD);
    if (in.node(ON_FOLD) instanceof YamlNode.Items items && items.items().size() != 2) {
      reading.findings().add(SourceCode.FOLD_ENDS, items.position());
    }
    return ends.size() == 2
        ? Optional.of(new PieceSource.FoldSource(ends.get(0), ends.get(1)))
        : Optional.empty();
  }

  private static List<PieceSource.CutSource> cuts(Ref piece, Stated stated) {
    List<PieceSource.CutSource> cuts = new ArrayList<>();
    int nth = 0;
    for (Stated in : stated.all(CUT)) {
      Ref ref = piece.inside(Ref.Kind.CUT, ++nth);
      Formula reversed = in.get(REVERSED);
      if (in.isSound(MATERIAL, COUNT)) {
        in.condition(ref);
        cuts.add(new PieceSource.CutSource(ref, in.get(MATERIAL), in.get(COUNT), reversed));
      }
    }
    return cuts;
  }
}
