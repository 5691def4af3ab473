package org.lapmark.publish.request;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.lapmark.print.paper.Paper;
import org.lapmark.source.PatternSource;

/**
 * What is made beside the documents of each size, put into them, or left out, when it is asked for.
 */
public abstract class Extra {
  private final String option;
  private final String description;

  /**
   * Something that can be asked for.
   *
   * @param option the option of the command, with its hyphens
   * @param description what the command's help says of it
   */
  protected Extra(String option, String description) {
    this.option = Objects.requireNonNull(option);
    this.description = Objects.requireNonNull(description);
  }

  /** The option of the command that asks for it, with its hyphens. */
  public final String option() {
    return option;
  }

  /** What the command's help says of it. */
  public final String description() {
    return description;
  }

  /**
   * Refuses what would otherwise be left out without a word.
   *
   * @param request what is wanted
   * @param papers the papers that it is made on
   * @throws RefusedException naming what is in each other's way
   */
  public abstract void refuseUnfit(Request request, List<Paper> papers);

  /**
   * Refuses what can't be made of a pattern.
   *
   * @param source the pattern, with a table of sizes
   * @param request what is wanted
   * @throws RefusedException naming what is in the way
   */
  public void refuseUnfit(PatternSource source, Request request) {}

  /**
   * Why a pattern gives nothing to make it of, as a sentence without a full stop.
   *
   * @param source the pattern
   */
  public Optional<String> missing(PatternSource source) {
    return Optional.empty();
  }

  /** Refuses what is read, where nothing to read is made. */
  protected final void refuseUnread(Request request, List<Paper> papers) {
    if (!request.pieces().isEmpty()) {
      throw new RefusedException(
          "tiles of chosen pieces come without anything to read: leave out --piece or " + option);
    }
    if (papers.stream().noneMatch(Paper::readable)) {
      throw new RefusedException(
          option
              + " is printed on pages, and large sheets have pieces alone: add "
              + Papers.readable()
              + " to --paper, or leave out "
              + option);
    }
  }
}
