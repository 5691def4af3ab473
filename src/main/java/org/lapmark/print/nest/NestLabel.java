package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Function;
import org.lapmark.grade.Piece;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.wording.Wording;

/**
 * The lettering of a piece in all its sizes: what they have in common once, what differs listed.
 */
final class NestLabel extends PieceLabel {
  private final Wording wording;
  private final Nest nest;

  NestLabel(Typesetting setting, Nest nest) {
    super(setting, nest.patterns().get(0));
    this.wording = setting.wording();
    this.nest = nest;
  }

  private NestedPiece nested(Piece piece) {
    return nest.pieces().stream()
        .filter(one -> one.number() == piece.number())
        .findFirst()
        .orElseThrow();
  }

  @Override
  protected String sizeKey() {
    return "nest.piece.size";
  }

  @Override
  public String size(Piece piece) {
    return sizes(
        wording, nest, nested(piece).members().stream().map(NestedPiece.Member::size).toList());
  }

  @Override
  public List<String> cuts(Piece piece) {
    return bySize(piece, super::cuts);
  }

  @Override
  public List<String> paper(Piece piece) {
    return bySize(piece, super::paper);
  }

  private List<String> bySize(Piece piece, Function<Piece, List<String>> lineOf) {
    List<NestedPiece.Member> members = nested(piece).members();
    Map<String, TreeSet<Integer>> byText = new LinkedHashMap<>();
    for (NestedPiece.Member member : members) {
      for (String line : lineOf.apply(member.piece())) {
        byText.computeIfAbsent(line, unused -> new TreeSet<>()).add(member.size());
      }
    }
    List<String> lines = new ArrayList<>();
    byText.forEach(
        (text, sizes) ->
            lines.add(
                sizes.size() == members.size()
                    ? text
                    : wording.text(
                        "nest.piece.some",
                        Map.of("sizes", sizes(wording, nest, List.copyOf(sizes)), "text", text))));
    return lines;
  }

  /** Sizes in one phrase: four and more that follow each other by the first and the last. */
  static String sizes(Wording wording, Nest nest, List<Integer> sizes) {
    List<String> names = nest.sizes();
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < sizes.size(); ) {
      int to = from;
      while (to + 1 < sizes.size() && sizes.get(to + 1) == sizes.get(to) + 1) {
        to++;
      }
      if (to - from >= 3) {
        parts.add(
            wording.text(
                "nest.range",
                Map.of("first", names.get(sizes.get(from)), "last", names.get(sizes.get(to)))));
      } else {
        for (int i = from; i <= to; i++) {
          parts.add(names.get(sizes.get(i)));
        }
      }
      from = to + 1;
    }
    String all = parts.get(0);
    for (String part : parts.subList(1, parts.size())) {
      all = wording.text("nest.list", Map.of("first", all, "second", part));
    }
    return all;
  }
}
