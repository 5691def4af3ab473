package org.lapmark.publish.request;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.lapmark.print.paper.Paper;

/**
 * What to publish.
 *
 * @param sizes the sizes wanted; empty for all
 * @param papers the papers wanted; empty for all
 * @param choices what is chosen, by the option's name; all else is as by default
 * @param output the folder that receives one folder a pattern
 * @param presentation the language and units of the documents
 * @param extras what is made beside the usual documents
 * @param pieces numbers or names of the pieces whose tiles are made, and nothing else; empty for
 *     everything
 */
public record Request(
    List<String> sizes,
    List<Paper> papers,
    SortedMap<String, String> choices,
    Path output,
    Presentation presentation,
    Set<Extra> extras,
    List<String> pieces) {
  /** Copies the collections. */
  public Request {
    sizes = List.copyOf(sizes);
    papers = List.copyOf(papers);
    choices = Collections.unmodifiableSortedMap(new TreeMap<>(choices));
    extras = Collections.unmodifiableSet(new LinkedHashSet<>(extras));
    pieces = List.copyOf(pieces);
    Objects.requireNonNull(output);
    Objects.requireNonNull(presentation);
  }

  /**
   * What to publish with everything as by default.
   *
   * @param sizes the sizes wanted; empty for all
   * @param papers the papers wanted; empty for all
   * @param output the folder that receives one folder a pattern
   */
  public Request(List<String> sizes, List<Paper> papers, Path output) {
    this(sizes, papers, Collections.emptySortedMap(), output);
  }

  /**
   * A request for some choices, without anything beside, in the pattern's own language and units.
   *
   * @param sizes the sizes wanted; empty for all
   * @param papers the papers wanted; empty for all
   * @param choices what is chosen, by the option's name; all else is as by default
   * @param output the folder that receives one folder a pattern
   */
  public Request(
      List<String> sizes, List<Paper> papers, SortedMap<String, String> choices, Path output) {
    this(sizes, papers, choices, output, Presentation.OWN, Collections.emptySet(), List.of());
  }

  /**
   * The same with other things made beside.
   *
   * @param wanted all that is wanted beside the usual documents
   * @return the request
   */
  public Request with(Extra... wanted) {
    return new Request(
        sizes, papers, choices, output, presentation, new LinkedHashSet<>(List.of(wanted)), pieces);
  }

  /**
   * The same in another presentation.
   *
   * @param other the language and units of the documents
   * @return the request
   */
  public Request in(Presentation other) {
    return new Request(sizes, papers, choices, output, other, extras, pieces);
  }
}
