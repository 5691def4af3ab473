package org.lapmark.source.mark;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Darts;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/** Cloth folded onto itself at an edge. Without a place, one whose line is drawn. */
final class PleatKind extends MarkKind {
  private static final Key<Formula> TAKE_UP = Key.required("take_up", Forms.LENGTH);
  private static final Key<Intake.PleatKind> FOLDED =
      Key.of("kind", Forms.words(KeyCode.MARK_WORD_UNKNOWN, Intake.PleatKind.class))
          .unless("knife");
  private static final Key<SourceText> TOWARDS = Key.of("towards", Forms.CORNER);

  PleatKind() {
    super(
        "pleat",
        "pleats",
        Stage.SHAPE,
        Role.PLEAT,
        Table.of(
                "pleat",
                TAKE_UP,
                MarkKeys.EDGE,
                MarkKeys.AT,
                MarkKeys.LENGTH,
                FOLDED,
                TOWARDS,
                Stated.WHEN)
            .oneOf(Choice.of(way(), way(MarkKeys.EDGE, MarkKeys.AT, MarkKeys.LENGTH))));
  }

  @Override
  void idle(Stated in, Findings findings) {
    Intake.PleatKind kind = in.has(FOLDED) ? in.get(FOLDED) : null;
    if (in.has(TOWARDS) && kind != null && kind != Intake.PleatKind.KNIFE) {
      findings.add(
          MarkCode.MARK_TOWARDS_IDLE,
          in.position(TOWARDS),
          "kind",
          kind.name().toLowerCase(Locale.ROOT));
    }
  }

  @Override
  public Optional<FindingCode> unstated() {
    return Optional.of(MarkCode.PLEAT_UNSTATED);
  }

  @Override
  public List<Mark> stated(MarkSource mark, Panel panel, VariantValues values) {
    MarkPlaces places = new MarkPlaces(mark, panel, values);
    SourceText edge = mark.get(MarkKeys.EDGE);
    Path line = places.edge(MarkKeys.EDGE);
    double at = places.along(MarkKeys.AT, edge, line);
    double takeUp = values.positiveLength(mark.get(TAKE_UP));
    double length = values.positiveLength(mark.get(MarkKeys.LENGTH));
    return List.of(pleat(places, edge.text(), at, takeUp, length));
  }

  /** Those of which something is stated, in that order: a line alone doesn't say what it takes. */
  @Override
  public List<Mark> drawn(
      Collection<DrawnMark> drawn, List<MarkSource> stated, Panel panel, VariantValues values) {
    List<Mark> marks = new ArrayList<>();
    for (MarkSource mark : stated) {
      drawn.stream()
          .filter(one -> one.name().equals(mark.name().text()))
          .forEach(one -> marks.add(drawn(one, Optional.of(mark), panel, values)));
    }
    return marks;
  }

  /** Its place, its direction inwards and its length. */
  @Override
  Mark drawn(DrawnMark drawn, Optional<MarkSource> stated, Panel panel, VariantValues values) {
    MarkSource mark = stated.orElseThrow();
    Point one = drawn.path().start();
    Point other = drawn.path().end();
    Path outline = panel.outline();
    boolean turned = outline.distance(other) < outline.distance(one);
    Mark.Notch foot = Darts.onOutline(panel, mark.name().text(), turned ? other : one);
    return pleat(
        new MarkPlaces(mark, panel, values),
        foot.edge(),
        foot.at(),
        values.positiveLength(mark.get(TAKE_UP)),
        one.distance(other));
  }

  private static Mark pleat(
      MarkPlaces places, String line, double at, double takeUp, double length) {
    MarkSource mark = places.mark();
    SourceText towards = mark.get(TOWARDS);
    return Darts.pleat(
        places.panel(),
        mark.name().text(),
        line,
        at,
        takeUp,
        length,
        mark.has(FOLDED) ? mark.get(FOLDED) : Intake.PleatKind.KNIFE,
        towards == null || places.isAtEnd(towards, line));
  }
}
