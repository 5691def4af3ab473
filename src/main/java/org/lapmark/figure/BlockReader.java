package org.lapmark.figure;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads the YAML of a figure's block from the parser's events, so that its depth and size are
 * bounded before anything is built.
 */
final class BlockReader {
  static final int MAX_CHARACTERS = 10_000;
  static final int MAX_DEPTH = 12;
  static final int MAX_VALUES = 1_000;

  private final SourceText source;
  private final int[] unitsByPoint;
  private int values;

  private BlockReader(SourceText source) {
    this.source = source;
    this.unitsByPoint = unitsByPoint(source.text());
  }

  /**
   * Reads a block.
   *
   * @param source what stands between the fences
   * @return its map
   * @throws FindingException when it can't be read
   */
  static Block.Entries read(SourceText source) {
    if (source.text().length() > MAX_CHARACTERS) {
      throw fault(
          source, 0, 1, FigureCode.FIGURE_TOO_LARGE, "limit", MAX_CHARACTERS, "what", "characters");
    }
    BlockReader reader = new BlockReader(source);
    try {
      Block root = reader.parse();
      if (root instanceof Block.Entries entries) {
        return entries;
      }
      throw fault(source, 0, 1, FigureCode.FIGURE_KIND);
    } catch (MarkedYamlEngineException e) {
      int at = e.getProblemMark().map(mark -> reader.unit(Optional.of(mark))).orElse(0);
      String problem = e.getProblem() == null ? "unexpected text" : e.getProblem();
      throw fault(source, at, at + 1, FigureCode.FIGURE_SYNTAX, "problem", problem);
    } catch (YamlEngineException e) {
      throw fault(source, 0, 1, FigureCode.FIGURE_SYNTAX, "problem", "unreadable characters");
    }
  }

  private static FindingException fault(
      SourceText source, int start, int end, FigureCode code, Object... arguments) {
    return new FindingException(Finding.of(code, source.position(start, end), arguments));
  }

  private Block parse() {
    LoadSettings settings = LoadSettings.builder().setUseMarks(true).build();
    Block root = null;
    Deque<Open> open = new ArrayDeque<>();
    for (Event event : new Parse(settings).parseString(source.text())) {
      int start = unit(event.getStartMark());
      Block done = null;
      switch (event.getEventId()) {
        case Alias ->
            throw fault(
                source,
                start,
                start + 1,
                FigureCode.FIGURE_SYNTAX,
                "problem",
                "aliases aren’t read");
        case Scalar -> done = scalar((ScalarEvent) event);
        case SequenceStart, MappingStart -> {
          count(start);
          if (open.size() >= MAX_DEPTH) {
            throw fault(
                source,
                start,
                start + 1,
                FigureCode.FIGURE_TOO_LARGE,
                "limit",
                MAX_DEPTH,
                "what",
                "levels");
          }
          open.push(new Open(event.getEventId() == Event.ID.MappingStart, start));
        }
        case SequenceEnd, MappingEnd -> done = open.pop().close(source);
        default -> {}
      }
      if (done != null) {
        if (open.isEmpty()) {
          root = done;
        } else {
          open.peek().add(done, source);
        }
      }
    }
    return root;
  }

  private void count(int at) {
    if (++values > MAX_VALUES) {
      throw fault(
          source, at, at + 1, FigureCode.FIGURE_TOO_LARGE, "limit", MAX_VALUES, "what", "values");
    }
  }

  /** Where quotes or folding changed the text, its letters all stand where it begins. */
  private Block.Text scalar(ScalarEvent event) {
    int start = unit(event.getStartMark());
    int end = unit(event.getEndMark());
    count(start);
    String value = event.getValue();
    boolean quoted =
        event.getScalarStyle() == ScalarStyle.DOUBLE_QUOTED
            || event.getScalarStyle() == ScalarStyle.SINGLE_QUOTED;
    int from = quoted ? start + 1 : start;
    if (from + value.length() <= source.text().length() && source.text().startsWith(value, from)) {
      SourceText text = source.part(from, from + value.length());
      return new Block.Text(text, source.position(from, Math.max(from + 1, from + value.length())));
    }
    return new Block.Text(
        folded(value, from, end), source.position(start, Math.max(start + 1, end)));
  }

  /** Letters are found one after the other, white space and escapes passed over. */
  private SourceText folded(String value, int from, int end) {
    List<Integer> found = new ArrayList<>();
    int at = from;
    for (int i = 0; i < value.length(); i++) {
      int next = source.text().indexOf(value.charAt(i), at);
      if (next >= 0 && next < end) {
        at = next;
      }
      found.add(at);
      if (next >= 0 && next < end) {
        at++;
      }
    }
    found.add(Math.min(end, source.text().length()));
    int[] offsets = new int[found.size()];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = source.offset(found.get(i));
    }
    return SourceText.mapped(source.file(), value, offsets);
  }

  private int unit(Optional<Mark> mark) {
    int point = mark.map(Mark::getIndex).orElse(0);
    return unitsByPoint[Math.min(point, unitsByPoint.length - 1)];
  }

  private static int[] unitsByPoint(String text) {
    int[] units = new int[text.codePointCount(0, text.length()) + 1];
    for (int i = 0, at = 0; i < units.length - 1; i++) {
      units[i] = at;
      at += Character.charCount(text.codePointAt(at));
    }
    units[units.length - 1] = text.length();
    return units;
  }

  /** A list or map that is still being read. */
  private static final class Open {
    private final boolean map;
    private final int start;
    private final List<Block> items = new ArrayList<>();
    private final List<Block.Entry> entries = new ArrayList<>();
    private Block.Text key;

    Open(boolean map, int start) {
      this.map = map;
      this.start = start;
    }

    void add(Block block, SourceText source) {
      if (!map) {
        items.add(block);
      } else if (key == null) {
        if (!(block instanceof Block.Text text)) {
          throw fault(
              source,
              start,
              start + 1,
              FigureCode.FIGURE_SYNTAX,
              "problem",
              "a key must be a word");
        }
        key = text;
      } else {
        entries.add(new Block.Entry(key, block));
        key = null;
      }
    }

    Block close(SourceText source) {
      return map
          ? new Block.Entries(List.copyOf(entries), source.position(start, start + 1))
          : new Block.Items(List.copyOf(items), source.position(start, start + 1));
    }
  }
}
