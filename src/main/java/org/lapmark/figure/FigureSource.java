package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/**
 * A figure as its author states it, in no size. How a block is written:
 *
 * <pre>
 * width: full              # or half: 165 or 80 mm
 * caption: "…"             # texts may have placeholders
 * alt: "…"                 # for readers who can’t see it; computed if left out
 * pieces:                  # one of: pieces, layers, section, article, rings; or frames: up to 3
 * - piece: 1               # a piece’s number
 *   cloth: main            # a material’s id; the first it is cut from if left out
 *   side: wrong            # the side that faces the reader
 *   …
 * </pre>
 *
 * <p>All keys and what they mean are listed at {@link FigureParser}.
 *
 * @param position where the block begins
 * @param half whether it is narrow
 * @param caption what is printed under it, or null
 * @param alternative what it says in words, or null to compute it
 * @param frames one to three pictures, left to right
 */
public record FigureSource(
    Position position,
    boolean half,
    TemplateText caption,
    TemplateText alternative,
    List<Frame> frames) {
  /** Copies the list. */
  public FigureSource {
    frames = List.copyOf(frames);
  }

  /**
   * Reads a block.
   *
   * @param block what stands between the fences
   * @param findings where problems go
   * @return the figure; nothing if it can't be read at all, which is then reported
   */
  public static Optional<FigureSource> parse(SourceText block, Findings findings) {
    return new FigureParser(findings).parse(block);
  }

  /**
   * Whether it shows the finished article and nothing else.
   *
   * @return true for a single picture of it, complete
   */
  public boolean showsFinishedArticle() {
    if (frames.size() != 1) {
      return false;
    }
    return frames.get(0) instanceof Rings
        || frames.get(0) instanceof Article article && !article.open();
  }

  /**
   * How deep its pictures say to clip.
   *
   * @return a formula for each row of clips
   */
  public List<Formula> clipDepths() {
    List<Formula> depths = new ArrayList<>();
    for (Frame frame : frames) {
      List<View> views =
          frame instanceof Pieces pieces
              ? pieces.views()
              : frame instanceof Layers layers ? layers.views() : List.of();
      views.forEach(view -> view.clips().forEach(clips -> depths.add(clips.depth())));
    }
    return depths;
  }

  /**
   * The same in full width and without a caption.
   *
   * @return the figure
   */
  public FigureSource wide() {
    return new FigureSource(position, false, null, alternative, frames);
  }

  /**
   * The same in full width and without lettering: no caption, and no title, labels or dimensions of
   * an article.
   *
   * @return the figure
   */
  public FigureSource unlettered() {
    return new FigureSource(
        position, false, null, alternative, frames.stream().map(FigureSource::unlettered).toList());
  }

  private static Frame unlettered(Frame frame) {
    if (frame instanceof Rings rings) {
      HungCord cord = rings.cord();
      return new Rings(
          null,
          rings.cloth(),
          rings.hoops(),
          cord == null ? null : new HungCord(cord.hoop(), cord.drop(), null),
          List.of());
    }
    return frame instanceof Article article
        ? new Article(
            null,
            article.panel(),
            article.length(),
            article.start(),
            article.open(),
            article.cloth(),
            article.lining(),
            article.piped(),
            article.seams(),
            article.zip(),
            article.straps(),
            article.bar(),
            article.baste(),
            Collections.emptySet(),
            List.of())
        : frame;
  }

  /** Which side of cloth, or of a zip, faces the reader. */
  enum Side {
    RIGHT,
    WRONG
  }

  /** How pieces lie to each other. */
  enum Arrangement {
    ROW,
    COLUMN,
    JOINED
  }

  /** What else is drawn of a piece. */
  enum Shown {
    STITCHING,
    NOTCHES,
    GRAIN,
    MARKS
  }

  /** What a line on a piece is. */
  enum LineKind {
    SEW,
    BASTE,
    TOPSTITCH,
    EDGE
  }

  /** What is measured. */
  enum Measured {
    WIDTH,
    HEIGHT,
    ALONG,
    ALLOWANCE
  }

  /** Where a dimension stands. */
  enum Beside {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT
  }

  /** One picture. */
  sealed interface Frame {
    /** What stands under it, or null. */
    TemplateText title();
  }

  /**
   * Pieces laid flat.
   *
   * @param title what stands under it, or null
   * @param arrangement how they lie
   * @param views the pieces
   */
  record Pieces(TemplateText title, Arrangement arrangement, List<View> views) implements Frame {}

  /**
   * Layers lying on each other along a seam, the lowest first.
   *
   * @param title what stands under it, or null
   * @param views the layers
   */
  record Layers(TemplateText title, List<View> views) implements Frame {}

  /**
   * A section through layers.
   *
   * @param title what stands under it, or null
   * @param layers the layers
   * @param cords cords between them
   * @param stitches where it is sewn
   * @param labels further labels
   * @param dimensions distances along it
   */
  record Section(
      TemplateText title,
      List<SectionLayer> layers,
      List<Cord> cords,
      List<Stitch> stitches,
      List<SectionLabel> labels,
      List<SectionDimension> dimensions)
      implements Frame {}

  /**
   * The finished article, or the ring before its ends are in, seen from above one corner.
   *
   * @param title what stands under it, or null
   * @param panel the panel whose stitching line is drawn out, with its place
   * @param length how far
   * @param start the edge from whose beginning places along the rim are counted, or null
   * @param open whether the ends are still missing
   * @param cloth the material outside
   * @param lining the material inside, or null
   * @param piped whether the ends are piped
   * @param seams places of cross seams along the rim
   * @param zip the zip, or null
   * @param straps the straps, or null
   * @param bar the diameter of the bar that the straps hold, or null
   * @param baste a line this far inside the open sides, or null
   * @param measured which of its three lengths are dimensioned
   * @param labels labels
   */
  record Article(
      TemplateText title,
      SourceText panel,
      Formula length,
      SourceText start,
      boolean open,
      SourceText cloth,
      SourceText lining,
      boolean piped,
      List<Formula> seams,
      ArticleZip zip,
      ArticleStraps straps,
      Formula bar,
      Formula baste,
      Set<ArticleLength> measured,
      List<ArticleLabel> labels)
      implements Frame {}

  /**
   * A finished article made of rings, as a hat is, seen from the front and above.
   *
   * @param title what stands under it, or null
   * @param cloth the material outside
   * @param hoops its ovals, from the top down; the first is closed
   * @param cord a cord hanging from it, or null
   * @param labels labels
   */
  record Rings(
      TemplateText title, SourceText cloth, List<Hoop> hoops, HungCord cord, List<RingLabel> labels)
      implements Frame {}

  /**
   * A level oval of an article made of rings.
   *
   * @param round the length round it
   * @param ratio from front to back over from side to side, or null for a circle
   * @param level how high it lies
   * @param rows distances above it, along the cloth, of rows of stitches
   */
  record Hoop(Formula round, Formula ratio, Formula level, List<Formula> rows) {}

  /**
   * A cord with a clasp, hanging from the two sides of an oval.
   *
   * @param hoop the oval's number, 1 for the first
   * @param drop how far below it the clasp hangs
   * @param text a label, or null
   */
  record HungCord(int hoop, Formula drop, TemplateText text) {}

  /**
   * A label of an article made of rings.
   *
   * @param text the text
   * @param hoop the oval's number, 1 for the first
   * @param at the share of the way round, from the front to the reader's right
   * @param down the share of the way down to the next oval, 0 to 1
   */
  record RingLabel(TemplateText text, int hoop, Formula at, double down) {}

  /** A length of the finished article. */
  enum ArticleLength {
    LENGTH,
    HEIGHT,
    DEPTH
  }

  /**
   * A zip of the finished article.
   *
   * @param from where along the rim it begins
   * @param to where it ends
   * @param length from stop to stop
   * @param open how far it is open, 0 to 1
   */
  record ArticleZip(Formula from, Formula to, Formula length, double open) {}

  /**
   * Straps of the finished article.
   *
   * @param at places along the rim where they are caught
   * @param places distances of their middles from the left side
   * @param width their width
   * @param cloth their material
   */
  record ArticleStraps(Formula at, List<Formula> places, Formula width, SourceText cloth) {}

  /**
   * A label of the finished article.
   *
   * @param text the text
   * @param rim a place along the rim
   * @param across how far from the left side, or null for the middle
   */
  record ArticleLabel(TemplateText text, Formula rim, Formula across) {}

  /**
   * A piece or a zip as it lies in a picture.
   *
   * @param piece the piece's number, or null for a zip
   * @param zip the zip's id, or null for a piece
   * @param length the zip's length from stop to stop, or null
   * @param cloth the material's id, or null for the first
   * @param side the side that faces the reader
   * @param reversed whether it is one of those cut with the paper face down
   * @param turn by how many degrees clockwise it is turned: a multiple of 90
   * @param edge the edge along which layers meet, or null
   * @param cropped how much of it is drawn from that edge on, or null for all
   * @param cutAway the side on which a layer is cut away to show those beneath, or null
   * @param turned edges whose allowance is folded away
   * @param shown what else is drawn
   * @param name its name: the author's own; null for the computed one
   * @param named whether it is named at all
   * @param lines stitching and emphasised edges
   * @param labels labels
   * @param dimensions dimensions
   * @param things what lies on it
   * @param clips cuts into its allowance
   * @param around a seam whose other side is shown round it, or null
   */
  record View(
      SourceText piece,
      SourceText zip,
      Formula length,
      SourceText cloth,
      Side side,
      boolean reversed,
      int turn,
      SourceText edge,
      Formula cropped,
      Beside cutAway,
      List<SourceText> turned,
      Set<Shown> shown,
      TemplateText name,
      boolean named,
      List<SewnLine> lines,
      List<Label> labels,
      List<Dimension> dimensions,
      List<Thing> things,
      List<Clips> clips,
      Around around) {}

  /**
   * A line on a piece.
   *
   * @param kind what it is
   * @param edges the edges it follows
   * @param distance from the raw edge when basted, from the turned edge when topstitched; null for
   *     the stitching line
   * @param now whether this step does it
   * @param text a label, or null
   */
  record SewnLine(
      LineKind kind, List<SourceText> edges, Formula distance, boolean now, TemplateText text) {}

  /**
   * A place on a piece.
   *
   * @param edge the edge
   * @param along a length from its start, or a plain number: a fraction of it; null for its middle
   * @param inside how far inside the raw edge; null for none
   */
  record Place(SourceText edge, Formula along, Formula inside) {}

  /**
   * A label.
   *
   * @param text the text, or null
   * @param number the number in a ring, or 0
   * @param place what it names
   */
  record Label(TemplateText text, int number, Place place) {}

  /**
   * A dimension.
   *
   * @param measured what
   * @param raw for width and height: whether allowances are included
   * @param edge the edge, for distances along it and for the allowance
   * @param from where it begins along the edge, or null for the start
   * @param to where it ends along the edge, or null for the end
   * @param depth for the allowance: how far from the raw edge, or null for the allowance itself
   * @param beside where it stands
   * @param place where it is stated
   */
  record Dimension(
      Measured measured,
      boolean raw,
      SourceText edge,
      Formula from,
      Formula to,
      Formula depth,
      Beside beside,
      Position place) {}

  /**
   * Something that lies on a piece.
   *
   * @param piece a piece drawn in the same coordinates, or null
   * @param band an edge along whose raw edge a band lies, or null
   * @param cloth its material, or null
   * @param side its side
   * @param width the width of a strip along the edge, or of a band; null for a piece
   * @param length the length of a strip from the edge inwards
   * @param place where the strip or the piece begins; the middle of its first side lies there. Null
   *     for a piece that lies in its own coordinates
   * @param turn by how many degrees clockwise a piece is turned, 0 for its top to the edge
   * @param cropped how much of the strip's length is drawn, or null for all
   * @param name its name, or null
   */
  record Thing(
      SourceText piece,
      SourceText band,
      SourceText cloth,
      Side side,
      Formula width,
      Formula length,
      Place place,
      int turn,
      Formula cropped,
      TemplateText name) {}

  /**
   * Cuts into the allowance.
   *
   * @param edge the edge
   * @param every the distance between them
   * @param depth how deep they go
   * @param from where they begin along the edge, or null
   * @param to where they end, or null
   * @param curves whether only curved stretches are clipped
   */
  record Clips(
      SourceText edge, Formula every, Formula depth, Formula from, Formula to, boolean curves) {}

  /**
   * The other side of a seam, shown as bands round a piece.
   *
   * @param seam the seam's name
   * @param start the edge at whose beginning the other side begins
   */
  record Around(SourceText seam, SourceText start) {}

  /**
   * A layer of a section, drawn along a line with rounded bends.
   *
   * @param cloth the material's id, or null for a zip's tape
   * @param zip whether it is a zip's tape
   * @param up which side faces up at its beginning
   * @param line points: a distance along the section and a level counted from the top
   * @param name its name, or null for the computed one
   */
  record SectionLayer(
      SourceText cloth, boolean zip, Side up, List<SectionPoint> line, TemplateText name) {}

  /**
   * A point of a section.
   *
   * @param along the distance
   * @param level the level, 0 at the top
   */
  record SectionPoint(Formula along, double level) {}

  /**
   * A cord in a section.
   *
   * @param bend the middle of the fold, two levels high and turning back, that it lies in
   * @param name its name, or null
   */
  record Cord(SectionPoint bend, TemplateText name) {}

  /**
   * Stitches through a section.
   *
   * @param at where
   * @param from the upper level
   * @param to the lower level
   * @param now whether this step sews them
   * @param text a label, or null
   */
  record Stitch(Formula at, double from, double to, boolean now, TemplateText text) {}

  /**
   * A label of a section.
   *
   * @param text the text
   * @param at what it names
   */
  record SectionLabel(TemplateText text, SectionPoint at) {}

  /**
   * A distance along a section.
   *
   * @param from where it begins
   * @param to where it ends
   * @param above whether it stands above
   */
  record SectionDimension(Formula from, Formula to, boolean above) {}
}
