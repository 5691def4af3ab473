package org.lapmark.publish.product;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;

/** All that publishing makes, and all that can be asked for. */
public final class Products {
  /** Every product, in the order in which they are begun. */
  public static final List<Product> ALL =
      List.of(
          new NestedTiles(),
          new GradeReports(),
          new Companions(),
          new SizesInstructions(),
          new CutFiles(),
          new Instructions(),
          new CompleteDocuments(),
          new LargePrint(),
          new Tiles());

  /** The walk of every seam at the end of the documents of one size. */
  public static final Extra WALK =
      new Extra(
          "--with-walk",
          "The walk of every seam at the end of the documents of one size: how long its sides are, "
              + "where notches meet, and where to clip.") {
        @Override
        public void refuseUnfit(Request request, List<Paper> papers) {
          refuseUnread(request, papers);
        }

        @Override
        public Optional<String> missing(PatternSource source) {
          return source.seams().isEmpty()
              ? Optional.of("no walk: the pattern states no seams")
              : Optional.empty();
        }
      };

  /** Tiles, nothing of which is missed, are left out: those that no line runs over. */
  public static final Extra WITHOUT_BLANK_PAGES =
      new Extra(
          "--without-blank-pages",
          "Pages of tiles that show the inside of a piece and no line are left out; page numbers, "
              + "map and joins are those of what remains.") {
        @Override
        public void refuseUnfit(Request request, List<Paper> papers) {}
      };

  private Products() {}

  /** Everything that can be asked for beside the usual. */
  public static List<Extra> extras() {
    return Stream.concat(
            ALL.stream().flatMap(product -> product.extra().stream()),
            Stream.of(WALK, WITHOUT_BLANK_PAGES))
        .toList();
  }

  /**
   * What a request asks for, in the order in which it is begun.
   *
   * @param request what is wanted
   */
  public static List<Product> wanted(Request request) {
    return ALL.stream().filter(product -> product.isWanted(request)).toList();
  }
}
