package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.wording.Wording;

/** Finished measurements, and a picture that shows them. */
final class FinishedSection implements Section {
  /** The rows, and the finished article with its measurements. */
  record Values(List<Row> finished, Optional<Pictures.Picture> finishedFigure) {}

  /** A row of the finished measurements. */
  record Row(List<Object> label, List<Object> value) {}

  /** The rows with a value a size. */
  record BySize(List<Measured> finished) {}

  /** A row of the finished measurements. */
  record Measured(List<Object> label, List<List<Object>> values) {}

  @Override
  public String id() {
    return "finished";
  }

  @Override
  public boolean isIn(Content content) {
    return !content.source().finished().isEmpty();
  }

  @Override
  public Record values(Setting setting) {
    return new Values(
        rows(setting.manual().pattern(), setting.wording()),
        setting.manual().finished().map(figure -> setting.pictures().add("finished", figure, "")));
  }

  @Override
  public Record bySize(Sizes sizes) {
    List<List<Row>> bySize = sizes.each(manual -> rows(manual.pattern(), sizes.wording()));
    List<Measured> rows = new ArrayList<>();
    for (int i = 0; i < bySize.get(0).size(); i++) {
      int at = i;
      rows.add(
          new Measured(
              sizes.words().runs(Sizes.each(bySize, all -> all.get(at).label())),
              Sizes.each(bySize, all -> all.get(at).value())));
    }
    return new BySize(rows);
  }

  static List<Row> rows(EvaluatedPattern pattern, Wording wording) {
    return pattern.source().finished().stream()
        .map(
            row ->
                new Row(
                    Setting.printed(row.label(), pattern, wording),
                    Setting.printed(row.value(), pattern, wording)))
        .toList();
  }
}
