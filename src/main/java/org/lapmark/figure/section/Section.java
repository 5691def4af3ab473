package org.lapmark.figure.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.read.Values;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/**
 * A section through layers.
 *
 * @param layers the layers
 * @param cords cords between them
 * @param stitches where it is sewn
 * @param labels further labels
 * @param dimensions distances along it
 */
public record Section(
    List<Layer> layers,
    List<Cord> cords,
    List<Stitch> stitches,
    List<Label> labels,
    List<Distance> dimensions)
    implements Picture {
  private static final Key<Entries<Layer>> LAYERS =
      Key.required("layers", FigureForms.list(Layer.TABLE, Layer::read));
  private static final Key<Entries<Cord>> CORDS =
      Key.of("cords", FigureForms.list(Cord.TABLE, Cord::read));
  private static final Key<Entries<Stitch>> STITCHES =
      Key.of("stitches", FigureForms.list(Stitch.TABLE, Stitch::read));
  private static final Key<Entries<Label>> LABELS =
      Key.of("labels", FigureForms.list(Label.TABLE, Label::read));
  private static final Key<Entries<Distance>> DIMENSIONS =
      Key.of("dimensions", FigureForms.list(Distance.TABLE, Distance::read));
  private static final Table TABLE =
      Table.of("section", LAYERS, CORDS, STITCHES, LABELS, DIMENSIONS);

  /** Sections under the key {@code section}. */
  public static final PictureKind KIND =
      PictureKind.of(Key.of("section", FigureForms.map(TABLE, Section::read)));

  /** Thickness is drawn large, so that distances may be, too. */
  private static final double LARGEST_SECTION = 3;

  /** In millimetres of cloth. */
  private static final double NOTHING = 1e-3;

  private static Picture read(Keys keys) {
    Section section =
        new Section(
            keys.all(LAYERS),
            keys.all(CORDS),
            keys.all(STITCHES),
            keys.all(LABELS),
            keys.all(DIMENSIONS));
    // Whether a stitch meets cloth depends on all of them.
    return keys.amiss(LAYERS) ? null : section;
  }

  @Override
  public double largest() {
    return LARGEST_SECTION;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    List<SectionScene.Layer> drawn = new ArrayList<>();
    layers.forEach(
        layer -> staging.attempt(() -> layer.stage(staging, scale)).ifPresent(drawn::add));
    // Where not all layers can be drawn, something may only seem to lie off them.
    boolean complete = drawn.size() == layers.size();
    Reach reach =
        new Reach(staging, complete ? SectionScene.lines(drawn, scale) : List.of(), scale);
    return new SectionScene(
        each(cords, cord -> cord.stage(staging), staging),
        drawn,
        each(stitches, stitch -> stitch.stage(staging, reach), staging),
        each(labels, label -> label.stage(staging, reach), staging),
        each(dimensions, one -> one.stage(staging, reach), staging),
        List.of(),
        staging.words().word("section.note"));
  }

  private static <A, B> List<B> each(List<A> stated, Function<A, B> stager, Staging staging) {
    List<B> all = new ArrayList<>();
    stated.forEach(one -> staging.attempt(() -> stager.apply(one)).ifPresent(all::add));
    return all;
  }

  @Override
  public List<Formula> clipDepths() {
    return List.of();
  }

  @Override
  public boolean isFinishedArticle() {
    return false;
  }

  @Override
  public Picture unlettered() {
    return this;
  }

  /**
   * What is stated of a section lies between its layers' ends; looked at where all layers are
   * known.
   *
   * @param lines the layers' lines on paper; none where they aren't all known
   */
  private record Reach(Staging staging, List<Path> lines, double scale) {
    void check(Formula stated, double along) {
      double x = along * scale;
      if (!lines.isEmpty()
          && (x < least() - SectionScene.BESIDE || x > most() + SectionScene.BESIDE)) {
        throw off(stated, along);
      }
    }

    private double least() {
      return lines.stream().mapToDouble(line -> line.bounds().minX()).min().orElse(0);
    }

    private double most() {
      return lines.stream().mapToDouble(line -> line.bounds().maxX()).max().orElse(0);
    }

    FindingException off(Formula stated, double along) {
      return Faults.of(
          stated.text().position(),
          FigureCode.FIGURE_OFF_LAYERS,
          "value",
          Staging.hundredth(along),
          "size",
          staging.size(),
          "least",
          Staging.hundredth(least() / scale),
          "most",
          Staging.hundredth(most() / scale));
    }
  }

  /**
   * A layer of a section, drawn along a line with rounded bends.
   *
   * @param cloth the material's id, or null for a zip's tape
   * @param up which side faces up at its beginning
   * @param line points: a distance along the section and a level counted from the top
   * @param name its name, or null for the computed one
   */
  record Layer(SourceText cloth, Side up, List<SectionPoint> line, TemplateText name) {
    private static final Form<Entries<SectionPoint>> POINTS =
        new Form<>(
            "list of points",
            Forms.schema("type", "array", "minItems", 2, "items", SectionPoint.FORM.schema()),
            List.of(),
            (reading, node, what) -> points(reading, node, what));
    private static final Key<SourceText> CLOTH = Key.of("cloth", FigureForms.NAME);
    private static final Key<SourceText> ZIP = Key.of("zip", FigureForms.ANY.shown("yes"));
    private static final Key<Side> UP =
        Key.of("up", FigureForms.constant(Side.class)).unless("right");
    private static final Key<Entries<SectionPoint>> LINE = Key.required("line", POINTS);
    private static final Key<TemplateText> NAME = Key.of("name", FigureForms.LABEL);
    private static final Table TABLE =
        Table.of("layer", CLOTH, ZIP, UP, LINE, NAME).oneOf(Choice.among(List.of(CLOTH, ZIP)));

    private static Layer read(Keys keys) {
      keys.one();
      keys.get(ZIP);
      return keys.whole(
          new Layer(keys.get(CLOTH), keys.or(UP, Side.RIGHT), keys.all(LINE), keys.get(NAME)));
    }

    private static Entries<SectionPoint> points(Reading reading, YamlNode node, String what) {
      List<YamlNode> stated = Values.list(node, what);
      if (stated.size() < 2) {
        throw Faults.kind(
            node.position(), what, "at least two points, each a distance and a level in brackets");
      }
      return FigureForms.entries(stated, one -> SectionPoint.read(one, what), reading.findings());
    }

    private SectionScene.Layer stage(Staging staging, double scale) {
      Optional<Texture> texture =
          Optional.ofNullable(cloth)
              .map(id -> staging.cloths().texture(staging.names().material(id)));
      List<SectionScene.Spot> spots = line.stream().map(point -> point.stage(staging)).toList();
      SectionScene.Layer bare = new SectionScene.Layer(texture, up, spots, "");
      if (bare.centre(scale).size() < 2) {
        throw staging.empty(line.get(1).along(), "line");
      }
      // Without its name the layer is known all the same.
      String words = staging.attempt(() -> name(staging)).orElse("");
      return new SectionScene.Layer(texture, up, spots, words);
    }

    private String name(Staging staging) {
      if (name != null) {
        return staging.text(name);
      }
      return cloth == null ? staging.words().word("zip.tape") : staging.cloths().name(cloth.text());
    }
  }

  /**
   * A cord in a section.
   *
   * @param bend the middle of the fold, two levels high and turning back, that it lies in
   * @param name its name, or null
   */
  record Cord(SectionPoint bend, TemplateText name) {
    private static final Key<SectionPoint> AT = Key.required("at", SectionPoint.FORM);
    private static final Key<TemplateText> NAME = Key.of("name", FigureForms.LABEL);
    private static final Table TABLE = Table.of("cord", AT, NAME);

    private static Cord read(Keys keys) {
      return keys.whole(new Cord(keys.get(AT), keys.get(NAME)));
    }

    private SectionScene.Label stage(Staging staging) {
      SectionScene.Spot at = bend.stage(staging);
      return new SectionScene.Label(
          name == null ? staging.words().word("cord") : staging.text(name), at);
    }
  }

  /**
   * Stitches through a section.
   *
   * @param at where
   * @param from the upper level
   * @param to the lower level
   * @param now whether this step sews them
   * @param text a label, or null
   */
  record Stitch(Formula at, double from, double to, boolean now, TemplateText text) {
    private static final Key<Formula> AT = Key.required("at", FigureForms.LENGTH);
    private static final Key<List<Double>> LEVELS =
        Key.required(
            "levels",
            Forms.special(
                "two levels in brackets",
                Forms.schema(
                    "type",
                    "array",
                    "minItems",
                    2,
                    "maxItems",
                    2,
                    "items",
                    Forms.schema("type", "number")),
                (reading, node, what) -> levels(node, what)));
    private static final Key<Boolean> NOW = Key.of("now", FigureForms.YES).unless("yes");
    private static final Key<TemplateText> TEXT = Key.of("text", FigureForms.LABEL);
    private static final Table TABLE = Table.of("stitch", AT, LEVELS, NOW, TEXT);

    private static Stitch read(Keys keys) {
      List<Double> levels = keys.or(LEVELS, List.of(0.0, 0.0));
      return keys.whole(
          new Stitch(
              keys.get(AT), levels.get(0), levels.get(1), keys.or(NOW, true), keys.get(TEXT)));
    }

    private static List<Double> levels(YamlNode node, String what) {
      List<YamlNode> stated = Values.list(node, what);
      if (stated.size() != 2) {
        throw Faults.kind(node.position(), what, "two levels in brackets");
      }
      return stated.stream().map(one -> SectionPoint.level(one, what)).toList();
    }

    private SectionScene.Stitch stage(Staging staging, Reach reach) {
      double along = SectionPoint.distance(at, staging);
      SectionScene.Stitch bare = new SectionScene.Stitch(along, from, to, now, Optional.empty());
      if (!reach.lines.isEmpty() && !bare.meets(reach.lines, reach.scale)) {
        throw reach.off(at, along);
      }
      Optional<String> words = Optional.ofNullable(text).map(staging::text);
      return new SectionScene.Stitch(along, from, to, now, words);
    }
  }

  /**
   * A label of a section.
   *
   * @param text the text
   * @param at what it names
   */
  record Label(TemplateText text, SectionPoint at) {
    private static final Key<SectionPoint> AT = Key.required("at", SectionPoint.FORM);
    private static final Key<TemplateText> TEXT = Key.required("text", FigureForms.LABEL);
    private static final Table TABLE = Table.of("note", AT, TEXT);

    private static Label read(Keys keys) {
      return keys.whole(new Label(keys.get(TEXT), keys.get(AT)));
    }

    private SectionScene.Label stage(Staging staging, Reach reach) {
      SectionScene.Spot spot = at.stage(staging);
      reach.check(at.along(), spot.along());
      return new SectionScene.Label(staging.text(text), spot);
    }
  }

  /**
   * A distance along a section.
   *
   * @param from where it begins
   * @param to where it ends
   * @param above whether it stands above
   */
  record Distance(Formula from, Formula to, boolean above) {
    private static final Key<Formula> FROM = Key.required("from", FigureForms.LENGTH);
    private static final Key<Formula> TO = Key.required("to", FigureForms.LENGTH);
    private static final Key<String> BESIDE =
        Key.of("beside", FigureForms.words("above", "below")).unless("above");
    private static final Table TABLE = Table.of("distance", FROM, TO, BESIDE);

    private static Distance read(Keys keys) {
      boolean above = keys.or(BESIDE, "above").equals("above");
      return keys.whole(new Distance(keys.get(FROM), keys.get(TO), above));
    }

    private SectionScene.Distance stage(Staging staging, Reach reach) {
      double first = SectionPoint.distance(from, staging);
      double last = SectionPoint.distance(to, staging);
      if (Math.abs(last - first) < NOTHING) {
        throw staging.empty(to, "dimensions");
      }
      reach.check(from, first);
      reach.check(to, last);
      return new SectionScene.Distance(
          first, last, above, staging.dimension(to.text().position(), Math.abs(last - first)));
    }
  }
}
