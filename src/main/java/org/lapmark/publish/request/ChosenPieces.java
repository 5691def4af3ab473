package org.lapmark.publish.request;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.lapmark.finding.NearestWord;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;

/**
 * The pieces that are printed alone.
 *
 * @param numbers their numbers; empty for all
 */
public record ChosenPieces(SortedSet<Integer> numbers) {
  public ChosenPieces {
    numbers = Collections.unmodifiableSortedSet(new TreeSet<>(numbers));
  }

  /**
   * Finds pieces by number or name.
   *
   * @param folder what the pattern is called in messages
   * @param source the pattern
   * @param wanted numbers or names, in upper or lower case
   * @throws RefusedException when the pattern has no such piece
   */
  public static ChosenPieces of(String folder, PatternSource source, List<String> wanted) {
    SortedSet<Integer> numbers = new TreeSet<>();
    for (String word : wanted) {
      List<String> known = new ArrayList<>();
      boolean found = false;
      for (PieceSource piece : source.pieces()) {
        String number = Integer.toString(piece.number());
        String name = piece.name().source().text().strip();
        if (number.equals(word.strip()) || folded(name).equals(folded(word))) {
          numbers.add(piece.number());
          found = true;
        }
        known.add(number);
        known.add(folded(name));
      }
      if (!found) {
        throw unknown(folder, source, word, known);
      }
    }
    return new ChosenPieces(numbers);
  }

  private static RefusedException unknown(
      String folder, PatternSource source, String word, List<String> known) {
    String near =
        NearestWord.of(folded(word), known)
            .map(
                name ->
                    source.pieces().stream()
                        .map(piece -> piece.name().source().text().strip())
                        .filter(text -> folded(text).equals(name))
                        .findFirst()
                        .orElse(name))
            .map(name -> "; did you mean ‘" + name + "’?")
            .orElse("");
    return new RefusedException(
        "‘"
            + folder
            + "’ has no piece ‘"
            + word
            + "’"
            + near
            + (source.pieces().isEmpty()
                ? ""
                : source.pieces().stream()
                    .map(piece -> piece.number() + " " + piece.name().source().text().strip())
                    .collect(Collectors.joining(", ", " (its pieces: ", ")"))));
  }

  private static String folded(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }

  public boolean isEverything() {
    return numbers.isEmpty();
  }

  /** What tells a folder of chosen pieces from that of the whole pattern. */
  public String suffix() {
    return isEverything()
        ? ""
        : ".piece-" + numbers.stream().map(number -> "" + number).collect(Collectors.joining("-"));
  }

  /**
   * The patterns with these pieces alone.
   *
   * @param folder what the pattern is called in messages
   * @param patterns the variants wanted
   * @param omitted told which of the pieces have no paper, when others have
   * @throws RefusedException when none of them has paper, or one isn't made in any of the variants
   */
  public List<EvaluatedPattern> in(
      String folder, List<EvaluatedPattern> patterns, Consumer<String> omitted) {
    if (isEverything()) {
      return patterns;
    }
    List<String> ruled = new ArrayList<>();
    for (int number : numbers) {
      List<Piece> made =
          patterns.stream()
              .flatMap(pattern -> pattern.pieces().stream())
              .filter(piece -> piece.number() == number)
              .toList();
      if (made.isEmpty()) {
        throw new RefusedException(
            "‘" + folder + "’ has no piece " + number + " in the sizes and choices wanted");
      }
      if (made.stream().allMatch(piece -> piece.statedSize().isPresent())) {
        ruled.add(number + " ‘" + made.get(0).name() + "’");
      }
    }
    if (ruled.size() == numbers.size()) {
      throw new RefusedException(withoutPaper(ruled, " of ‘" + folder + "’"));
    }
    if (!ruled.isEmpty()) {
      omitted.accept(withoutPaper(ruled, ""));
    }
    return patterns.stream()
        .map(
            pattern ->
                pattern.with(
                    pattern.pieces().stream()
                        .filter(piece -> numbers.contains(piece.number()))
                        .toList()))
        .toList();
  }

  private static String withoutPaper(List<String> ruled, String where) {
    boolean one = ruled.size() == 1;
    return (one ? "piece " : "pieces ")
        + String.join(", ", ruled)
        + where
        + (one ? " has no paper: it is cut" : " have no paper: they are cut")
        + " by the measurements in the cutting table";
  }
}
