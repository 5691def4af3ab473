package org.lapmark.publish.request;

import java.util.List;
import org.lapmark.print.Paper;

/** Whether what is asked for beside the usual documents can be made of the rest of a request. */
public final class ExtrasWanted {
  private ExtrasWanted() {}

  /**
   * Refuses what would otherwise be left out without a word.
   *
   * @param request what is wanted
   * @param papers the papers that it is made on
   * @throws RefusedException naming what is in each other's way
   */
  public static void refuseUnfit(Request request, List<Paper> papers) {
    if (request.extras().contains(Extra.NESTED)
        && !(request.sizes().isEmpty() && request.choices().isEmpty())) {
      throw new RefusedException(
          "stacked tiles have every size with everything as by default: leave out --size and"
              + " --option, or --nested");
    }
    boolean pages = papers.stream().anyMatch(paper -> paper.kind() == Paper.Kind.PAGE);
    for (Extra extra : request.extras()) {
      if (extra == Extra.NESTED || extra == Extra.WITHOUT_BLANK_PAGES) {
        continue;
      }
      if (!request.pieces().isEmpty()) {
        throw new RefusedException(
            "tiles of chosen pieces come without anything to read: leave out --piece or "
                + option(extra));
      }
      if (!pages) {
        throw new RefusedException(
            option(extra)
                + " is printed on pages, and large sheets have pieces alone: add a4, letter or"
                + " shared to --paper, or leave out "
                + option(extra));
      }
    }
  }

  private static String option(Extra extra) {
    return switch (extra) {
      case LARGE_PRINT -> "--large-print";
      case GRADE_REPORT -> "--with-grade-report";
      case NESTED -> "--nested";
      case WALK -> "--with-walk";
      case WITHOUT_BLANK_PAGES -> "--without-blank-pages";
    };
  }
}
