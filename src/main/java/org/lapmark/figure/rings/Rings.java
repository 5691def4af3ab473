package org.lapmark.figure.rings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.stated.StatedShape;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * A finished article made of rings, as a hat is, seen from the front and above.
 *
 * @param cloth the material outside
 * @param hoops its ovals, from the top down; the first is closed
 * @param cord a cord hanging from it, or null
 * @param labels labels
 */
public record Rings(SourceText cloth, List<Hoop> hoops, HungCord cord, List<Label> labels)
    implements Picture {
  private static final Key<SourceText> CLOTH = Key.required("cloth", FigureForms.NAME);
  private static final Key<Entries<Hoop>> HOOPS =
      Key.required("hoops", FigureForms.list(Hoop.TABLE, Hoop::read));
  private static final Key<HungCord> CORD = Key.of("cord", HungCord.among(Rings.ANY));
  private static final Key<Entries<Label>> LABELS = Key.of("labels", Label.among(Rings.ANY));
  private static final Table TABLE = Table.of("rings", CLOTH, HOOPS, CORD, LABELS);

  /** Articles made of rings under the key {@code rings}. */
  public static final PictureKind KIND =
      PictureKind.of(Key.of("rings", FigureForms.map(TABLE, Rings::read)));

  /** What a hoop's number may come to where it isn't known how many there are. */
  private static final int ANY = 99;

  private static Picture read(Keys keys) {
    List<Hoop> hoops = keys.all(HOOPS);
    int count =
        Optional.ofNullable(keys.node(HOOPS)).flatMap(YamlNode::list).map(List::size).orElse(ANY);
    if (count < 2) {
      keys.report(
          Faults.kind(keys.node(HOOPS).position(), "rings/hoops", "at least two of them"), HOOPS);
    } else if (!hoops.isEmpty() && !keys.amiss(HOOPS) && !hoops.get(0).rows().isEmpty()) {
      Formula row = hoops.get(0).rows().get(0);
      keys.warn(FigureCode.FIGURE_ROWS_ABOVE, row.text().position());
    }
    HungCord hung = keys.get(CORD, HungCord.among(count));
    Entries<Label> named = keys.get(LABELS, Label.among(count));
    Rings rings =
        new Rings(keys.get(CLOTH), hoops, hung, named == null ? List.of() : named.entries());
    return keys.amiss(CLOTH, HOOPS) ? null : rings;
  }

  @Override
  public double largest() {
    return LARGEST;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    List<Oval> ovals = new ArrayList<>();
    hoops.forEach(hoop -> staging.attempt(() -> hoop.stage(staging)).ifPresent(ovals::add));
    Texture texture =
        staging
            .attempt(() -> staging.cloths().texture(staging.names().material(cloth)))
            .orElse(Texture.OTHER);
    if (ovals.size() < hoops.size()) {
      return new RingsScene(texture, List.of(), Optional.empty(), List.of());
    }
    if (rises(ovals)) {
      staging.notice(
          hoops.get(1).level().text().position(),
          FigureCode.FIGURE_HOOPS_UPWARDS,
          "size",
          staging.size());
    }
    List<RingsScene.Hoop> rings = new ArrayList<>();
    for (int i = 0; i < ovals.size(); i++) {
      List<Double> rows = i == 0 ? List.of() : rows(ovals.get(i - 1), ovals.get(i), i, staging);
      rings.add(new RingsScene.Hoop(ovals.get(i), rows, hoops.get(i).printed(staging)));
    }
    List<RingsScene.Label> named = new ArrayList<>();
    for (Label label : labels) {
      staging.attempt(() -> label.stage(staging)).ifPresent(named::add);
    }
    return new RingsScene(
        texture,
        rings,
        Optional.ofNullable(cord).flatMap(one -> staging.attempt(() -> one.stage(staging))),
        named);
  }

  /** Whether every oval lies above the one before; a turned-up brim only rises again. */
  private static boolean rises(List<Oval> ovals) {
    for (int i = 1; i < ovals.size(); i++) {
      if (ovals.get(i).level() <= ovals.get(i - 1).level()) {
        return false;
      }
    }
    return true;
  }

  /** Rows of stitches above a hoop, as shares of the way up to the one above. */
  private List<Double> rows(Oval upper, Oval lower, int hoop, Staging staging) {
    double slope = upper.slope(lower);
    List<Double> shares = new ArrayList<>();
    for (Formula row : hoops.get(hoop).rows()) {
      staging.run(
          () -> {
            if (slope < RingsScene.NOTHING) {
              throw staging.empty(row, "rows");
            }
            shares.add(staging.length(row, 0, slope) / slope);
          });
    }
    return shares;
  }

  @Override
  public List<Formula> clipDepths() {
    return List.of();
  }

  @Override
  public boolean isFinishedArticle() {
    return true;
  }

  @Override
  public Picture unlettered() {
    HungCord bare = cord == null ? null : new HungCord(cord.hoop(), cord.drop(), null);
    return new Rings(cloth, hoops, bare, List.of());
  }

  /**
   * A level oval of an article made of rings.
   *
   * @param round the length round it
   * @param ratio from front to back over from side to side, or null for a circle
   * @param level how high it lies
   * @param rows distances above it, along the cloth, of rows of stitches
   */
  record Hoop(Formula round, Formula ratio, Formula level, List<Formula> rows) {
    private static final Key<Formula> ROUND = Key.required("round", FigureForms.LENGTH);
    private static final Key<Formula> RATIO = Key.of("ratio", FigureForms.PLAIN).unless("1");
    private static final Key<Formula> LEVEL = Key.required("level", FigureForms.LENGTH);
    private static final Key<Entries<Formula>> ROWS =
        Key.of("rows", FigureForms.each(FigureForms.LENGTH));
    private static final Table TABLE = Table.of("hoop", ROUND, RATIO, LEVEL, ROWS);

    private static final double MOST = 10;

    private static Hoop read(Keys keys) {
      List<Formula> rows = keys.all(ROWS);
      if (rows.size() > FigureForms.MOST) {
        throw Faults.of(
            keys.node(ROWS).position(),
            FigureCode.FIGURE_TOO_MANY,
            "limit",
            FigureForms.MOST,
            "what",
            "rows");
      }
      return keys.whole(new Hoop(keys.get(ROUND), keys.get(RATIO), keys.get(LEVEL), rows));
    }

    private Oval stage(Staging staging) {
      double length = staging.length(round, 1, 10_000);
      double stretch = ratio == null ? 1 : staging.number(ratio, "hoop/ratio");
      if (!(stretch >= 1 / MOST && stretch <= MOST)) {
        throw Faults.kind(ratio.text().position(), "hoop/ratio", "a number from 0.1 to 10");
      }
      Box box = StatedShape.oval(length, stretch).outline().bounds();
      return new Oval(box.width() / 2, box.height() / 2, staging.length(level, -5_000, 5_000));
    }

    private String printed(Staging staging) {
      return staging.printed(staging.length(round));
    }
  }

  /**
   * A cord with a clasp, hanging from the two sides of an oval.
   *
   * @param hoop the oval's number, 1 for the first
   * @param drop how far below it the clasp hangs
   * @param text a label, or null
   */
  record HungCord(int hoop, Formula drop, TemplateText text) {
    private static final Key<Integer> HOOP = Key.required("hoop", FigureForms.count(ANY));
    private static final Key<Formula> DROP = Key.required("drop", FigureForms.LENGTH);
    private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
    private static final Table TABLE = Table.of("hung", HOOP, DROP, TEXT);

    private static Form<HungCord> among(int hoops) {
      return FigureForms.map(TABLE, keys -> read(keys, hoops));
    }

    private static HungCord read(Keys keys, int hoops) {
      Integer hoop = keys.get(HOOP, FigureForms.count(hoops));
      return keys.whole(new HungCord(hoop == null ? 1 : hoop, keys.get(DROP), keys.get(TEXT)));
    }

    private RingsScene.Cord stage(Staging staging) {
      double length = staging.length(drop, 1, 5_000);
      Optional<String> words = Optional.ofNullable(text).map(staging::text);
      return new RingsScene.Cord(hoop, length, words);
    }
  }

  /**
   * A label of an article made of rings.
   *
   * @param text the text
   * @param hoop the oval's number, 1 for the first
   * @param at the share of the way round, from the front to the reader's right
   * @param down the share of the way down to the next oval, 0 to 1
   */
  record Label(TemplateText text, int hoop, Formula at, double down) {
    private static final Key<TemplateText> TEXT = Key.required("text", FigureForms.LABEL);
    private static final Key<Integer> HOOP = Key.required("hoop", FigureForms.count(ANY));
    private static final Key<Formula> AT = Key.required("at", FigureForms.SHARE);
    private static final Key<Double> DOWN = Key.of("down", FigureForms.SIMPLE_SHARE).unless("0");
    private static final Table TABLE = Table.of("mark", TEXT, HOOP, AT, DOWN);

    private static Form<Entries<Label>> among(int hoops) {
      return FigureForms.list(TABLE, keys -> read(keys, hoops));
    }

    private static Label read(Keys keys, int hoops) {
      Integer hoop = keys.get(HOOP, FigureForms.count(hoops));
      return keys.whole(
          new Label(keys.get(TEXT), hoop == null ? 1 : hoop, keys.get(AT), keys.or(DOWN, 0.0)));
    }

    private RingsScene.Label stage(Staging staging) {
      double share = staging.share(at, "mark/at");
      return new RingsScene.Label(staging.text(text), hoop, share, down);
    }
  }
}
