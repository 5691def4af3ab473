package org.lapmark.publish;

import java.util.Collections;
import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.NearestWord;
import org.lapmark.grade.Variants;
import org.lapmark.measure.Variant;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.ChosenPieces;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;
import org.lapmark.source.OptionsSource;

/** Holds requests against folders: what can't be meant is refused before anything is written. */
final class Refusals {
  private Refusals() {}

  /** Refuses a request that doesn't fit itself. */
  static void refuse(Request request, List<Paper> papers) {
    request.extras().forEach(extra -> extra.refuseUnfit(request, papers));
  }

  /** Refuses a request that doesn't fit a folder. */
  static void refuse(OpenedFolder one, Request request) {
    refuseUnknownSizes(one, request.sizes());
    refuseChoices(one, request);
    if (one.hasSizes()) {
      request.extras().forEach(extra -> extra.refuseUnfit(one.source(), request));
    }
    pieces(one, request);
  }

  /** The pieces that a request chooses of a pattern; all of one with errors, which isn't made. */
  static ChosenPieces pieces(OpenedFolder one, Request request) {
    return one.source() == null || one.findings().hasErrors()
        ? new ChosenPieces(Collections.emptySortedSet())
        : ChosenPieces.of(one.name(), one.source(), request.pieces());
  }

  /** Refuses options and choices that a folder doesn't have, and what is forbidden in it. */
  static void refuseChoices(OpenedFolder one, Request request) {
    // A folder with errors says so itself, and isn't published.
    if (one.source() == null || one.findings().hasErrors() || request.choices().isEmpty()) {
      return;
    }
    String folder = one.name();
    OptionsSource options = one.source().options();
    List<String> names = options.options().stream().map(option -> option.name().text()).toList();
    request
        .choices()
        .forEach(
            (name, choice) -> {
              refuseUnless(names, name, "‘" + folder + "’ has no option", "its options");
              List<String> ids = options.option(name).orElseThrow().ids();
              refuseUnless(
                  ids,
                  choice,
                  "the option ‘" + name + "’ of ‘" + folder + "’ has no choice",
                  "its choices");
            });
    Variants variants = new Variants(one.source(), new Findings());
    for (Variant variant : Grading.variants(one, request)) {
      variants
          .forbidden(variant)
          .ifPresent(
              reason -> {
                throw new RefusedException(
                    "‘"
                        + folder
                        + "’ can't be made in size "
                        + variants.described(variant)
                        + ": "
                        + reason);
              });
    }
  }

  private static void refuseUnless(List<String> known, String word, String problem, String list) {
    if (!known.contains(word)) {
      throw new RefusedException(
          problem
              + " ‘"
              + word
              + "’"
              + NearestWord.asked(word, known)
              + (known.isEmpty() ? "" : " (" + list + ": " + String.join(", ", known) + ")"));
    }
  }

  static void refuseUnknownSizes(OpenedFolder one, List<String> wanted) {
    // A folder whose size table couldn't be read says so itself.
    if (one.source() == null
        || one.source().sizes() == null
        || one.source().sizes().sizes().isEmpty()) {
      return;
    }
    List<String> known = one.source().sizes().sizes();
    for (String size : wanted) {
      if (!known.contains(size)) {
        throw new RefusedException(
            "‘"
                + one.name()
                + "’ has no size ‘"
                + size
                + "’"
                + NearestWord.asked(size, known)
                + " (its sizes: "
                + String.join(", ", known)
                + ")");
      }
    }
  }
}
