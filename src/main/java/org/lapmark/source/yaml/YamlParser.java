package org.lapmark.source.yaml;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.folder.UnseenCharacters;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads YAML into nodes that know their places. The tree is built from the parser's events, so that
 * depth and number of nodes are bounded before anything is composed, duplicate keys can be reported
 * and every scalar stays text.
 */
public final class YamlParser {
  private static final Pattern UNQUOTED =
      Pattern.compile("^[ -]*(?:[\\w.]+[ ]*:[ ]+)?(\\{[^{}:,]*\\}[^{}#]*[^{}#\\s][^#]*?)\\s*$");

  /** A function of stock sizes in square brackets, which end a value between braces. */
  private static final Pattern CALL =
      Pattern.compile("(?<=[:,\\[{] )([a-z_]+\\( *\\[[^\\[\\]\"']*\\][^\\[\\]{}\"']*\\))");

  // The pattern goes back and forth; longer lines are none that a person wrote.
  private static final int LONGEST_LINE = 500;

  private final SourceFile file;
  private final int from;
  private final Limits limits;
  private final Findings findings;
  private final int[] unitsByPoint;
  private int nodes;

  private YamlParser(SourceFile file, int from, String yaml, Limits limits, Findings findings) {
    this.file = file;
    this.from = from;
    this.limits = limits;
    this.findings = findings;
    this.unitsByPoint = unitsByPoint(yaml);
  }

  /**
   * Reads a file's YAML, or a part of a file that is YAML.
   *
   * @param file the file
   * @param from 0-based offset of the YAML's first character
   * @param to offset behind its last character
   * @param limits how much is read
   * @param findings where problems go
   * @return the map at the top, with no entries if the text is empty; null if it can't be read,
   *     which is then reported
   */
  public static YamlNode.Entries read(
      SourceFile file, int from, int to, Limits limits, Findings findings) {
    String yaml = file.content().substring(from, to);
    YamlParser parser = new YamlParser(file, from, yaml, limits, findings);
    YamlNode root;
    try {
      root = parser.parse(yaml);
    } catch (FindingException e) {
      findings.add(e.finding());
      return null;
    } catch (MarkedYamlEngineException e) {
      parser.report(e);
      return null;
    } catch (YamlEngineException e) {
      // Without a mark only characters that YAML forbids are reported, and those were found before.
      findings.add(
          YamlCode.YAML_SYNTAX, file.position(from, from), "problem", "unreadable characters");
      return null;
    }
    if (root == null || root.isNothing()) {
      return new YamlNode.Entries(file, from, from, false, List.of());
    }
    if (root instanceof YamlNode.Entries map) {
      return map;
    }
    findings.add(
        YamlCode.ROOT_NOT_MAP, root.position(), "kind", root.list().isPresent() ? "list" : "text");
    return null;
  }

  private YamlNode parse(String yaml) {
    LoadSettings settings =
        LoadSettings.builder()
            .setUseMarks(true)
            .setCodePointLimit(Integer.MAX_VALUE)
            .setLabel("text")
            .build();
    YamlNode root = null;
    boolean seen = false;
    Deque<Open> open = new ArrayDeque<>();
    for (Event event : new Parse(settings).parseString(yaml)) {
      switch (event.getEventId()) {
        case DocumentStart -> {
          if (seen) {
            throw fault(YamlCode.YAML_SEVERAL_DOCUMENTS, event, 3);
          }
          seen = true;
        }
        case Alias -> throw fault(YamlCode.YAML_ALIAS, event, 0, "name", name((AliasEvent) event));
        case Scalar -> {
          check((NodeEvent) event);
          YamlNode node = scalar((ScalarEvent) event, yaml);
          if (open.isEmpty()) {
            root = node;
          } else {
            open.peek().add(node);
          }
        }
        case SequenceStart, MappingStart -> {
          check((NodeEvent) event);
          if (open.size() >= limits.yamlDepth()) {
            throw fault(YamlCode.YAML_TOO_DEEP, event, 1, "limit", limits.yamlDepth());
          }
          open.push(
              new Open(
                  event.getEventId() == Event.ID.MappingStart,
                  ((CollectionStartEvent) event).isFlow(),
                  unit(event.getStartMark())));
        }
        case SequenceEnd, MappingEnd -> {
          YamlNode node = open.pop().close(event);
          if (open.isEmpty()) {
            root = node;
          } else {
            open.peek().add(node);
          }
        }
        default -> {}
      }
    }
    return root;
  }

  private static String name(AliasEvent event) {
    return event.getAlias().getValue();
  }

