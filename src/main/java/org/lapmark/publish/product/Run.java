package org.lapmark.publish.product;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.Manual;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.FileNames;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;

/**
 * What files of one pattern are made of.
 *
 * @param source the pattern as read
 * @param request what is wanted
 * @param papers the papers that it is made on
 * @param graded the pattern in each variant that is made
 * @param printed of these, the ones that are set and printed on paper, with the pieces chosen
 * @param manuals what the instructions say; empty when nothing to read is made
 * @param choices what a variant chooses other than by default; empty for the default
 * @param names names files
 */
public record Run(
    PatternSource source,
    Request request,
    List<Paper> papers,
    List<EvaluatedPattern> graded,
    List<EvaluatedPattern> printed,
    Map<Variant, Manuals> manuals,
    Map<Variant, String> choices,
    FileNames names) {
  /** Copies the collections, keeping their order. */
  public Run {
    papers = List.copyOf(papers);
    graded = List.copyOf(graded);
    printed = List.copyOf(printed);
    manuals = Collections.unmodifiableMap(new LinkedHashMap<>(manuals));
    choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
  }

  /** Papers for what is read, or all those for what is cut. */
  List<Paper> pages() {
    return papers.stream().filter(Paper::readable).toList();
  }

  Purpose purpose(EvaluatedPattern pattern) {
    return Purpose.ofSize(pattern.variant().size(), choices.get(pattern.variant()));
  }

  boolean isEverySize() {
    return graded.size() == source.sizes().sizes().size();
  }

  /**
   * Sizes that share a document.
   *
   * @param names the sizes; none where they are all
   * @param patterns the pattern in each
   */
  record Group(List<String> names, List<EvaluatedPattern> patterns) {
    Purpose purpose() {
      return Purpose.ofSizes(names, "");
    }
  }

  /**
   * The sizes as by default, by what they consist of; none in a run that doesn't make every size,
   * or makes other choices: files from before stay.
   */
  List<Group> groups() {
    List<EvaluatedPattern> usual =
        graded.stream().filter(made -> choices.get(made.variant()).isEmpty()).toList();
    if (usual.size() < source.sizes().sizes().size()) {
      return List.of();
    }
    List<List<EvaluatedPattern>> groups = VariantContents.groups(usual);
    return groups.stream()
        .map(
            group ->
                new Group(
                    groups.size() == 1
                        ? List.of()
                        : group.stream().map(each -> each.variant().size()).toList(),
                    group))
        .toList();
  }

  /** What the instructions of some sizes say; nothing unless that of each is known. */
  Optional<List<Manual>> manuals(List<EvaluatedPattern> patterns) {
    List<Manual> known =
        patterns.stream()
            .map(pattern -> manuals.get(pattern.variant()))
            .filter(found -> found != null)
            .map(Manuals::standard)
            .toList();
    return Optional.of(known).filter(all -> all.size() == patterns.size());
  }
}
