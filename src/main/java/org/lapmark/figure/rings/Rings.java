package org.lapmark.figure.rings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.KeyTable;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.panel.StatedShape;
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
  private static final KeyTable KEYS = KeyTable.of("rings", "cloth", "hoops", "cord", "labels");

  /** Articles made of rings under the key {@code rings}. */
  public static final PictureKind KIND =
      new PictureKind("rings", List.of(), keys -> keys.child("rings", KEYS, Rings::read));

  /** What a hoop's number may come to where it isn't known how many there are. */
  private static final int ANY = 99;

  private static Rings read(Keys keys) {
    keys.need("cloth", "hoops");
    List<Hoop> hoops = keys.all("hoops", Hoop.KEYS, Hoop::read);
    int count = keys.get("hoops") instanceof YamlNode.Items items ? items.items().size() : ANY;
    if (count < 2) {
      keys.report(
          Faults.kind(keys.get("hoops").position(), "rings/hoops", "at least two of them"),
          "hoops");
    } else if (!hoops.isEmpty() && !keys.amiss("hoops") && !hoops.get(0).rows().isEmpty()) {
      Formula row = hoops.get(0).rows().get(0);
      keys.warn(FigureCode.FIGURE_ROWS_ABOVE, row.text().position());
    }
    Rings rings =
        new Rings(
            keys.text("cloth"),
            hoops,
            keys.child("cord", HungCord.KEYS, cord -> HungCord.read(cord, count)),
            keys.all("labels", Label.KEYS, label -> Label.read(label, count)));
    return keys.amiss("cloth", "hoops") ? null : rings;
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
    private static final KeyTable KEYS = KeyTable.of("hoop", "round", "ratio", "level", "rows");

    private static final double MOST = 10;

    private static Hoop read(Keys keys) {
      keys.need("round", "level");
      List<Formula> rows = keys.formulas("rows");
      if (rows.size() > Keys.MAX_THINGS) {
        throw Faults.of(
            keys.get("rows").position(),
            FigureCode.FIGURE_TOO_MANY,
            "limit",
            Keys.MAX_THINGS,
            "what",
            "rows");
      }
      return keys.whole(
          new Hoop(keys.formula("round"), keys.formula("ratio"), keys.formula("level"), rows));
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
    private static final KeyTable KEYS = KeyTable.of("hung", "hoop", "drop", "text");

    private static HungCord read(Keys keys, int hoops) {
      keys.need("hoop", "drop");
      return keys.whole(
          new HungCord(keys.count("hoop", hoops), keys.formula("drop"), keys.label("text")));
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
    private static final KeyTable KEYS = KeyTable.of("mark", "text", "hoop", "at", "down");

    private static Label read(Keys keys, int hoops) {
      keys.need("text", "hoop", "at");
      return keys.whole(
          new Label(
              keys.label("text"),
              keys.count("hoop", hoops),
              keys.formula("at"),
              keys.share("down")));
    }

    private RingsScene.Label stage(Staging staging) {
      double share = staging.share(at, "mark/at");
      return new RingsScene.Label(staging.text(text), hoop, share, down);
    }
  }
}
