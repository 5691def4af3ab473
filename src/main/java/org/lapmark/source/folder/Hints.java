package org.lapmark.source.folder;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;

/** Looks for the words that were probably meant, with a bounded amount of work for a folder. */
public final class Hints {
  private long left = 100_000_000;

  /** The nearest known word, or the empty text if none is near or enough has been looked for. */
  public String nearest(String word, Collection<String> known) {
    for (String candidate : known) {
      left -= (long) word.length() * candidate.length();
    }
    return left < 0 ? "" : NearestWord.of(word, known).orElse("");
  }

  /**
   * Reports a word that isn't among the known ones, naming the nearest.
   *
   * @param further arguments of the message besides the word and the known ones, by name
   */
  public void unknown(
      Findings findings,
      FindingCode code,
      Position position,
      String word,
      Collection<String> known,
      Object... further) {
    Optional<Finding> unseen = UnseenCharacters.within(position);
    if (unseen.isPresent()) {
      findings.add(unseen.get());
      return;
    }
    String nearest = nearest(word, known);
    List<Object> arguments = new ArrayList<>(List.of(further));
    arguments.addAll(
        List.of(
            "name",
            word,
            "near",
            nearest.isEmpty() ? "no" : "yes",
            "nearest",
            nearest,
            "known",
            Known.listed(known)));
    findings.add(code, position, arguments.toArray());
  }
}
