package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.lapmark.figure.FigureSource.Around;
import org.lapmark.figure.FigureSource.Arrangement;
import org.lapmark.figure.FigureSource.Article;
import org.lapmark.figure.FigureSource.ArticleLabel;
import org.lapmark.figure.FigureSource.ArticleLength;
import org.lapmark.figure.FigureSource.ArticleStraps;
import org.lapmark.figure.FigureSource.ArticleZip;
import org.lapmark.figure.FigureSource.Beside;
import org.lapmark.figure.FigureSource.Clips;
import org.lapmark.figure.FigureSource.Cord;
import org.lapmark.figure.FigureSource.Dimension;
import org.lapmark.figure.FigureSource.Frame;
import org.lapmark.figure.FigureSource.Hoop;
import org.lapmark.figure.FigureSource.HungCord;
import org.lapmark.figure.FigureSource.Label;
import org.lapmark.figure.FigureSource.Layers;
import org.lapmark.figure.FigureSource.LineKind;
import org.lapmark.figure.FigureSource.Measured;
import org.lapmark.figure.FigureSource.Pieces;
import org.lapmark.figure.FigureSource.Place;
import org.lapmark.figure.FigureSource.RingLabel;
import org.lapmark.figure.FigureSource.Rings;
import org.lapmark.figure.FigureSource.Section;
import org.lapmark.figure.FigureSource.SectionDimension;
import org.lapmark.figure.FigureSource.SectionLabel;
import org.lapmark.figure.FigureSource.SectionLayer;
import org.lapmark.figure.FigureSource.SectionPoint;
import org.lapmark.figure.FigureSource.SewnLine;
import org.lapmark.figure.FigureSource.Shown;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.figure.FigureSource.Stitch;
import org.lapmark.figure.FigureSource.Thing;
import org.lapmark.figure.FigureSource.View;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.yaml.YamlCode;
import org.lapmark.source.yaml.YamlNode;
import org.lapmark.source.yaml.YamlParser;

/**
 * Reads a figure's block. The keys, by what they belong to:
 *
 * <ul>
 *   <li>the figure: {@code width} (full, half), {@code caption}, {@code alt}, and {@code frames} (a
 *       list of one to three pictures) or the keys of one picture
 *   <li>a picture: {@code title}, and one of {@code pieces}, {@code layers}, {@code section},
 *       {@code article}, {@code rings}; with pieces also {@code arrange} (row, column, joined)
 *   <li>a piece or layer: {@code piece} (its number) or {@code zip} (its id) with {@code length};
 *       {@code cloth}, {@code side} (right, wrong), {@code reversed} (yes, no), {@code turn} (0,
 *       90, 180, 270 degrees), {@code edge} (along which layers meet, or from which {@code cropped}
 *       counts), {@code cropped} (how much of it is drawn), {@code cut_away} (left, right, above,
 *       below: the side on which a layer is cut away to show those beneath), {@code turned} (edges
 *       whose allowance is folded away), {@code show} (stitching, notches, grain, marks), {@code
 *       name} (a text, yes, no), {@code lines}, {@code labels}, {@code dimensions}, {@code things},
 *       {@code clips}, {@code around}
 *   <li>a line: one of {@code sew}, {@code baste}, {@code topstitch}, {@code edge} with one edge or
 *       a list, or {@code all}; {@code distance}; {@code now} (whether this step does it, yes
 *       unless stated); {@code text}
 *   <li>a label: {@code text} or {@code number}; {@code edge}, {@code along}, {@code inside}
 *   <li>a dimension: one of {@code width} and {@code height} (cut, stitched), {@code along} (an
 *       edge) with {@code from} and {@code to}, {@code allowance} (an edge) with {@code depth};
 *       {@code beside} (above, below, left, right)
 *   <li>a thing: {@code piece}, in its own place or at {@code edge}, {@code along}, {@code inside}
 *       with its top to the edge unless {@code turn} says otherwise; or {@code width} and {@code
 *       length} with {@code edge}, {@code along}, {@code inside}, {@code cropped}; or {@code band}
 *       (an edge along whose raw edge it lies) with {@code width}; {@code cloth}, {@code side},
 *       {@code name}
 *   <li>clips: {@code edge}, {@code every}, {@code depth}, {@code from}, {@code to}, {@code curves}
 *       (yes: on curves only)
 *   <li>around: {@code seam}, {@code start} (an edge that begins where the seam does; needless)
 *   <li>a section: {@code layers} ({@code cloth} or {@code zip}, {@code up}, {@code line}: a list
 *       of pairs of a distance and a level, {@code name}), {@code cords} ({@code at}: the middle of
 *       the fold that it lies in, {@code name}), {@code stitches} ({@code at}, {@code levels}: a
 *       pair, {@code now}, {@code text}), {@code labels} ({@code at}: a pair, {@code text}), {@code
 *       dimensions} ({@code from}, {@code to}, {@code beside})
 *   <li>an article: {@code panel}, {@code length}, {@code start} (an edge), {@code ends} (closed,
 *       open), {@code cloth}, {@code lining}, {@code piping} (yes, no), {@code seams} (a list of
 *       places along the rim), {@code zip} ({@code from}, {@code to}, {@code length}, {@code
 *       open}), {@code straps} ({@code at}, {@code places}, {@code width}, {@code cloth}), {@code
 *       bar}, {@code baste}, {@code dimensions} (length, height, depth), {@code labels} ({@code
 *       text}, {@code rim}, {@code across})
 *   <li>rings, of which a hat is made: {@code cloth}, {@code hoops} (from the top down, each with
 *       {@code round}: the length round it, {@code ratio}: front to back over side to side, {@code
 *       level}: how high it lies, {@code rows}: distances of rows of stitches above it), {@code
 *       cord} ({@code hoop}: the number of the one it hangs from, {@code drop}, {@code text}),
 *       {@code labels} ({@code text}, {@code hoop}, {@code at}: a share of the way round from the
 *       front, {@code down}: a share of the way to the next)
 * </ul>
 */
