package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
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
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;
import org.lapmark.source.Limits;
import org.lapmark.source.YamlNode;
import org.lapmark.source.YamlParser;

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
 *       whose allowance is folded away), {@code show} (stitching, notches, grain), {@code name} (a
 *       text, yes, no), {@code lines}, {@code labels}, {@code dimensions}, {@code things}, {@code
 *       clips}, {@code around}
 *   <li>a line: one of {@code sew}, {@code baste}, {@code topstitch}, {@code edge} with one edge or
 *       a list, or {@code all}; {@code distance}; {@code now} (whether this step does it, yes
 *       unless stated); {@code text}
 *   <li>a label: {@code text} or {@code number}; {@code edge}, {@code along}, {@code inside}
 *   <li>a dimension: one of {@code width} and {@code height} (cut, stitched), {@code along} (an
 *       edge) with {@code from} and {@code to}, {@code allowance} (an edge) with {@code depth};
 *       {@code beside} (above, below, left, right)
 *   <li>a thing: {@code piece}; or {@code width} and {@code length} with {@code edge}, {@code
 *       along}, {@code inside}, {@code cropped}; or {@code band} (an edge along whose raw edge it
 *       lies) with {@code width}; {@code cloth}, {@code side}, {@code name}
 *   <li>clips: {@code edge}, {@code every}, {@code depth}, {@code from}, {@code to}, {@code curves}
 *       (yes: on curves only)
 *   <li>around: {@code seam}, {@code start} (an edge)
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
  static final int MAX_FRAMES = 3;
  static final int MAX_THINGS = 40;
  static final int MAX_LABEL = 90;
  static final int MAX_CHARACTERS = 10_000;

  /** What a zip, which has neither edges nor an allowance, can't have. */
  private static final List<String> NEEDS_PIECE =
      List.of("cropped", "turned", "show", "lines", "labels", "things", "clips", "around");

  private final Findings findings;

  FigureParser(Findings findings) {
    this.findings = findings;
  }

  Optional<FigureSource> parse(SourceText block) {
    try {
      YamlNode.Entries entries = entries(block);
      return entries == null
          ? Optional.empty()
          : Optional.of(figure(entries, block.position(0, 1)));
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
    return YamlParser.read(block.file(), from, to, Limits.STANDARD, findings);
  }

  private FigureSource figure(YamlNode.Entries block, Position position) {
    Keys keys =
        keys(
            block, "width", "caption", "alt", "frames", "title", "arrange", "pieces", "layers",
            "section", "article", "rings");
    List<Frame> frames = new ArrayList<>();
    if (keys.has("frames")) {
      for (YamlNode frame : list(keys.get("frames"), "frames")) {
        frames.add(
            frame(
                keys(
                    frame, "frames", "title", "arrange", "pieces", "layers", "section", "article",
                    "rings")));
      }
      if (frames.isEmpty() || frames.size() > MAX_FRAMES) {
        throw fault(
            keys.get("frames").position(),
            FigureCode.FIGURE_TOO_MANY,
            "limit",
            MAX_FRAMES,
            "what",
            "frames");
      }
    } else {
      frames.add(frame(keys));
    }
    return new FigureSource(
        position,
        keys.word("width", List.of("full", "half"), "full").equals("half"),
        keys.template("caption"),
        keys.template("alt"),
        frames);
  }

  private Frame frame(Keys keys) {
    List<String> kinds =
        List.of("pieces", "layers", "section", "article", "rings").stream()
            .filter(keys::has)
            .toList();
    if (kinds.size() != 1) {
      throw fault(keys.position, FigureCode.FIGURE_KIND);
    }
    YamlNode block = keys.get(kinds.get(0));
    TemplateText title = keys.label("title");
    return switch (kinds.get(0)) {
      case "pieces" ->
          new Pieces(
              title,
              keys.constant("arrange", Arrangement.class, Arrangement.ROW),
              all(block, "pieces", node -> view(node, "pieces")));
      case "layers" -> new Layers(title, all(block, "layers", node -> view(node, "layers")));
      case "section" -> section(title, block);
      case "rings" -> rings(title, block);
      default -> article(title, block);
    };
  }

  private View view(YamlNode block, String what) {
    Keys keys =
        keys(
            block,
            what,
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
    if (keys.has("piece") == keys.has("zip")) {
      throw fault(keys.position, FigureCode.FIGURE_KEY_MISSING, "name", "piece");
    }
    if (keys.has("zip")) {
      keys.need("length");
      for (String key : NEEDS_PIECE) {
        if (keys.has(key)) {
          throw fault(keys.get(key).position(), FigureCode.FIGURE_NEEDS_PIECE, "name", key);
        }
      }
    }
    String named =
        keys.has("name") && keys.get("name") instanceof YamlNode.Text text
            ? text.text().text()
            : "yes";
    boolean computed = named.equals("yes") || named.equals("no");
    Set<Shown> shown = EnumSet.noneOf(Shown.class);
    keys.items("show")
        .forEach(
            item -> shown.add(constant(text(item, "show"), item.position(), "show", Shown.class)));
    return new View(
        keys.text("piece"),
        keys.text("zip"),
        keys.formula("length"),
        keys.text("cloth"),
        keys.constant("side", Side.class, Side.RIGHT),
        keys.yes("reversed", false),
        Integer.parseInt(keys.word("turn", List.of("0", "90", "180", "270"), "0")),
        keys.text("edge"),
        keys.formula("cropped"),
        keys.has("cut_away") ? keys.constant("cut_away", Beside.class, Beside.LEFT) : null,
        texts(keys, "turned"),
        Collections.unmodifiableSet(shown),
        computed ? null : keys.label("name"),
        !named.equals("no"),
        keys.all("lines", this::line),
        keys.all("labels", this::label),
        keys.all("dimensions", this::dimension),
        keys.all("things", this::thing),
        keys.all("clips", this::clips),
        keys.has("around") ? around(keys.get("around")) : null);
  }

  private SewnLine line(YamlNode block) {
    Keys keys =
        keys(block, "lines", "sew", "baste", "topstitch", "edge", "distance", "now", "text");
    String kind = keys.one("sew", "baste", "topstitch", "edge");
    if (kind.equals("baste") || kind.equals("topstitch")) {
      keys.need("distance");
    }
    return new SewnLine(
        LineKind.valueOf(kind.toUpperCase(Locale.ROOT)),
        texts(keys, kind),
        keys.formula("distance"),
        keys.yes("now", true),
        keys.label("text"));
  }

  private Label label(YamlNode block) {
    Keys keys = keys(block, "labels", "text", "number", "edge", "along", "inside");
    String kind = keys.one("text", "number");
    int number = 0;
    if (kind.equals("number")) {
      SourceText text = keys.text("number");
      if (!text.text().matches("[1-9]\\d?")) {
        throw fault(
            keys.get("number").position(),
            FigureCode.FIGURE_VALUE_KIND,
            "name",
            "number",
            "needed",
            "a number from 1 to 99");
      }
      number = Integer.parseInt(text.text());
    }
    return new Label(keys.label("text"), number, place(keys));
  }

  private Place place(Keys keys) {
    keys.need("edge");
    return new Place(keys.text("edge"), keys.formula("along"), keys.formula("inside"));
  }

  private Dimension dimension(YamlNode block) {
    Keys keys =
        keys(
            block,
            "dimensions",
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
    return new Dimension(
        Measured.valueOf(kind.toUpperCase(Locale.ROOT)),
        overall && keys.word(kind, List.of("cut", "stitched"), "cut").equals("cut"),
        overall ? null : keys.text(kind),
        keys.formula("from"),
        keys.formula("to"),
        keys.formula("depth"),
        keys.constant("beside", Beside.class, kind.equals("height") ? Beside.LEFT : Beside.BELOW),
        keys.position);
  }

  private Thing thing(YamlNode block) {
    Keys keys =
        keys(
            block, "things", "piece", "band", "cloth", "side", "width", "length", "edge", "along",
            "inside", "cropped", "name");
    String kind = keys.one("piece", "band", "length");
    if (!kind.equals("piece")) {
      keys.need("width");
    }
    if (kind.equals("band")) {
      keys.need("cloth");
    }
    return new Thing(
        keys.text("piece"),
        keys.text("band"),
        keys.text("cloth"),
        keys.constant("side", Side.class, Side.RIGHT),
        keys.formula("width"),
        keys.formula("length"),
        kind.equals("length") ? place(keys) : null,
        keys.formula("cropped"),
        keys.label("name"));
  }

  private Clips clips(YamlNode block) {
    Keys keys = keys(block, "clips", "edge", "every", "depth", "from", "to", "curves");
    keys.need("edge");
    keys.need("every");
    keys.need("depth");
    return new Clips(
        keys.text("edge"),
        keys.formula("every"),
        keys.formula("depth"),
        keys.formula("from"),
        keys.formula("to"),
        keys.yes("curves", false));
  }

  private Around around(YamlNode block) {
    Keys keys = keys(block, "around", "seam", "start");
    keys.need("seam");
    keys.need("start");
    return new Around(keys.text("seam"), keys.text("start"));
  }

  private Section section(TemplateText title, YamlNode block) {
    Keys keys = keys(block, "section", "layers", "cords", "stitches", "labels", "dimensions");
    keys.need("layers");
    return new Section(
        title,
        keys.all("layers", this::sectionLayer),
        keys.all("cords", this::cord),
        keys.all("stitches", this::stitch),
        keys.all("labels", this::sectionLabel),
        keys.all("dimensions", this::sectionDimension));
  }

  private SectionLayer sectionLayer(YamlNode block) {
    Keys keys = keys(block, "layers", "cloth", "zip", "up", "line", "name");
    boolean zip = keys.one("cloth", "zip").equals("zip");
    keys.need("line");
    List<SectionPoint> line = new ArrayList<>();
    for (YamlNode point : list(keys.get("line"), "line")) {
      line.add(point(point, "line"));
    }
    if (line.size() < 2) {
      throw fault(
          keys.get("line").position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          "line",
          "needed",
          "at least two points, each a distance and a level in brackets");
    }
    return new SectionLayer(
        zip ? null : keys.text("cloth"),
        zip,
        keys.constant("up", Side.class, Side.RIGHT),
        line,
        keys.label("name"));
  }

  private SectionPoint point(YamlNode block, String what) {
    if (block instanceof YamlNode.Items items && items.items().size() == 2) {
      return new SectionPoint(
          formula(items.items().get(0), what), level(items.items().get(1), what));
    }
    throw fault(
        block.position(),
        FigureCode.FIGURE_VALUE_KIND,
        "name",
        what,
        "needed",
        "a distance and a level in brackets");
  }

  private double level(YamlNode block, String what) {
    String text = text(block, what).text();
    if (!text.matches("\\d{1,2}(\\.\\d{1,3})?")) {
      throw fault(
          block.position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          what,
          "needed",
          "a level: a number from 0 to 20");
    }
    double level = Double.parseDouble(text);
    if (level > 20) {
      throw fault(
          block.position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          what,
          "needed",
          "a level: a number from 0 to 20");
    }
    return level;
  }

  private Cord cord(YamlNode block) {
    Keys keys = keys(block, "cords", "at", "name");
    keys.need("at");
    return new Cord(point(keys.get("at"), "at"), keys.label("name"));
  }

  private Stitch stitch(YamlNode block) {
    Keys keys = keys(block, "stitches", "at", "levels", "now", "text");
    keys.need("at");
    keys.need("levels");
    List<YamlNode> levels = list(keys.get("levels"), "levels");
    if (levels.size() != 2) {
      throw fault(
          keys.get("levels").position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          "levels",
          "needed",
          "two levels in brackets");
    }
    return new Stitch(
        keys.formula("at"),
        level(levels.get(0), "levels"),
        level(levels.get(1), "levels"),
        keys.yes("now", true),
        keys.label("text"));
  }

  private SectionLabel sectionLabel(YamlNode block) {
    Keys keys = keys(block, "labels", "at", "text");
    keys.need("at");
    keys.need("text");
    return new SectionLabel(keys.label("text"), point(keys.get("at"), "at"));
  }

  private SectionDimension sectionDimension(YamlNode block) {
    Keys keys = keys(block, "dimensions", "from", "to", "beside");
    keys.need("from");
    keys.need("to");
    return new SectionDimension(
        keys.formula("from"),
        keys.formula("to"),
        keys.word("beside", List.of("above", "below"), "above").equals("above"));
  }

  private Article article(TemplateText title, YamlNode block) {
    Keys keys =
        keys(
            block,
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
    keys.items("dimensions")
        .forEach(
            item ->
                measured.add(
                    constant(
                        text(item, "dimensions"),
                        item.position(),
                        "dimensions",
                        ArticleLength.class)));
    List<Formula> seams = new ArrayList<>();
    keys.items("seams").forEach(item -> seams.add(formula(item, "seams")));
    return new Article(
        title,
        keys.text("panel"),
        keys.formula("length"),
        keys.text("start"),
        keys.word("ends", List.of("closed", "open"), "closed").equals("open"),
        keys.text("cloth"),
        keys.text("lining"),
        keys.yes("piping", false),
        seams,
        keys.has("zip") ? articleZip(keys.get("zip")) : null,
        keys.has("straps") ? straps(keys.get("straps")) : null,
        keys.formula("bar"),
        keys.formula("baste"),
        Collections.unmodifiableSet(measured),
        keys.all("labels", this::articleLabel));
  }

  private Rings rings(TemplateText title, YamlNode block) {
    Keys keys = keys(block, "rings", "cloth", "hoops", "cord", "labels");
    keys.need("cloth");
    keys.need("hoops");
    List<Hoop> hoops = keys.all("hoops", this::hoop);
    if (hoops.size() < 2) {
      throw fault(
          keys.get("hoops").position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          "hoops",
          "needed",
          "at least two of them");
    }
    return new Rings(
        title,
        keys.text("cloth"),
        hoops,
        keys.has("cord") ? hungCord(keys.get("cord"), hoops.size()) : null,
        keys.all("labels", label -> ringLabel(label, hoops.size())));
  }

  private Hoop hoop(YamlNode block) {
    Keys keys = keys(block, "hoops", "round", "ratio", "level", "rows");
    keys.need("round");
    keys.need("level");
    List<Formula> rows = new ArrayList<>();
    keys.items("rows").forEach(row -> rows.add(formula(row, "rows")));
    if (rows.size() > MAX_THINGS) {
      throw fault(
          keys.get("rows").position(),
          FigureCode.FIGURE_TOO_MANY,
          "limit",
          MAX_THINGS,
          "what",
          "rows");
    }
    return new Hoop(keys.formula("round"), keys.formula("ratio"), keys.formula("level"), rows);
  }

  private HungCord hungCord(YamlNode block, int hoops) {
    Keys keys = keys(block, "cord", "hoop", "drop", "text");
    keys.need("drop");
    return new HungCord(hoopNumber(keys, hoops), keys.formula("drop"), keys.label("text"));
  }

  private RingLabel ringLabel(YamlNode block, int hoops) {
    Keys keys = keys(block, "labels", "text", "hoop", "at", "down");
    keys.need("text");
    keys.need("at");
    double down = 0;
    if (keys.has("down")) {
      String text = keys.text("down").text();
      if (!text.matches("0(\\.\\d+)?|1(\\.0+)?")) {
        throw fault(
            keys.get("down").position(),
            FigureCode.FIGURE_VALUE_KIND,
            "name",
            "down",
            "needed",
            "a number from 0 to 1");
      }
      down = Double.parseDouble(text);
    }
    return new RingLabel(keys.label("text"), hoopNumber(keys, hoops), keys.formula("at"), down);
  }

  private int hoopNumber(Keys keys, int hoops) {
    keys.need("hoop");
    String text = keys.text("hoop").text();
    if (!text.matches("[1-9]\\d?") || Integer.parseInt(text) > hoops) {
      throw fault(
          keys.get("hoop").position(),
          FigureCode.FIGURE_VALUE_KIND,
          "name",
          "hoop",
          "needed",
          "a number from 1 to " + hoops);
    }
    return Integer.parseInt(text);
  }

  private ArticleZip articleZip(YamlNode block) {
    Keys keys = keys(block, "zip", "from", "to", "length", "open");
    keys.need("from");
    keys.need("to");
    keys.need("length");
    double open = 0;
    if (keys.has("open")) {
      String text = keys.text("open").text();
      if (!text.matches("0(\\.\\d+)?|1(\\.0+)?")) {
        throw fault(
            keys.get("open").position(),
            FigureCode.FIGURE_VALUE_KIND,
            "name",
            "open",
            "needed",
            "a number from 0 to 1");
      }
      open = Double.parseDouble(text);
    }
    return new ArticleZip(keys.formula("from"), keys.formula("to"), keys.formula("length"), open);
  }

  private ArticleStraps straps(YamlNode block) {
    Keys keys = keys(block, "straps", "at", "places", "width", "cloth");
    for (String key : List.of("at", "places", "width", "cloth")) {
      keys.need(key);
    }
    List<Formula> places = new ArrayList<>();
    keys.items("places").forEach(item -> places.add(formula(item, "places")));
    return new ArticleStraps(keys.formula("at"), places, keys.formula("width"), keys.text("cloth"));
  }

  private ArticleLabel articleLabel(YamlNode block) {
    Keys keys = keys(block, "labels", "text", "rim", "across");
    keys.need("text");
    keys.need("rim");
    return new ArticleLabel(keys.label("text"), keys.formula("rim"), keys.formula("across"));
  }

  private List<SourceText> texts(Keys keys, String key) {
    return keys.items(key).stream().map(item -> text(item, key)).toList();
  }

  private <T> List<T> all(YamlNode block, String what, Function<YamlNode, T> reader) {
    List<YamlNode> items = list(block, what);
    if (items.isEmpty() || items.size() > MAX_THINGS) {
      throw fault(block.position(), FigureCode.FIGURE_TOO_MANY, "limit", MAX_THINGS, "what", what);
    }
    return items.stream().map(reader).toList();
  }

  private static List<YamlNode> list(YamlNode block, String what) {
    if (block instanceof YamlNode.Items items) {
      return items.items();
    }
    throw fault(block.position(), FigureCode.FIGURE_VALUE_KIND, "name", what, "needed", "a list");
  }

  private static SourceText text(YamlNode block, String what) {
    if (block instanceof YamlNode.Text text && !text.text().text().isBlank()) {
      return text.text();
    }
    throw fault(block.position(), FigureCode.FIGURE_VALUE_KIND, "name", what, "needed", "text");
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
        String.join(", ", known));
  }

  private static FindingException fault(
      Position position, FigureCode code, Object... namesAndValues) {
    return new FindingException(Finding.of(code, position, namesAndValues));
  }

  private Keys keys(YamlNode block, String what, String... known) {
    if (block instanceof YamlNode.Entries entries) {
      return keys(entries, known);
    }
    throw fault(
        block.position(), FigureCode.FIGURE_VALUE_KIND, "name", what, "needed", "keys with values");
  }

  /** Unknown and repeated keys are reported and passed over. */
  private Keys keys(YamlNode.Entries block, String... known) {
    Map<String, YamlNode> values = new LinkedHashMap<>();
    for (YamlNode.Entry entry : block.entries()) {
      String key = entry.key().text().text();
      if (!List.of(known).contains(key)) {
        findings.add(
            FigureCode.FIGURE_KEY_UNKNOWN,
            entry.key().position(),
            "name",
            key,
            "near",
            Nearest.of(key, List.of(known)).orElse("none"),
            "known",
            String.join(", ", known));
      } else if (values.putIfAbsent(key, entry.value()) != null) {
        findings.add(FigureCode.FIGURE_KEY_TWICE, entry.key().position(), "name", key);
      }
    }
    return new Keys(block.position(), values);
  }

  /** The values of a map by key. */
  private final class Keys {
    private final Position position;
    private final Map<String, YamlNode> values;

    Keys(Position position, Map<String, YamlNode> values) {
      this.position = position;
      this.values = values;
    }

    boolean has(String key) {
      return values.containsKey(key);
    }

    YamlNode get(String key) {
      return values.get(key);
    }

    void need(String key) {
      if (!has(key)) {
        throw fault(position, FigureCode.FIGURE_KEY_MISSING, "name", key);
      }
    }

    /** The one of several keys that is there. */
    String one(String... keys) {
      List<String> there = Arrays.stream(keys).filter(this::has).toList();
      if (there.size() != 1) {
        throw fault(position, FigureCode.FIGURE_KEY_MISSING, "name", String.join(" / ", keys));
      }
      return there.get(0);
    }

    SourceText text(String key) {
      return has(key) ? FigureParser.text(get(key), key) : null;
    }

    Formula formula(String key) {
      return has(key) ? FigureParser.formula(get(key), key) : null;
    }

    TemplateText template(String key) {
      return has(key) ? TemplateText.parse(FigureParser.text(get(key), key), findings) : null;
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

    String word(String key, List<String> known, String otherwise) {
      return has(key)
          ? known(FigureParser.text(get(key), key).text(), get(key).position(), key, known)
          : otherwise;
    }

    <E extends Enum<E>> E constant(String key, Class<E> type, E otherwise) {
      return has(key)
          ? FigureParser.constant(FigureParser.text(get(key), key), get(key).position(), key, type)
          : otherwise;
    }

    /** A list, or a single value as a list of one. */
    List<YamlNode> items(String key) {
      if (!has(key)) {
        return List.of();
      }
      return get(key) instanceof YamlNode.Items items ? items.items() : List.of(get(key));
    }

    <T> List<T> all(String key, Function<YamlNode, T> reader) {
      return has(key) ? FigureParser.this.all(get(key), key, reader) : List.of();
    }
  }
}