  private void check(NodeEvent event) {
    if (++nodes > limits.yamlNodes()) {
      throw fault(YamlCode.YAML_TOO_LARGE, event, 1, "limit", limits.yamlNodes());
    }
    event
        .getAnchor()
        .ifPresent(
            anchor ->
                findings.add(
                    fault(
                            YamlCode.YAML_ALIAS,
                            event,
                            anchor.getValue().length() + 1,
                            "name",
                            anchor.getValue())
                        .finding()));
    Optional<String> tag =
        event instanceof ScalarEvent scalar
            ? scalar.getTag()
            : ((CollectionStartEvent) event).getTag();
    if (tag.isPresent()) {
      int start = unit(event.getStartMark());
      int end = start;
      while (end < file.content().length() && file.content().charAt(end) > ' ') {
        end++;
      }
      findings.add(YamlCode.YAML_TAG, file.position(start, end));
    }
  }

  private YamlNode scalar(ScalarEvent event, String yaml) {
    int start = unit(event.getStartMark());
    int end = unit(event.getEndMark());
    boolean decorated = event.getAnchor().isPresent() || event.getTag().isPresent();
    int[] places = decorated ? null : ScalarPlaces.find(event, yaml, start - from, end - from);
    String value = event.getValue();
    int[] offsets = new int[value.length() + 1];
    for (int i = 0; i < offsets.length; i++) {
      offsets[i] = places == null ? start : places[i] + from;
    }
    SourceText text = SourceText.mapped(file, value, offsets);
    UnseenCharacters.checkEscapes(text, start, end, findings);
    return new YamlNode.Text(start, end, text, event.isPlain());
  }

  private void report(MarkedYamlEngineException e) {
    int at = e.getProblemMark().map(mark -> unit(Optional.of(mark))).orElse(from);
    // A problem at a line's end or behind it is shown at the last character there is.
    Position position = file.position(at, at + 1);
    String line = position.lineText();
    Matcher unquoted = UNQUOTED.matcher(line.length() > LONGEST_LINE ? "" : line);
    if (unquoted.matches()) {
      int lineStart = file.offset(position.line() - 1, 0);
      findings.add(
          YamlCode.PLACEHOLDER_UNQUOTED,
          file.position(lineStart + unquoted.start(1), lineStart + unquoted.end(1)),
          "text",
          unquoted.group(1));
      return;
    }
    Matcher call = CALL.matcher(line.length() > LONGEST_LINE ? "" : line);
    while (call.find()) {
      int bracket = position.column() - 1;
      if (call.start() < bracket && bracket < call.end() && line.indexOf('[', call.start()) > 0) {
        int lineStart = file.offset(position.line() - 1, 0);
        BracketedCommas.report(
            SourceText.verbatim(file, lineStart + call.start(1), lineStart + call.end(1)),
            "",
            findings);
        return;
      }
    }
    String problem = e.getProblem() == null ? "unexpected text" : e.getProblem();
    findings.add(YamlCode.YAML_SYNTAX, position, "problem", problem);
  }

  private FindingException fault(
      FindingCode code, Event event, int length, Object... namesAndValues) {
    int start = unit(event.getStartMark());
    int end = length == 0 ? unit(event.getEndMark()) : start + length;
    return new FindingException(Finding.of(code, file.position(start, end), namesAndValues));
  }

  private int unit(Optional<Mark> mark) {
    int point = mark.orElseThrow().getIndex();
    return from
        + (unitsByPoint == null ? point : unitsByPoint[Math.min(point, unitsByPoint.length - 1)]);
  }

  private static int[] unitsByPoint(String yaml) {
    int points = yaml.codePointCount(0, yaml.length());
    if (points == yaml.length()) {
      return null;
    }
    int[] units = new int[points + 1];
    for (int i = 0, at = 0; i < points; i++) {
      units[i] = at;
      at += Character.charCount(yaml.codePointAt(at));
    }
    units[points] = yaml.length();
    return units;
  }

  /** A list or map that is still being read. */
  private final class Open {
    private final boolean map;
    private final boolean flow;
    private final int start;
    private final List<YamlNode> items = new ArrayList<>();
    private final List<YamlNode.Entry> entries = new ArrayList<>();
    private YamlNode key;

    Open(boolean map, boolean flow, int start) {
      this.map = map;
      this.flow = flow;
      this.start = start;
    }

    void add(YamlNode node) {
      if (!map) {
        items.add(node);
      } else if (key == null) {
        key = node;
      } else {
        if (key instanceof YamlNode.Text text) {
          entries.add(new YamlNode.Entry(text, node));
        } else {
          findings.add(YamlCode.KEY_NOT_TEXT, key.position());
        }
        key = null;
      }
    }

    YamlNode close(Event event) {
      int end = Math.max(start, unit(event.getEndMark()));
      return map
          ? new YamlNode.Entries(
              file,
              start,
              end,
              flow,
              flow ? BracketedCommas.mendedEntries(entries, findings) : entries)
          : new YamlNode.Items(
              file, start, end, flow ? BracketedCommas.mendedItems(items, findings) : items);
    }
  }
}
