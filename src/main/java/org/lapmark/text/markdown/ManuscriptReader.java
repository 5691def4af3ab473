package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.text.Block;
import org.lapmark.text.Footnote;
import org.lapmark.text.Manuscript;
import org.lapmark.text.Targets;
import org.lapmark.text.TextCode;

/**
 * Parses one text; what its boxes say is parsed in its turn and shares the numbers of its notes.
 */
public final class ManuscriptReader {
  private static final Pattern RULE =
      Pattern.compile("(?:\\*[ ]*+){3,}|(?:-[ ]*+){3,}|(?:_[ ]*+){3,}");
  private static final Pattern MARKER = Pattern.compile("(?:[-+*]|\\d{1,9}[.)])(?= |$)");
  private static final List<String> BLOCK_KINDS = List.of("tip", "warning", "figure", "when");

  private final Targets targets;
  private final Findings findings;
  private final List<Footnote> notes = new ArrayList<>();

  private ManuscriptReader(Targets targets, Findings findings) {
    this.targets = targets;
    this.findings = findings;
  }

  Targets targets() {
    return targets;
  }

  /**
   * Parses a text. What is wrong is reported; the rest is still there.
   *
   * @param source the text
   * @param targets what its cross-references can lead to
   * @param findings where problems go
   * @return the text's parts
   */
  public static Manuscript read(SourceText source, Targets targets, Findings findings) {
    return new ManuscriptReader(targets, findings).read(source);
  }

  private Manuscript read(SourceText source) {
    int length = source.text().length();
    if (length > Manuscript.MAX_LENGTH) {
      findings.add(
          TextCode.TEXT_TOO_LONG,
          source.position(0, 1),
          "length",
          length,
          "limit",
          Manuscript.MAX_LENGTH);
      return new Manuscript(List.of(), List.of());
    }
    List<Block> blocks = blocks(source, 0, false);
    return new Manuscript(blocks, notes);
  }

  private List<Block> blocks(SourceText source, int depth, boolean boxed) {
    PreparedText prepared = PreparedText.of(source, findings);
    int deep = tooDeep(prepared.text().text());
    if (deep >= 0) {
      prepared.reportDepth(prepared.text().position(deep, deep + 1));
      return List.of(new Block.Verbatim(prepared.text().text()));
    }
    return new BlockReader(this, prepared, boxed).blocks(depth);
  }

  /** Takes a number for a footnote whose text follows. */
  int numberNote() {
    notes.add(null);
    return notes.size();
  }

  void add(Footnote note) {
    notes.set(note.number() - 1, note);
  }

  /**
   * Where a line opens too many lists and quotations at once, or -1. The parser's work grows with
   * their number times the number of lines, so this is looked at before it begins.
   */
  private static int tooDeep(String text) {
    for (int start = 0; start < text.length(); ) {
      int end = text.indexOf('\n', start);
      end = end < 0 ? text.length() : end;
      int deep = tooDeepInLine(text.substring(start, end));
      if (deep >= 0) {
        return start + deep;
      }
      start = end + 1;
    }
    return -1;
  }

  private static int tooDeepInLine(String line) {
    int at = 0;
    for (int depth = 0; ; depth++) {
      while (at < line.length() && line.charAt(at) == ' ') {
        at++;
      }
      int length = 0;
      if (at < line.length() && line.charAt(at) == '>') {
        length = 1;
      } else {
        var marker = MARKER.matcher(line).region(at, line.length()).useTransparentBounds(true);
        if (marker.lookingAt() && !RULE.matcher(line).region(at, line.length()).matches()) {
          length = marker.end() - at;
        }
      }
      if (length == 0) {
        return -1;
      }
      if (depth == Manuscript.MAX_DEPTH) {
        return at;
      }
      at += length;
    }
  }

  /** A fenced block by its kind. */
  Optional<Block> fenced(FencedBlock block, SourceText text, int depth, boolean boxed) {
    Position position = text.position(block.start(), block.infoStart());
    String fence = text.text().substring(block.start(), block.infoStart());
    if (!block.closed()) {
      findings.add(TextCode.BLOCK_UNCLOSED, position, "fence", fence);
    } else if (block.tooShort()) {
      findings.add(
          TextCode.BLOCK_FENCE_SHORT, position, "fence", fence.strip().charAt(0) + fence.strip());
    }
    SourceText info = trimmed(text.part(block.infoStart(), block.infoEnd()));
    int end = 0;
    while (end < info.text().length() && !Character.isWhitespace(info.text().charAt(end))) {
      end++;
    }
    String kind = info.text().substring(0, end);
    SourceText rest = trimmed(info.part(end, info.text().length()));
    SourceText content = content(block, text);
    boolean figure = kind.equals("figure");
    Optional<Block.Box.Kind> box = Block.Box.Kind.of(kind);
    if (!figure && box.isEmpty()) {
      Optional<String> nearest = NearestWord.of(kind, BLOCK_KINDS);
      findings.add(
          TextCode.BLOCK_UNKNOWN,
          kind.isEmpty() ? position : info.position(0, end),
          "given",
          kind.isEmpty() ? "no" : "yes",
          "kind",
          kind,
          "nearest",
          nearest.orElse(""),
          "hasNearest",
          nearest.isPresent() ? "yes" : "no",
          "known",
          Known.listed(BLOCK_KINDS));
      return Optional.of(new Block.Verbatim(content.text()));
    }
    if (!rest.text().isEmpty()) {
      findings.add(TextCode.BLOCK_EXTRA_WORDS, rest.position(), "words", rest.text(), "kind", kind);
    }
    if (figure) {
      return Optional.of(new Block.Figure(content, position));
    }
    if (boxed) {
      findings.add(TextCode.BOX_IN_BOX, position, "kind", kind);
      return Optional.of(new Block.Verbatim(content.text()));
    }
    List<Block> inside = blocks(content, depth, true);
    if (inside.isEmpty()) {
      if (isWrittenEmpty(content)) {
        findings.add(TextCode.BLOCK_EMPTY, position, "kind", kind);
      }
      return Optional.empty();
    }
    return Optional.of(new Block.Box(box.get(), inside, position));
  }

  /** Whether nothing was written, and no passage was left out that others have. */
  private static boolean isWrittenEmpty(SourceText content) {
    String file = content.file().content();
    return file.substring(content.offset(0), content.offset(content.text().length())).isBlank();
  }

  private static SourceText content(FencedBlock block, SourceText text) {
    Pieces pieces = new Pieces(text);
    pieces.at(Math.min(block.infoEnd() + 1, text.text().length()));
    for (int[] line : block.lines()) {
      if (line[0] >= 0) {
        pieces.add(line[0], line[1]);
      }
      pieces.lineEnd();
    }
    return pieces.joined();
  }

  private static SourceText trimmed(SourceText text) {
    String all = text.text();
    int from = 0;
    int to = all.length();
    while (from < to && Character.isWhitespace(all.charAt(from))) {
      from++;
    }
    while (to > from && Character.isWhitespace(all.charAt(to - 1))) {
      to--;
    }
    return text.part(from, to);
  }
}
