package org.lapmark.figure.article;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * The finished article, or the ring before its ends are in, seen from above one corner.
 *
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
public record Article(
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
    Set<ArticleLengths.Kind> measured,
    List<Label> labels)
    implements Picture {
  private static final Key<SourceText> PANEL = Key.required("panel", FigureForms.NAME);
  private static final Key<Formula> LENGTH = Key.required("length", FigureForms.LENGTH);
  private static final Key<SourceText> START = Key.of("start", FigureForms.EDGE);
  private static final Key<String> ENDS =
      Key.of("ends", FigureForms.words("closed", "open")).unless("closed");
  private static final Key<SourceText> CLOTH = Key.required("cloth", FigureForms.NAME);
  private static final Key<SourceText> LINING = Key.of("lining", FigureForms.NAME);
  private static final Key<Boolean> PIPING = Key.of("piping", FigureForms.YES).unless("no");
  private static final Key<Entries<Formula>> SEAMS =
      Key.of("seams", FigureForms.each(FigureForms.PLACE));
  private static final Key<ArticleZip> ZIP = Key.of("zip", ArticleZip.FORM);
  private static final Key<ArticleStraps> STRAPS = Key.of("straps", ArticleStraps.FORM);
  private static final Key<Formula> BAR = Key.of("bar", FigureForms.LENGTH);
  private static final Key<Formula> BASTE = Key.of("baste", FigureForms.LENGTH);
  private static final Key<Entries<ArticleLengths.Kind>> DIMENSIONS =
      Key.of("dimensions", FigureForms.each(FigureForms.constant(ArticleLengths.Kind.class)));
  private static final Key<Entries<Label>> LABELS =
      Key.of("labels", FigureForms.list(Label.TABLE, Label::read));
  private static final Table TABLE =
      Table.of(
          "article",
          PANEL,
          LENGTH,
          START,
          ENDS,
          CLOTH,
          LINING,
          PIPING,
          SEAMS,
          ZIP,
          STRAPS,
          BAR,
          BASTE,
          DIMENSIONS,
          LABELS);

  /** Articles under the key {@code article}. */
  public static final PictureKind KIND =
      PictureKind.of(Key.of("article", FigureForms.map(TABLE, Article::read)));

  private static Picture read(Keys keys) {
    Article article =
        new Article(
            keys.get(PANEL),
            keys.get(LENGTH),
            keys.get(START),
            keys.or(ENDS, "closed").equals("open"),
            keys.get(CLOTH),
            keys.get(LINING),
            keys.or(PIPING, false),
            keys.all(SEAMS),
            keys.get(ZIP),
            keys.get(STRAPS),
            keys.get(BAR),
            keys.get(BASTE),
            FigureForms.ordered(keys.all(DIMENSIONS), ArticleLengths.Kind.class),
            keys.all(LABELS));
    return keys.amiss(PANEL, LENGTH, START, CLOTH) ? null : article;
  }

  @Override
  public double largest() {
    return LARGEST;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    Path rim = rim(staging);
    double across = staging.length(length, 1, 5_000);
    Texture outside = texture(cloth, staging);
    List<Double> places = new ArrayList<>();
    for (Formula seam : seams) {
      staging.attempt(() -> staging.along(seam, rim.length(), 0)).ifPresent(places::add);
    }
    List<ArticleScene.Label> named = new ArrayList<>();
    for (Label label : labels) {
      staging.attempt(() -> label.stage(staging, rim, across)).ifPresent(named::add);
    }
    if (bar != null && straps == null) {
      staging.run(() -> staging.length(bar, ArticleStraps.LEAST_BAR, ArticleStraps.MOST_BAR));
    }
    Texture inside = lining == null ? outside : texture(lining, staging);
    Box box = rim.bounds();
    return new ArticleScene(
        rim,
        across,
        open,
        outside,
        open ? inside : outside,
        piped,
        places,
        Optional.ofNullable(zip)
            .flatMap(
                one ->
                    staging.attempt(
                        () -> one.stage(staging, staging.names().panel(panel), rim, across))),
        Optional.ofNullable(straps)
            .flatMap(one -> staging.attempt(() -> one.stage(staging, rim, across, bar))),
        Optional.ofNullable(baste)
            .flatMap(one -> staging.attempt(() -> staging.length(one, 0, across / 2))),
        new ArticleLengths(
            measured,
            staging.printed(across),
            staging.printed(box.height()),
            staging.printed(box.width())),
        named);
  }

  /** The panel's stitching line, from where places along it are counted. */
  private Path rim(Staging staging) {
    Panel shape = staging.names().panel(panel);
    Path outline = shape.outline();
    double first = 0;
    if (start != null) {
      String edge = staging.names().edges(shape, start).get(0);
      first = outline.nearestLength(shape.line(edge).start());
    }
    return first < 1e-9 || first > outline.length() - 1e-9
        ? outline
        : outline.part(first, outline.length()).then(outline.part(0, first));
  }

  private static Texture texture(SourceText cloth, Staging staging) {
    return staging
        .attempt(() -> staging.cloths().texture(staging.names().material(cloth)))
        .orElse(Texture.OTHER);
  }

  @Override
  public List<Formula> clipDepths() {
    return List.of();
  }

  @Override
  public boolean isFinishedArticle() {
    return !open;
  }

  @Override
  public Picture unlettered() {
    return new Article(
        panel,
        length,
        start,
        open,
        cloth,
        lining,
        piped,
        seams,
        zip,
        straps,
        bar,
        baste,
        Collections.emptySet(),
        List.of());
  }

  /**
   * A label of the finished article.
   *
   * @param text the text
   * @param rim a place along the rim
   * @param across how far from the left side, or null for the middle
   */
  record Label(TemplateText text, Formula rim, Formula across) {
    private static final Key<TemplateText> TEXT = Key.required("text", FigureForms.LABEL);
    private static final Key<Formula> RIM = Key.required("rim", FigureForms.PLACE);
    private static final Key<Formula> ACROSS = Key.of("across", FigureForms.LENGTH);
    private static final Table TABLE = Table.of("sign", TEXT, RIM, ACROSS);

    private static Label read(Keys keys) {
      return keys.whole(new Label(keys.get(TEXT), keys.get(RIM), keys.get(ACROSS)));
    }

    private ArticleScene.Label stage(Staging staging, Path line, double length) {
      Point on = line.atLength(staging.along(rim, line.length(), 0));
      double at = across == null ? length / 2 : staging.length(across, 0, length);
      return new ArticleScene.Label(staging.text(text), on, at);
    }
  }
}
