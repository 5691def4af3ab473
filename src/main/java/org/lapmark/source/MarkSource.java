package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Intake;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;

/**
 * A mark, or a row of marks, as stated for a panel.
 *
 * @param kind what it is
 * @param name its name, which drawn marks of the same kind may have
 * @param formulas what is stated by formulas, by key
 * @param names edges, corners and drawn lines, by key
 * @param pleat how a pleat is folded
 * @param across whether buttonholes stand square to their line
 */
public record MarkSource(
    MarkKind kind,
    SourceText name,
    Map<String, Formula> formulas,
    Map<String, SourceText> names,
    Intake.PleatKind pleat,
    boolean across) {
  /** Its identity on a panel. */
  public Ref ref(Ref panel) {
    return ref(kind, name, panel);
  }

  private static Ref ref(MarkKind kind, SourceText name, Ref panel) {
    return panel.inside(Ref.Kind.MARK, kind.word() + "." + name.text());
  }

  private static final List<Key<SourceText>> PLACING =
      List.of(MarkKeys.EDGE, MarkKeys.LINE, MarkKeys.CORNER, MarkKeys.FROM_EDGE);

  /** Copies the maps, keeping their order. */
  public MarkSource {
    formulas = Collections.unmodifiableMap(new LinkedHashMap<>(formulas));
    names = Collections.unmodifiableMap(new LinkedHashMap<>(names));
  }

  /**
   * Reads a mark.
   *
   * @return the mark, or null if it is misstated, which is then reported
   */
  public static MarkSource read(
      MarkKind kind, SourceText name, Ref panel, Stated in, Reading reading) {
    in.condition(ref(kind, name, panel));
    boolean whole = in.isComplete();
    if (!kind.places().isMet(in.names())) {
      reading
          .findings()
          .add(
              SourceCode.MARK_STATEMENT,
              name.position(),
              "name",
              name.text(),
              "kind",
              kind.word(),
              "ways",
              kind.places().shown());
      whole = false;
    }
    for (Key<?> key : in.keys()) {
      whole &= key == Stated.WHEN || in.get(key) != null;
    }
    boolean pleated = in.table().keys().contains(MarkKeys.KIND);
    return whole
        ? new MarkSource(
            kind,
            name,
            in.each(MarkKeys.FORMULAS),
            in.each(MarkKeys.NAMES),
            pleated ? in.or(MarkKeys.KIND, Intake.PleatKind.KNIFE) : Intake.PleatKind.KNIFE,
            in.table().keys().contains(MarkKeys.ACROSS) && in.isTrue(MarkKeys.ACROSS))
        : null;
  }

  /**
   * Whether it says more of a mark that is drawn.
   *
   * @return true when no place is stated
   */
  public boolean isDrawn() {
    return PLACING.stream().noneMatch(key -> names.containsKey(key.name()));
  }
}