final class FigureParser {
  /** What a figure can show. */
  private static final List<String> KINDS =
      List.of("pieces", "layers", "section", "article", "rings");

  static final int MAX_FRAMES = 3;
  static final int MAX_THINGS = 40;
  static final int MAX_LABEL = 90;
  static final int MAX_CHARACTERS = 10_000;

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<String> NEEDS_PIECE =
      List.of("cropped", "turned", "show", "lines", "labels", "things", "clips", "around");

  /** What is looked at of a zip. */
  private static final List<String> BESIDE_ZIP =
      List.of("length", "side", "reversed", "turn", "edge", "cut_away", "name", "dimensions");

  /** What is looked at of a piece. */
  private static final List<String> BESIDE_PIECE =
      List.of(
          "cloth",
          "side",
          "reversed",
          "turn",
          "edge",
          "cropped",
          "cut_away",
          "turned",
          "show",
          "name",
          "lines",
          "labels",
          "dimensions",
          "things",
          "clips",
          "around");

  private final Findings findings;

  FigureParser(Findings findings) {
    this.findings = findings;
  }

  Optional<FigureSource> parse(SourceText block) {
    try {
      YamlNode.Entries entries = entries(block);
      return entries == null
          ? Optional.empty()
          : Optional.ofNullable(figure(entries, block.position(0, 1)));
    } catch (FindingException e) {
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /** The block as it stands in its file, from the beginning of its first line. */
  private YamlNode.Entries entries(SourceText block) {
    if (block.text().length() > MAX_CHARACTERS) {
      throw fault(
          block.position(0, 1),
          FigureCode.FIGURE_TOO_LARGE,
          "limit",
          MAX_CHARACTERS,
          "what",
          "characters");
    }
    String content = block.file().content();
    int from = block.offset(0);
    while (from > 0 && content.charAt(from - 1) == ' ') {
      from--;
    }
    int to = block.offset(block.text().length());
    Findings read = new Findings();
    YamlNode.Entries entries = YamlParser.read(block.file(), from, to, Limits.STANDARD, read);
    for (Finding finding : read.sorted()) {
      // Of a block the file's reader could only say that the file itself is no map.
      findings.add(
          finding.code() == YamlCode.ROOT_NOT_MAP
              ? Finding.of(FigureCode.FIGURE_NOT_KEYS, finding.position())
              : finding);
    }
    return entries;
  }

  /** A figure of the pictures that could be read; null if there is none. */
  private FigureSource figure(YamlNode.Entries block, Position position) {
    Keys keys =
        keys(
            block, "figure", "width", "caption", "alt", "frames", "title", "arrange", "pieces",
            "layers", "section", "article", "rings");
    boolean half = keys.word("width", List.of("full", "half"), "full").equals("half");
    TemplateText caption = keys.template("caption");
    TemplateText alternative = keys.template("alt");
    List<Frame> frames = new ArrayList<>();
    if (keys.has("frames")) {
      List<YamlNode> stated = list(keys.get("frames"), "figure/frames");
      if (stated.isEmpty()) {
        throw nothing(keys.get("frames").position(), "figure/frames");
      }
      for (YamlNode frame : stated) {
        attempt(
                () ->
                    frame(
                        keys(
                            frame,
                            "figure/frames",
                            "figure",
                            "title",
                            "arrange",
                            "pieces",
                            "layers",
                            "section",
                            "article",
                            "rings")))
            .ifPresent(frames::add);
      }
      if (stated.size() > MAX_FRAMES) {
        throw fault(
            keys.get("frames").position(),
            FigureCode.FIGURE_TOO_MANY,
            "limit",
            MAX_FRAMES,
            "what",
            "frames");
      }
    } else {
      attempt(() -> frame(keys)).ifPresent(frames::add);
    }
    return frames.isEmpty() ? null : new FigureSource(position, half, caption, alternative, frames);
  }

  /** A picture; null if what else it shows depends on something that couldn’t be read. */
  private Frame frame(Keys keys) {
    List<String> kinds = KINDS.stream().filter(keys::has).toList();
    if (kinds.size() != 1) {
      throw fault(keys.position, FigureCode.FIGURE_KIND, "known", Known.listed(KINDS));
    }
    String kind = kinds.get(0);
    YamlNode block = keys.get(kind);
    TemplateText title = keys.label("title");
    if (!kind.equals("pieces")) {
      keys.idle(kind, List.of("arrange"), List.of("title"));
    }
    return switch (kind) {
      case "pieces" -> {
        Arrangement arrangement = keys.constant("arrange", Arrangement.class, Arrangement.ROW);
        List<View> views = keys.all(kind, node -> view(node, kind));
        yield views.isEmpty() ? null : new Pieces(title, arrangement, views);
      }
      case "layers" -> {
        List<View> views = keys.all(kind, node -> view(node, kind));
        yield keys.amiss(kind) ? null : new Layers(title, views);
      }
      case "section" -> section(title, block);
      case "rings" -> rings(title, block);
      default -> article(title, block);
    };
  }

  private View view(YamlNode block, String what) {
    Keys keys =
        keys(
            block,
            "figure/" + what,
            "view",
            "piece",
            "zip",
            "length",
            "cloth",
            "side",
            "reversed",
            "turn",
            "edge",
            "cropped",
            "cut_away",
            "turned",
            "show",
            "name",
            "lines",
            "labels",
            "dimensions",
            "things",
            "clips",
            "around");
    boolean zip = keys.one("piece", "zip").equals("zip");
    if (zip) {
      keys.need("length");
      for (String key : NEEDS_PIECE) {
        if (keys.has(key)) {
          keys.report(
              fault(keys.get(key).position(), FigureCode.FIGURE_NEEDS_PIECE, "name", key), "zip");
        }
      }
      keys.idle("zip", List.of("cloth"), BESIDE_ZIP);
    } else {
      keys.idle("piece", List.of("length"), BESIDE_PIECE);
      if (keys.has("cropped")) {
        keys.need("edge");
      }
    }
    if (what.equals("pieces")) {
      List<String> idle = keys.has("cropped") ? List.of("cut_away") : List.of("cut_away", "edge");
      keys.idle("pieces", idle, List.of("edge with cropped"));
    }
    String named =
        keys.has("name") && keys.get("name") instanceof YamlNode.Text text
            ? text.text().text()
            : "yes";
    boolean computed =
        named.equals("no")
            || named.equals("yes")
                && !(keys.get("name") instanceof YamlNode.Items)
                && !(keys.get("name") instanceof YamlNode.Entries);
    Set<Shown> shown = EnumSet.noneOf(Shown.class);
    shown.addAll(
        keys.each(
            "show",
            item -> constant(text(item, "view/show"), item.position(), "show", Shown.class)));
    View view =
        new View(
            keys.text("piece"),
            keys.text("zip"),
            keys.formula("length"),
            keys.text("cloth"),
            keys.constant("side", Side.class, Side.RIGHT),
            keys.yes("reversed", false),
            keys.turn(),
            keys.text("edge"),
            keys.formula("cropped"),
            keys.has("cut_away") ? keys.constant("cut_away", Beside.class, Beside.LEFT) : null,
            keys.texts("turned"),
            Collections.unmodifiableSet(shown),
            computed ? null : keys.label("name"),
            !named.equals("no"),
            keys.all("lines", this::line),
            keys.all("labels", this::label),
            keys.all("dimensions", this::dimension),
            keys.all("things", this::thing),
            keys.all("clips", this::clips),
            keys.child("around", this::around));
    // Where everything on it lies depends on these.
    return keys.amiss("piece", "zip", "length", "turn", "edge", "cropped", "cut_away", "turned")
        ? null
        : view;
  }

  private SewnLine line(YamlNode block) {
    Keys keys =
        keys(
            block,
            "view/lines",
            "line",
            "sew",
            "baste",
            "topstitch",
            "edge",
            "distance",
            "now",
            "text");
    String kind = keys.one("sew", "baste", "topstitch", "edge");
    if (kind.equals("baste") || kind.equals("topstitch")) {
      keys.need("distance");
    } else if (kind.equals("edge")) {
      keys.idle(kind, List.of("distance"), List.of("now", "text"));
    }
    return keys.whole(
        new SewnLine(
            LineKind.valueOf(kind.toUpperCase(Locale.ROOT)),
            keys.texts(kind),
            keys.formula("distance"),
            keys.yes("now", true),
            keys.label("text")));
  }

  private Label label(YamlNode block) {
    Keys keys = keys(block, "view/labels", "label", "text", "number", "edge", "along", "inside");
    String kind = keys.one("text", "number");
    int number = 0;
    if (kind.equals("number")) {
      number = keys.count("number", 99);
    }
    return keys.whole(new Label(keys.label("text"), number, place(keys)));
  }

  private static Place place(Keys keys) {
    keys.need("edge");
    return new Place(keys.text("edge"), keys.formula("along"), keys.formula("inside"));
  }

  private Dimension dimension(YamlNode block) {
    Keys keys =
        keys(
            block,
            "view/dimensions",
            "dimension",
            "width",
            "height",
            "along",
            "allowance",
            "from",
            "to",
            "depth",
            "beside");
    String kind = keys.one("width", "height", "along", "allowance");
    boolean overall = kind.equals("width") || kind.equals("height");
    if (overall) {
      keys.idle(kind, List.of("from", "to", "depth"), List.of("beside"));
    } else if (kind.equals("along")) {
      keys.idle(kind, List.of("depth"), List.of("from", "to", "beside"));
    } else {
      keys.idle(kind, List.of("from", "to"), List.of("depth", "beside"));
    }
    return keys.whole(
        new Dimension(
            Measured.valueOf(kind.toUpperCase(Locale.ROOT)),
            overall && keys.word(kind, List.of("cut", "stitched"), "cut").equals("cut"),
            overall ? null : keys.text(kind),
            keys.formula("from"),
            keys.formula("to"),
            keys.formula("depth"),
            keys.constant(
                "beside", Beside.class, kind.equals("height") ? Beside.LEFT : Beside.BELOW),
            keys.position));
  }

  private Thing thing(YamlNode block) {
    Keys keys =
        keys(
            block,
            "view/things",
            "thing",
            "piece",
            "band",
            "cloth",
            "side",
            "width",
            "length",
            "edge",
            "along",
            "inside",
            "turn",
            "cropped",
            "name");
    String kind = keys.one("piece", "band", "length");
    switch (kind) {
      case "piece" ->
          keys.idle(
              kind,
              List.of("width", "cropped"),
              List.of("cloth", "side", "edge", "along", "inside", "turn", "name"));
      case "band" -> {
        keys.need("width");
        keys.need("cloth");
        keys.idle(
            kind,
            List.of("edge", "along", "inside", "turn", "cropped"),
            List.of("width", "cloth", "side", "name"));
      }
      default -> {
        keys.need("width");
        keys.idle(
            kind,
            List.of("turn"),
            List.of("width", "edge", "along", "inside", "cropped", "cloth", "side", "name"));
      }
    }
    boolean placed =
        kind.equals("length")
            || kind.equals("piece")
                && Stream.of("edge", "along", "inside", "turn").anyMatch(keys::has);
    return keys.whole(
        new Thing(
            keys.text("piece"),
            keys.text("band"),
            keys.text("cloth"),
            keys.constant("side", Side.class, Side.RIGHT),
            keys.formula("width"),
            keys.formula("length"),
            placed ? place(keys) : null,
            keys.turn(),
            keys.formula("cropped"),
            keys.label("name")));
  }

  private Clips clips(YamlNode block) {
    Keys keys =
        keys(block, "view/clips", "clips", "edge", "every", "depth", "from", "to", "curves");
    keys.need("edge");
    keys.need("every");
    keys.need("depth");
    return keys.whole(
        new Clips(
            keys.text("edge"),
            keys.formula("every"),
            keys.formula("depth"),
            keys.formula("from"),
            keys.formula("to"),
            keys.yes("curves", false)));
  }

  private Around around(YamlNode block) {
    Keys keys = keys(block, "view/around", "around", "seam", "start");
    keys.need("seam");
    return keys.whole(new Around(keys.text("seam"), keys.text("start")));
  }

  private Section section(TemplateText title, YamlNode block) {
    Keys keys =
        keys(
            block,
            "figure/section",
            "section",
            "layers",
            "cords",
            "stitches",
            "labels",
            "dimensions");
    keys.need("layers");
    Section section =
        new Section(
            title,
            keys.all("layers", this::sectionLayer),
            keys.all("cords", this::cord),
            keys.all("stitches", this::stitch),
            keys.all("labels", this::sectionLabel),
            keys.all("dimensions", this::sectionDimension));
    // Whether a stitch meets cloth depends on all of them.
    return keys.amiss("layers") ? null : section;
  }

  private SectionLayer sectionLayer(YamlNode block) {
    Keys keys = keys(block, "section/layers", "layer", "cloth", "zip", "up", "line", "name");
    boolean zip = keys.one("cloth", "zip").equals("zip");
    keys.text("zip");
    keys.need("line");
    return keys.whole(
        new SectionLayer(
            zip ? null : keys.text("cloth"),
            zip,
            keys.constant("up", Side.class, Side.RIGHT),
            keys.points("line"),
            keys.label("name")));
  }

  private static SectionPoint point(YamlNode block, String what) {
    if (block instanceof YamlNode.Items items && items.items().size() == 2) {
      return new SectionPoint(
          formula(items.items().get(0), what), level(items.items().get(1), what));
    }
    throw kind(block.position(), what, "a distance and a level in brackets");
  }

  private static double level(YamlNode block, String what) {
    String text = text(block, what).text();
    if (!text.matches("\\d{1,2}(\\.\\d{1,3})?") || Double.parseDouble(text) > 20) {
      throw kind(block.position(), what, "a level: a number from 0 to 20");
    }
    return Double.parseDouble(text);
  }

  private Cord cord(YamlNode block) {
    Keys keys = keys(block, "section/cords", "cord", "at", "name");
    keys.need("at");
    return keys.whole(new Cord(keys.point("at"), keys.label("name")));
  }

  private Stitch stitch(YamlNode block) {
    Keys keys = keys(block, "section/stitches", "stitch", "at", "levels", "now", "text");
    keys.need("at");
    keys.need("levels");
    List<Double> levels = keys.levels("levels");
    return keys.whole(
        new Stitch(
            keys.formula("at"),
            levels.get(0),
            levels.get(1),
            keys.yes("now", true),
            keys.label("text")));
  }

  private SectionLabel sectionLabel(YamlNode block) {
    Keys keys = keys(block, "section/labels", "note", "at", "text");
    keys.need("at");
    keys.need("text");
    return keys.whole(new SectionLabel(keys.label("text"), keys.point("at")));
  }

  private SectionDimension sectionDimension(YamlNode block) {
    Keys keys = keys(block, "section/dimensions", "distance", "from", "to", "beside");
    keys.need("from");
    keys.need("to");
    return keys.whole(
        new SectionDimension(
            keys.formula("from"),
            keys.formula("to"),
            keys.word("beside", List.of("above", "below"), "above").equals("above")));
  }

  private Article article(TemplateText title, YamlNode block) {
    Keys keys =
        keys(
            block,
            "figure/article",
            "article",
            "panel",
            "length",
            "start",
            "ends",
            "cloth",
            "lining",
            "piping",
            "seams",
            "zip",
            "straps",
            "bar",
            "baste",
            "dimensions",
            "labels");
    keys.need("panel");
    keys.need("length");
    keys.need("cloth");
    Set<ArticleLength> measured = EnumSet.noneOf(ArticleLength.class);
    measured.addAll(
        keys.each(
            "dimensions",
            item ->
                constant(
                    text(item, "article/dimensions"),
                    item.position(),
                    "dimensions",
                    ArticleLength.class)));
    Article article =
        new Article(
            title,
            keys.text("panel"),
            keys.formula("length"),
            keys.text("start"),
            keys.word("ends", List.of("closed", "open"), "closed").equals("open"),
            keys.text("cloth"),
            keys.text("lining"),
            keys.yes("piping", false),
            keys.each("seams", item -> formula(item, "article/seams")),
            keys.child("zip", this::articleZip),
            keys.child("straps", this::straps),
            keys.formula("bar"),
            keys.formula("baste"),
            Collections.unmodifiableSet(measured),
            keys.all("labels", this::articleLabel));
    return keys.amiss("panel", "length", "start", "cloth") ? null : article;
  }

  private Rings rings(TemplateText title, YamlNode block) {
    Keys keys = keys(block, "figure/rings", "rings", "cloth", "hoops", "cord", "labels");
    keys.need("cloth");
    keys.need("hoops");
    List<Hoop> hoops = keys.all("hoops", this::hoop);
    int count = keys.get("hoops") instanceof YamlNode.Items items ? items.items().size() : 99;
    if (count < 2) {
      keys.report(
          kind(keys.get("hoops").position(), "rings/hoops", "at least two of them"), "hoops");
    } else if (!hoops.isEmpty() && !keys.amiss("hoops") && !hoops.get(0).rows().isEmpty()) {
      findings.add(FigureCode.FIGURE_ROWS_ABOVE, hoops.get(0).rows().get(0).text().position());
    }
    Rings rings =
        new Rings(
            title,
            keys.text("cloth"),
            hoops,
            keys.child("cord", cord -> hungCord(cord, count)),
            keys.all("labels", label -> ringLabel(label, count)));
    return keys.amiss("cloth", "hoops") ? null : rings;
  }

  private Hoop hoop(YamlNode block) {
    Keys keys = keys(block, "rings/hoops", "hoop", "round", "ratio", "level", "rows");
    keys.need("round");
    keys.need("level");
    List<Formula> rows = keys.each("rows", row -> formula(row, "hoop/rows"));
    if (rows.size() > MAX_THINGS) {
      throw fault(
          keys.get("rows").position(),
          FigureCode.FIGURE_TOO_MANY,
          "limit",
          MAX_THINGS,
          "what",
          "rows");
    }
    return keys.whole(
        new Hoop(keys.formula("round"), keys.formula("ratio"), keys.formula("level"), rows));
  }

  private HungCord hungCord(YamlNode block, int hoops) {
    Keys keys = keys(block, "rings/cord", "hung", "hoop", "drop", "text");
    keys.need("hoop");
    keys.need("drop");
    return keys.whole(
        new HungCord(keys.count("hoop", hoops), keys.formula("drop"), keys.label("text")));
  }

  private RingLabel ringLabel(YamlNode block, int hoops) {
    Keys keys = keys(block, "rings/labels", "mark", "text", "hoop", "at", "down");
    keys.need("text");
    keys.need("hoop");
    keys.need("at");
    return keys.whole(
        new RingLabel(
            keys.label("text"), keys.count("hoop", hoops), keys.formula("at"), keys.share("down")));
  }

  private ArticleZip articleZip(YamlNode block) {
    Keys keys = keys(block, "article/zip", "opening", "from", "to", "length", "open");
    keys.need("from");
    keys.need("to");
    keys.need("length");
    return keys.whole(
        new ArticleZip(
            keys.formula("from"), keys.formula("to"), keys.formula("length"), keys.share("open")));
  }

  private ArticleStraps straps(YamlNode block) {
    Keys keys = keys(block, "article/straps", "straps", "at", "places", "width", "cloth");
    for (String key : List.of("at", "places", "width", "cloth")) {
      keys.need(key);
    }
    return keys.whole(
        new ArticleStraps(
            keys.formula("at"),
            keys.each("places", item -> formula(item, "straps/places")),
            keys.formula("width"),
            keys.text("cloth")));
  }

  private ArticleLabel articleLabel(YamlNode block) {
    Keys keys = keys(block, "article/labels", "sign", "text", "rim", "across");
    keys.need("text");
    keys.need("rim");
    return keys.whole(
        new ArticleLabel(keys.label("text"), keys.formula("rim"), keys.formula("across")));
  }

  /** What a reader makes of something; nothing if that can’t be used, which is then reported. */
  private <T> Optional<T> attempt(Supplier<T> reader) {
    try {
      return Optional.ofNullable(reader.get());
    } catch (FindingException e) {
      findings.add(e.finding());
      return Optional.empty();
    }
  }

  /** A list from which everything was taken out may go as well. */
  private static FindingException nothing(Position position, String what) {
    return kind(position, what, "at least one entry, or else leave it out");
  }

  private static List<YamlNode> list(YamlNode block, String what) {
    if (block instanceof YamlNode.Items items) {
      return items.items();
    }
    throw kind(block.position(), what, "a list");
  }

  private static SourceText text(YamlNode block, String what) {
    if (block instanceof YamlNode.Text text && !text.text().text().isBlank()) {
      return text.text();
    }
    throw kind(block.position(), what, "text");
  }

  private static Formula formula(YamlNode block, String what) {
    return Formula.parse(text(block, what));
  }

  private static <E extends Enum<E>> E constant(
      SourceText text, Position position, String key, Class<E> type) {
    List<String> known =
        Arrays.stream(type.getEnumConstants())
            .map(constant -> constant.name().toLowerCase(Locale.ROOT))
            .toList();
    return Enum.valueOf(type, known(text.text(), position, key, known).toUpperCase(Locale.ROOT));
  }

  private static String known(String word, Position position, String key, List<String> known) {
    if (known.contains(word)) {
      return word;
    }
    throw fault(
        position,
        FigureCode.FIGURE_WORD_UNKNOWN,
        "word",
        word,
        "name",
        key,
        "near",
        Nearest.of(word, known).orElse("none"),
        "known",
        Known.listed(known));
  }

  private static FindingException fault(
      Position position, FigureCode code, Object... namesAndValues) {
    return new FindingException(Finding.of(code, position, namesAndValues));
  }

  /**
   * Something of another kind than is needed.
   *
   * @param what the key, with what it belongs to before a slash
   */
  private static FindingException kind(Position position, String what, String needed) {
    return fault(
        position,
        FigureCode.FIGURE_VALUE_KIND,
        "name",
        what.substring(what.indexOf('/') + 1),
        "needed",
        needed,
        "example",
        Examples.of(what));
  }

  /**
   * The keys of a map.
   *
   * @param what the key under which it stands
   * @param where what it is called among the examples
   */
  private Keys keys(YamlNode block, String what, String where, String... known) {
    if (block instanceof YamlNode.Entries entries) {
      return keys(entries, where, known);
    }
    throw kind(block.position(), what, "keys with values");
  }

  /** Unknown and repeated keys are reported and passed over. */
  private Keys keys(YamlNode.Entries block, String where, String... known) {
    Map<String, YamlNode> values = new LinkedHashMap<>();
    Map<String, Position> places = new LinkedHashMap<>();
    Map<String, YamlNode> meant = new LinkedHashMap<>();
    for (YamlNode.Entry entry : block.entries()) {
      String key = entry.key().text().text();
      if (!List.of(known).contains(key)) {
        Optional<String> near = Nearest.of(key, List.of(known));
        near.ifPresent(one -> meant.putIfAbsent(one, entry.value()));
        findings.add(
            FigureCode.FIGURE_KEY_UNKNOWN,
            entry.key().position(),
            "name",
            key,
            "near",
            near.orElse("none"),
            "known",
            Known.listed(List.of(known)));
      } else if (values.putIfAbsent(key, entry.value()) != null) {
        findings.add(FigureCode.FIGURE_KEY_TWICE, entry.key().position(), "name", key);
      } else {
        places.put(key, entry.key().position());
      }
    }
    // What stands under a mistyped key is read as what was meant, so that nothing else is amiss.
    meant.forEach(values::putIfAbsent);
    return new Keys(block.position(), where, values, places);
  }

  /**
   * The values of a map by key. What is amiss with one is reported, and it is taken as not stated,
   * so that the others are read as well.
   */
  private final class Keys {
    private final Position position;
    private final String where;
    private final Map<String, YamlNode> values;
    private final Map<String, Position> places;
    private final Set<String> amiss = new LinkedHashSet<>();

    Keys(
        Position position,
        String where,
        Map<String, YamlNode> values,
        Map<String, Position> places) {
      this.position = position;
      this.where = where;
      this.values = values;
      this.places = places;
    }

    boolean has(String key) {
      return values.containsKey(key);
    }

    YamlNode get(String key) {
      return values.get(key);
    }

    void need(String key) {
      if (!has(key)) {
        report(fault(position, FigureCode.FIGURE_KEY_MISSING, "name", key), key);
      }
    }

    /** Whether something was reported of one of these. */
    boolean amiss(String... keys) {
      return Arrays.stream(keys).anyMatch(amiss::contains);
    }

    void report(FindingException fault, String key) {
      findings.add(fault.finding());
      amiss.add(key);
    }

    /** An entry of which everything could be read, or else null. */
    <T> T whole(T entry) {
      return amiss.isEmpty() ? entry : null;
    }

    /** Warns of keys that are there and aren’t looked at, as another one is there. */
    void idle(String with, List<String> keys, List<String> known) {
      for (String key : keys) {
        if (places.containsKey(key)) {
          findings.add(
              FigureCode.FIGURE_KEY_IDLE,
              places.get(key),
              "name",
              key,
              "with",
              with,
              "known",
              Known.listed(known));
        }
      }
    }

    /** The one of several keys that is there. */
    String one(String... keys) {
      List<String> there = Arrays.stream(keys).filter(this::has).toList();
      if (there.isEmpty()) {
        throw fault(
            position, FigureCode.FIGURE_KEY_MISSING, "name", listed(Arrays.asList(keys), " or "));
      }
      if (there.size() > 1) {
        throw fault(
            places.getOrDefault(there.get(1), position),
            FigureCode.FIGURE_KEYS_TOGETHER,
            "names",
            listed(there, " and "));
      }
      return there.get(0);
    }

    /** Keys for a message, which sets the outermost quotes. */
    private static String listed(List<String> keys, String last) {
      int most = keys.size() - 1;
      return most == 0
          ? keys.get(0)
          : String.join("’, ‘", keys.subList(0, most)) + "’" + last + "‘" + keys.get(most);
    }

    private String what(String key) {
      return where + "/" + key;
    }

    private <T> T read(String key, T otherwise, Function<YamlNode, T> reader) {
      if (!has(key)) {
        return otherwise;
      }
      try {
        return reader.apply(get(key));
      } catch (FindingException e) {
        report(e, key);
        return otherwise;
      }
    }

    SourceText text(String key) {
      return read(key, null, node -> FigureParser.text(node, what(key)));
    }

    Formula formula(String key) {
      return read(key, null, node -> FigureParser.formula(node, what(key)));
    }

    TemplateText template(String key) {
      return read(
          key, null, node -> TemplateText.parse(FigureParser.text(node, what(key)), findings));
    }

    TemplateText label(String key) {
      TemplateText text = template(key);
      if (text != null && text.source().text().length() > MAX_LABEL) {
        findings.add(
            FigureCode.FIGURE_LABEL_TOO_LONG,
            get(key).position(),
            "count",
            text.source().text().length(),
            "limit",
            MAX_LABEL);
      }
      return text;
    }

    boolean yes(String key, boolean otherwise) {
      return word(key, List.of("yes", "no"), otherwise ? "yes" : "no").equals("yes");
    }

    int turn() {
      return Integer.parseInt(word("turn", List.of("0", "90", "180", "270"), "0"));
    }

    String word(String key, List<String> known, String otherwise) {
      return read(
          key,
          otherwise,
          node -> known(FigureParser.text(node, what(key)).text(), node.position(), key, known));
    }

    <E extends Enum<E>> E constant(String key, Class<E> type, E otherwise) {
      return read(
          key,
          otherwise,
          node ->
              FigureParser.constant(
                  FigureParser.text(node, what(key)), node.position(), key, type));
    }

    /** A whole number from 1 on. */
    int count(String key, int most) {
      return read(
          key,
          1,
          node -> {
            String text = FigureParser.text(node, what(key)).text();
            if (!text.matches("[1-9]\\d?") || Integer.parseInt(text) > most) {
              throw kind(node.position(), what(key), "a number from 1 to " + most);
            }
            return Integer.parseInt(text);
          });
    }

    /** A number from 0 to 1; 0 unless stated. */
    double share(String key) {
      return read(
          key,
          0.0,
          node -> {
            String text = FigureParser.text(node, what(key)).text();
            if (!text.matches("0(\\.\\d+)?|1(\\.0+)?")) {
              throw kind(node.position(), what(key), "a number from 0 to 1");
            }
            return Double.parseDouble(text);
          });
    }

    SectionPoint point(String key) {
      return read(key, null, node -> FigureParser.point(node, what(key)));
    }

    List<SectionPoint> points(String key) {
      return read(
          key,
          List.of(),
          node -> {
            List<YamlNode> stated = list(node, what(key));
            if (stated.size() < 2) {
              throw kind(
                  node.position(),
                  what(key),
                  "at least two points, each a distance and a level in brackets");
            }
            return each(key, stated, point -> FigureParser.point(point, what(key)));
          });
    }

    List<Double> levels(String key) {
      return read(
          key,
          List.of(0.0, 0.0),
          node -> {
            List<YamlNode> stated = list(node, what(key));
            if (stated.size() != 2) {
              throw kind(node.position(), what(key), "two levels in brackets");
            }
            return stated.stream().map(level -> level(level, what(key))).toList();
          });
    }

    <T> T child(String key, Function<YamlNode, T> reader) {
      return read(key, null, reader);
    }

    /** Those of some values that can be read. */
    private <T> List<T> each(String key, List<YamlNode> items, Function<YamlNode, T> reader) {
      List<T> read = new ArrayList<>();
      for (YamlNode item : items) {
        Optional<T> one = attempt(() -> reader.apply(item));
        if (one.isEmpty()) {
          amiss.add(key);
        }
        one.ifPresent(read::add);
      }
      return read;
    }

    /** Those of a list, or of a single value as a list of one, that can be read. */
    <T> List<T> each(String key, Function<YamlNode, T> reader) {
      if (!has(key)) {
        return List.of();
      }
      return each(
          key,
          get(key) instanceof YamlNode.Items items ? items.items() : List.of(get(key)),
          reader);
    }

    List<SourceText> texts(String key) {
      return each(key, item -> FigureParser.text(item, what(key)));
    }

    /** Those entries of a list that can be read; the key is amiss if one can’t. */
    <T> List<T> all(String key, Function<YamlNode, T> reader) {
      return read(
          key,
          List.of(),
          node -> {
            List<YamlNode> items = list(node, what(key));
            if (items.isEmpty()) {
              throw nothing(node.position(), what(key));
            }
            if (items.size() > MAX_THINGS) {
              throw fault(
                  node.position(), FigureCode.FIGURE_TOO_MANY, "limit", MAX_THINGS, "what", key);
            }
            return each(key, items, reader);
          });
    }
  }
}
