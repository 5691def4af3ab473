package org.lapmark.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;

/**
 * How the finished article is used, and by whom.
 *
 * @param loadLimit what it may carry, or null
 * @param stated the cautions that its use calls for
 * @param because why it needs none, where that is stated in place of hazards; or null
 * @param ages how old those are who use it, by size; sizes that aren't named are for grown-ups
 * @param agesForAll how old those are who use any size, or null
 * @param wornAt where cords and ties lie, by the id of a material or of hardware, or the number of
 *     a piece
 */
public record UseSource(
    TemplateText loadLimit,
    List<SourceText> stated,
    SourceText because,
    Map<SourceText, Ages> ages,
    Ages agesForAll,
    Map<SourceText, SourceText> wornAt) {
  /** Nothing is known. */
  public static final UseSource NONE =
      new UseSource(null, List.of(), null, Collections.emptyMap(), null, Collections.emptyMap());

  private static final String INFANTS = "infants";

  /** Copies the collections, keeping their order. */
  public UseSource {
    stated = List.copyOf(stated);
    ages = Collections.unmodifiableMap(new LinkedHashMap<>(ages));
    wornAt = Collections.unmodifiableMap(new LinkedHashMap<>(wornAt));
  }

  /**
   * Whether it is said who uses the article.
   *
   * @return true when ages are stated
   */
  public boolean saysAges() {
    return agesForAll != null || !ages.isEmpty();
  }

  /**
   * How old those are who use a size.
   *
   * @param size the size's name
   * @return the ages; those of grown-ups where nothing is stated
   */
  public Ages agesOf(String size) {
    if (agesForAll != null) {
      return agesForAll;
    }
    return ages.entrySet().stream()
        .filter(entry -> entry.getKey().text().equals(size))
        .map(Map.Entry::getValue)
        .findFirst()
        .orElse(Ages.ADULTS);
  }

  /**
   * Whether some size is for others than grown-ups.
   *
   * @return true when any such ages are stated
   */
  public boolean isForYoung() {
    return agesForAll != null && !agesForAll.equals(Ages.ADULTS)
        || ages.values().stream().anyMatch(one -> !one.equals(Ages.ADULTS));
  }

  /**
   * The hazards that the use of a size calls for.
   *
   * @param size the size's name
   * @return each once, those that are named first
   */
  public List<String> hazards(String size) {
    List<String> hazards =
        new ArrayList<>(stated.stream().map(SourceText::text).distinct().toList());
    if (agesOf(size).isInfant() && !hazards.contains(INFANTS)) {
      hazards.add(INFANTS);
    }
    return hazards;
  }

  /**
   * Where a cord or a tie lies.
   *
   * @param what the id of a material or of hardware, or the number of a piece
   * @return the place, or null when it isn't stated
   */
  public String placeOf(String what) {
    return wornAt.entrySet().stream()
        .filter(entry -> entry.getKey().text().equals(what))
        .map(entry -> entry.getValue().text())
        .findFirst()
        .orElse(null);
  }

  UseSource limiting(TemplateText limit) {
    return new UseSource(limit, stated, because, ages, agesForAll, wornAt);
  }
}
