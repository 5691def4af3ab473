package org.lapmark.document.manual;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.lapmark.finding.Position;
import org.lapmark.grade.piece.RuledMark;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.measure.Value;
import org.lapmark.measure.Variant;
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.PrintedValue;
import org.lapmark.panel.NotchSet;
import org.lapmark.wording.Wording;

/**
 * Says in words where to mark a rectangle that has no paper: a line a mark, each a run of text and
 * printed values. Every place is measured from the same corner, so that no error adds up.
 */
public final class RuledMarks implements RuledMark.Reader<String> {
  /** A value stands between these in a message until the message is made. */
  private static final char OPEN = '\uE000';

  private static final char CLOSE = '\uE001';

  private final Wording wording;
  private final PrintForm form;
  private final Variant variant;
  private final Position position;
  private final List<PrintedValue> values = new ArrayList<>();

  /**
   * Prepares the words of one piece in one variant.
   *
   * @param form how lengths are printed
   * @param position where the piece is stated
   */
  public RuledMarks(Wording wording, PrintForm form, Variant variant, Position position) {
    this.wording = wording;
    this.form = form;
    this.variant = variant;
    this.position = position;
  }

  /** A line for each edge with notches, each line and each set of points. */
  public List<List<Object>> lines(StatedSize size) {
    List<List<Object>> lines = new ArrayList<>();
    for (RuledMark mark : size.marks()) {
      values.clear();
      lines.add(runs(mark.read(this)));
    }
    return lines;
  }

  @Override
  public String notches(RuledMark.Notches notches) {
    return wording.text(
        "ruled.edge",
        Map.of("edge", notches.side().name(), "notches", list(words(notches.notches()))));
  }

  @Override
  public String parallel(RuledMark.Parallel line) {
    Map<String, Object> arguments = line(line.called());
    arguments.put("direction", line.across() ? "across" : "down");
    arguments.put("at", value(line.at()));
    arguments.put("whole", line.whole() ? "yes" : "no");
    arguments.put("from", line.whole() ? "" : value(line.from()));
    arguments.put("to", line.whole() ? "" : value(line.to()));
    return wording.text("ruled.parallel", arguments);
  }

  @Override
  public String through(RuledMark.Through line) {
    Map<String, Object> arguments = line(line.called());
    arguments.put("spots", list(line.through().stream().map(this::spot).toList()));
    return wording.text("ruled.through", arguments);
  }

  @Override
  public String points(RuledMark.Points points) {
    return wording.text(
        "ruled.points",
        Map.of(
            "count",
            points.spots().size(),
            "name",
            name(points.name()),
            "spots",
            list(points.spots().stream().map(this::spot).toList())));
  }

  private static Map<String, Object> line(RuledMark.Called called) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("use", called.kind().toUpperCase(Locale.ROOT));
    arguments.put("name", name(called.name()));
    return arguments;
  }

  private static String name(String name) {
    return name.replace('_', ' ');
  }

  /**
   * Single ones together, then double ones and so on, then sets with gaps of their own; of each
   * those that are slit before those that are cut out.
   */
  private List<String> words(List<RuledMark.Notch> notches) {
    List<String> words = new ArrayList<>();
    for (NotchSet.Cut cut : NotchSet.Cut.values()) {
      words.addAll(words(cut, notches.stream().filter(notch -> notch.set().cut() == cut).toList()));
    }
    return words;
  }

  private List<String> words(NotchSet.Cut cut, List<RuledMark.Notch> notches) {
    boolean wedge = cut == NotchSet.Cut.WEDGE;
    Map<Integer, List<String>> usual = new TreeMap<>();
    List<String> sets = new ArrayList<>();
    for (RuledMark.Notch notch : notches) {
      NotchSet set = notch.set();
      if (set.agrees(NotchSet.of(set.count()))) {
        usual.computeIfAbsent(set.count(), count -> new ArrayList<>()).add(value(notch.at()));
      } else {
        List<String> places =
            set.offsets().stream().map(offset -> value(notch.at() + offset)).toList();
        int wedges = wedge ? set.count() : 0;
        sets.add(
            wording.text(
                "ruled.set",
                Map.of("count", set.count(), "wedges", wedges, "places", and(places))));
      }
    }
    List<String> words = new ArrayList<>();
    usual.forEach(
        (count, places) ->
            words.add(
                wording.text(
                    "ruled.notch",
                    Map.of(
                        "count",
                        count,
                        "number",
                        places.size(),
                        "wedges",
                        wedge ? count * places.size() : 0,
                        "places",
                        and(places)))));
    words.addAll(sets);
    return words;
  }

  private String spot(RuledMark.Spot spot) {
    return wording.text(
        "ruled.spot", Map.of("across", value(spot.across()), "down", value(spot.down())));
  }

  private String list(List<String> parts) {
    return String.join(wording.text("ruled.between"), parts);
  }

  private String and(List<String> places) {
    return String.join(wording.text("list.between"), places);
  }

  private String value(double millimetres) {
    Value.Quantity length = Value.Quantity.length(millimetres);
    values.add(new PrintedValue("ruled_mark", variant, length, form.print(length), position));
    return "" + OPEN + (values.size() - 1) + CLOSE;
  }

  /** The message with its values in their places. */
  private List<Object> runs(String text) {
    List<Object> runs = new ArrayList<>();
    int at = 0;
    for (int open = text.indexOf(OPEN); open >= 0; open = text.indexOf(OPEN, at)) {
      int close = text.indexOf(CLOSE, open);
      if (open > at) {
        runs.add(text.substring(at, open));
      }
      runs.add(values.get(Integer.parseInt(text.substring(open + 1, close))));
      at = close + 1;
    }
    if (at < text.length()) {
      runs.add(text.substring(at));
    }
    return runs;
  }
}
