package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.lapmark.figure.article.Article;
import org.lapmark.figure.corner.BoxedCorner;
import org.lapmark.figure.flat.Layers;
import org.lapmark.figure.flat.Pieces;
import org.lapmark.figure.operation.Operation;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.read.Values;
import org.lapmark.figure.rings.Rings;
import org.lapmark.figure.section.Section;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * A figure as its author states it, in no size.
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
  /** All kinds of picture. */
  static final List<PictureKind> KINDS =
      List.of(
          Pieces.KIND,
          Layers.KIND,
          Section.KIND,
          Article.KIND,
          Rings.KIND,
          BoxedCorner.KIND,
          Operation.KIND);

  private static final Key<TemplateText> TITLE = Key.of("title", FigureForms.LABEL);
  private static final List<Key<?>> STATED = KINDS.stream().<Key<?>>map(PictureKind::key).toList();
  private static final Table FRAME =
      Table.of("picture", TITLE)
          .with(KINDS.stream().<Key<?>>flatMap(kind -> kind.beside().stream()).toList())
          .with(STATED)
          .oneOf(Choice.among(STATED));

  private static final Key<String> WIDTH =
      Key.of("width", FigureForms.words("full", "half")).unless("full");
  private static final Key<TemplateText> CAPTION = Key.of("caption", FigureForms.TEMPLATE);
  private static final Key<TemplateText> ALT = Key.of("alt", FigureForms.TEMPLATE);
  private static final Key<Entries<Frame>> FRAMES =
      Key.of("frames", FigureForms.list(FRAME, FigureSource::frame).with("maxItems", 3));

  /** The keys of a figure, through which those of all that stands in it are reached. */
  public static final Table TABLE =
      Table.of("figure", WIDTH, CAPTION, ALT, FRAMES)
          .with(FRAME.keys())
          .oneOf(Choice.among(Stream.concat(Stream.of(FRAMES), STATED.stream()).toList()));

  /** The most pictures beside each other. */
  static final int MAX_FRAMES = 3;

  /** Copies the list. */
  public FigureSource {
    frames = List.copyOf(frames);
  }

  /**
   * One of a figure's pictures.
   *
   * @param title what stands under it, or null
   * @param picture what it shows
   */
  public record Frame(TemplateText title, Picture picture) {}

  /**
   * Reads a block.
   *
   * @param block what stands between the fences
   * @param findings where problems go
   * @return the figure; nothing if it can't be read at all, which is then reported
   */
  public static Optional<FigureSource> parse(SourceText block, Findings findings) {
    try {
      return Keys.of(block, TABLE, findings).flatMap(keys -> read(keys, block.position(0, 1)));
    } catch (FindingException e) {
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /** A figure of the pictures that could be read. */
  private static Optional<FigureSource> read(Keys keys, Position position) {
    boolean half = keys.or(WIDTH, "full").equals("half");
    TemplateText caption = keys.get(CAPTION);
    TemplateText alternative = keys.get(ALT);
    List<Frame> frames;
    if (keys.has(FRAMES)) {
      alone(keys);
      List<YamlNode> stated = Values.entries(keys.node(FRAMES), "figure/frames");
      frames = keys.each(stated, node -> frame(keys.inner(node, FRAMES, FRAME)));
      if (stated.size() > MAX_FRAMES) {
        throw Faults.of(
            keys.node(FRAMES).position(),
            FigureCode.FIGURE_TOO_MANY,
            "limit",
            MAX_FRAMES,
            "what",
            "frames");
      }
    } else {
      frames = keys.each(List.of(keys), FigureSource::frame);
    }
    return frames.isEmpty()
        ? Optional.empty()
        : Optional.of(new FigureSource(position, half, caption, alternative, frames));
  }

  /** Beside frames nothing of one picture is looked at, since each frame states its own. */
  private static void alone(Keys keys) {
    List<Key<?>> pictures = STATED.stream().<Key<?>>filter(keys::has).toList();
    pictures.forEach(picture -> keys.together(FRAMES, picture));
    if (pictures.isEmpty()) {
      List<Key<?>> ofOne = new ArrayList<>(List.of(TITLE));
      KINDS.forEach(kind -> ofOne.addAll(kind.beside()));
      keys.idle(FRAMES, ofOne, List.of(WIDTH, CAPTION, ALT));
    }
  }

  /** A picture; null if what else it shows depends on something that couldn’t be read. */
  private static Frame frame(Keys keys) {
    List<PictureKind> stated = KINDS.stream().filter(kind -> keys.has(kind.key())).toList();
    if (stated.size() != 1) {
      String known = Known.listed(STATED.stream().<String>map(Key::name).toList());
      throw Faults.of(keys.position(), FigureCode.FIGURE_KIND, "known", known);
    }
    PictureKind kind = stated.get(0);
    TemplateText title = keys.get(TITLE);
    for (PictureKind other : KINDS) {
      if (other != kind) {
        keys.idle(kind.key(), other.beside(), List.of(TITLE));
      }
    }
    return kind.read(keys).map(picture -> new Frame(title, picture)).orElse(null);
  }

  /**
   * Whether it shows the finished article and nothing else.
   *
   * @return true for a single picture of it, complete
   */
  public boolean showsFinishedArticle() {
    return frames.size() == 1 && frames.get(0).picture().isFinishedArticle();
  }

  /**
   * How deep its pictures say to clip.
   *
   * @return a formula for each row of clips
   */
  public List<Formula> clipDepths() {
    return frames.stream().flatMap(frame -> frame.picture().clipDepths().stream()).toList();
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
   * The same in full width and without lettering: no caption, no titles, and no labels or
   * dimensions of an article.
   *
   * @return the figure
   */
  public FigureSource unlettered() {
    List<Frame> bare =
        frames.stream().map(frame -> new Frame(null, frame.picture().unlettered())).toList();
    return new FigureSource(position, false, null, alternative, bare);
  }
}
