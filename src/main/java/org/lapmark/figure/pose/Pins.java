package org.lapmark.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Holders;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * Pins or clips along an edge.
 *
 * @param edge the edge
 * @param every about how far they are apart
 * @param from where they begin, or null
 * @param to where they end, or null
 * @param kind what they are
 * @param text a label, or null
 */
public record Pins(
    SourceText edge,
    Formula every,
    Formula from,
    Formula to,
    Holders.Kind kind,
    TemplateText text) {
  private static final Key<SourceText> EDGE = Key.required("edge", FigureForms.EDGE);
  private static final Key<Formula> EVERY = Key.required("every", FigureForms.LENGTH);
  private static final Key<Formula> FROM = Key.of("from", FigureForms.PLACE);
  private static final Key<Formula> TO = Key.of("to", FigureForms.PLACE);
  private static final Key<Holders.Kind> WITH =
      Key.of("with", FigureForms.constant(Holders.Kind.class)).unless("pins");
  private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
  private static final Table TABLE = Table.of("pins", EDGE, EVERY, FROM, TO, WITH, TEXT);

  /** Stated in a list. */
  public static final Form<Entries<Pins>> LIST = FigureForms.list(TABLE, Pins::read);

  private static final int MOST = 100;

  private static Pins read(Keys keys) {
    return keys.whole(
        new Pins(
            keys.get(EDGE),
            keys.get(EVERY),
            keys.get(FROM),
            keys.get(TO),
            keys.or(WITH, Holders.Kind.PINS),
            keys.get(TEXT)));
  }

  /** As many as fit, evenly, with half a distance at both ends. */
  public Holders stage(Staging staging, Panel panel, Map<String, Double> allowances) {
    Path line = staging.names().path(panel, edge);
    double first = staging.along(from, line.length(), 0);
    double last = staging.along(to, line.length(), line.length());
    if (last < first + 1e-6) {
      throw Faults.of(
          (to == null ? from : to).text().position(),
          FigureCode.FIGURE_STRETCH_BACKWARDS,
          "name",
          "pins",
          "from",
          Staging.hundredth(first),
          "to",
          Staging.hundredth(last),
          "size",
          staging.size());
    }
    double apart = staging.length(every, 1, 1_000);
    int count = (int) Math.max(1, Math.rint((last - first) / apart));
    if (count > MOST) {
      throw Faults.of(
          every.text().position(), FigureCode.FIGURE_TOO_MANY, "limit", MOST, "what", "pins");
    }
    double allowance = allowances.getOrDefault(staging.names().edges(panel, edge).get(0), 0.0);
    List<Holders.Spot> spots = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double at = first + (last - first) * (i + 0.5) / count;
      Point inward = line.tangentAtLength(at).quarterTurn();
      spots.add(new Holders.Spot(line.atLength(at).minus(inward.times(allowance)), inward));
    }
    Optional<String> words = Optional.ofNullable(text).map(staging::text);
    return new Holders(kind, spots, edge.text(), words);
  }
}
