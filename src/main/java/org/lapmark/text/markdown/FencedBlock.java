package org.lapmark.text.markdown;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.commonmark.node.CustomBlock;
import org.commonmark.parser.SourceLine;
import org.commonmark.parser.block.AbstractBlockParser;
import org.commonmark.parser.block.AbstractBlockParserFactory;
import org.commonmark.parser.block.BlockContinue;
import org.commonmark.parser.block.BlockStart;
import org.commonmark.parser.block.MatchedBlockParser;
import org.commonmark.parser.block.ParserState;
import org.lapmark.text.Block;

/**
 * A fenced block as CommonMark has it, that knows where each of its lines stands. Offsets count
 * from the parsed text's beginning.
 */
final class FencedBlock extends CustomBlock {
  private static final int CODE_INDENT = 4;
  private static final int FENCE = 3;

  private final List<int[]> lines = new ArrayList<>();
  private final int start;
  private int infoStart;
  private int infoEnd;
  private boolean closed;
  private boolean tooShort;

  private FencedBlock(int start) {
    this.start = start;
  }

  /** Where its opening fence begins. */
  int start() {
    return start;
  }

  int infoStart() {
    return infoStart;
  }

  int infoEnd() {
    return infoEnd;
  }

  /** Whether a closing fence was found. */
  boolean closed() {
    return closed;
  }

  /** Whether something inside has a fence as long as its own. */
  boolean tooShort() {
    return tooShort;
  }

  /** Start and end of each line between the fences; both are -1 for an empty line. */
  List<int[]> lines() {
    return lines;
  }

  /** Begins blocks at fences. */
  static final class Factory extends AbstractBlockParserFactory {
    @Override
    public BlockStart tryStart(ParserState state, MatchedBlockParser matched) {
      CharSequence line = state.getLine().getContent();
      int at = state.getNextNonSpaceIndex();
      if (state.getIndent() >= CODE_INDENT || at >= line.length()) {
        return BlockStart.none();
      }
      char sign = line.charAt(at);
      int length = run(line, at, sign);
      if (sign != '`' && sign != '~' || length < FENCE) {
        return BlockStart.none();
      }
      if (sign == '`' && line.toString().indexOf('`', at + length) >= 0) {
        return BlockStart.none();
      }
      int lineStart = state.getLine().getSourceSpan().getInputIndex();
      FencedBlock block = new FencedBlock(lineStart + at);
      block.infoStart = lineStart + at + length;
      block.infoEnd = lineStart + line.length();
      return BlockStart.of(
              new BlockParser(
                  block,
                  sign,
                  length,
                  state.getIndent(),
                  line.subSequence(at + length, line.length()).toString()))
          .atIndex(line.length());
    }
  }

  private static int run(CharSequence line, int from, char sign) {
    int at = from;
    while (at < line.length() && line.charAt(at) == sign) {
      at++;
    }
    return at - from;
  }

  private static final class BlockParser extends AbstractBlockParser {
    private final FencedBlock block;
    private final char sign;
    private final int length;
    private final int indent;
    private final boolean nests;
    private final Deque<Integer> inside = new ArrayDeque<>();
    private boolean opening = true;

    BlockParser(FencedBlock block, char sign, int length, int indent, String info) {
      this.nests = Block.Box.Kind.of(info.strip().split("\\s", 2)[0]).isPresent();
      this.block = block;
      this.sign = sign;
      this.length = length;
      this.indent = indent;
    }

    @Override
    public org.commonmark.node.Block getBlock() {
      return block;
    }

    @Override
    public BlockContinue tryContinue(ParserState state) {
      CharSequence line = state.getLine().getContent();
      int at = state.getNextNonSpaceIndex();
      if (state.getIndent() < CODE_INDENT && at < line.length()) {
        int signs = run(line, at, sign);
        String rest = line.subSequence(at + signs, line.length()).toString();
        if (signs >= length && rest.isBlank()) {
          if (inside.isEmpty() || signs < inside.peek()) {
            block.closed = true;
            return BlockContinue.finished();
          }
          inside.pop();
        } else if (signs >= length && nests && rest.indexOf('`') < 0) {
          // Meant as a block inside this one, whose fence should have been longer.
          block.tooShort = true;
          inside.push(signs);
        }
      }
      int from = state.getIndex();
      for (int i = 0; i < indent && from < line.length() && line.charAt(from) == ' '; i++) {
        from++;
      }
      return BlockContinue.atIndex(from);
    }

    @Override
    public void addLine(SourceLine line) {
      if (opening) {
        opening = false;
      } else if (line.getSourceSpan() == null) {
        block.lines.add(new int[] {-1, -1});
      } else {
        int from = line.getSourceSpan().getInputIndex();
        block.lines.add(new int[] {from, from + line.getContent().length()});
      }
    }
  }
}
