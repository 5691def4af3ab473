package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.measure.NumberWords;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.Value;
import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.PointMark;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.wording.Wording;

/**
 * Short words beside marks that aren't known by their look, and all of a piece's marks in words.
 */
public final class MarkLabels {
  /** How far from its mark a label is looked for a place, in millimetres. */
  private static final double NEAR = 16;

  private static final double CLEAR = 1;

  /** Allowances below are none. */
  private static final double SAME = 0.005;

  private static final String ROLE = "mark-label";

  /** The ending of the key of the words that count marks; none for what is seen anyway. */
  private static final Mark.Reader<String> COUNTED =
      new Mark.Reader<>() {
        @Override
        public String notch(Mark.Notch notch) {
          return "";
        }

        @Override
        public String grainline(Mark.Grainline grain) {
          return "";
        }

        @Override
        public String styleLine(LineMark.StyleLine style) {
          return "";
        }

        @Override
        public String placement(LineMark.Placement placement) {
          return "placement";
        }

        @Override
        public String foldLine(LineMark.FoldLine fold) {
          return "fold";
        }

        @Override
        public String drillPoint(PointMark.DrillPoint drill) {
          return "drill";
        }

        @Override
        public String dart(Intake.Dart dart) {
          return "dart";
        }

        @Override
        public String pleat(Intake.Pleat pleat) {
          return "pleat";
        }

        @Override
        public String buttonhole(PointMark.Buttonhole hole) {
          return "buttonhole";
        }

        @Override
        public String matchPoint(PointMark.MatchPoint match) {
          return "match";
        }
      };

  private final Typesetting setting;
  private final Wording wording;
  private final PrintForm form;

  public MarkLabels(Typesetting setting, PrintForm form) {
    this.setting = setting;
    this.wording = setting.wording();
    this.form = form.with(NumberWords.of(wording));
  }

  /**
   * A label.
   *
   * @param text its text
   * @param at the place that it belongs to, in panel coordinates
   */
  record Label(String text, Point at) {}

  /**
   * Puts the labels of a piece on one tile, each where there is room near its mark; one without
   * room is left out, for the mark has its own look.
   *
   * @param art the piece as drawn
   * @param map from panel to sheet
   * @param space what is free on the tile
   * @param room where on the sheet the tile may have lettering
   * @return the lettering
   */
  public List<Item> on(PieceArt art, Affine map, FreeSpace space, Box room) {
    List<Item> items = new ArrayList<>();
    for (Label label : labels(art.piece())) {
      Point at = map.apply(label.at());
      if (!room.contains(at)) {
        continue;
      }
      TextBlock block = setting.line(label.text(), ROLE);
      Optional<Found> found = find(art, block, at, space, room);
      found.ifPresent(
          place -> {
            items.addAll(block.in(place.box(), place.turned()));
            space.takeBox(place.box().expanded(CLEAR));
          });
    }
    return items;
  }

  private record Found(Box box, boolean turned) {}

  private static Optional<Found> find(
      PieceArt art, TextBlock block, Point at, FreeSpace whole, Box room) {
    double reach = NEAR + block.width();
    Box near = new Box(at.x(), at.y(), at.x(), at.y()).expanded(reach);
    Box within =
        new Box(
            Math.max(near.minX(), room.minX()),
            Math.max(near.minY(), room.minY()),
            Math.min(near.maxX(), room.maxX()),
            Math.min(near.maxY(), room.maxY()));
    FreeSpace space = whole.part(within);
    FreeSpace.Finder finder = space.finder(space.inside(art.outline()), true);
    Found best = null;
    for (boolean turned : new boolean[] {false, true}) {
      double width = turned ? block.height() : block.width();
      double height = turned ? block.width() : block.height();
      Optional<Box> box = finder.find(width, height, at, within);
      if (box.isPresent()
          && distance(box.get(), at) <= NEAR
          && (best == null || distance(box.get(), at) < distance(best.box(), at) - 3)) {
        best = new Found(box.get(), turned);
      }
    }
    return Optional.ofNullable(best);
  }

  private static double distance(Box box, Point at) {
    double x = Math.max(0, Math.max(box.minX() - at.x(), at.x() - box.maxX()));
    double y = Math.max(0, Math.max(box.minY() - at.y(), at.y() - box.maxY()));
    return Math.sqrt(x * x + y * y);
  }

  /** What paper shows of a piece's marks. */
  private static List<Mark> marks(Piece piece) {
    return piece.half().map(FoldedHalf::marks).orElse(piece.shape().panel().marks());
  }

  private List<Label> labels(Piece piece) {
    List<Label> labels = new ArrayList<>();
    Collected collected = new Collected(piece, labels);
    marks(piece).forEach(mark -> mark.read(collected));
    allowances(piece, labels);
    collected.drills.forEach((name, at) -> labels.add(new Label(named("drill", name), at)));
    collected.rows.values().stream()
        .map(row -> new Label(buttonholes(row), row.get(0).from()))
        .forEach(labels::add);
    return labels;
  }

  /** The labels of marks, one after another; those of a row are one, and come last. */
  private final class Collected implements Mark.Reader<Void> {
    private final Piece piece;
    private final List<Label> labels;
    private final Map<String, List<PointMark.Buttonhole>> rows = new LinkedHashMap<>();
    private final Map<String, Point> drills = new LinkedHashMap<>();

    Collected(Piece piece, List<Label> labels) {
      this.piece = piece;
      this.labels = labels;
    }

    private Void add(String text, Point at) {
      labels.add(new Label(text, at));
      return null;
    }

    @Override
    public Void notch(Mark.Notch notch) {
      return null;
    }

    @Override
    public Void grainline(Mark.Grainline grain) {
      return null;
    }

    @Override
    public Void styleLine(LineMark.StyleLine style) {
      return null;
    }

    @Override
    public Void placement(LineMark.Placement placement) {
      return add(named("placement", placement.name()), middle(placement.path()));
    }

    @Override
    public Void foldLine(LineMark.FoldLine fold) {
      return add(named("fold", fold.name()), middle(fold.path()));
    }

    @Override
    public Void dart(Intake.Dart dart) {
      return add(dartText(dart), foot(piece, dart));
    }

    @Override
    public Void pleat(Intake.Pleat pleat) {
      return add(pleatText(pleat), pleat.lines().get(pleat.lines().size() - 1).at(0.5));
    }

    @Override
    public Void matchPoint(PointMark.MatchPoint match) {
      return add(sign(match), match.point());
    }

    @Override
    public Void drillPoint(PointMark.DrillPoint drill) {
      // Points of one name are one row of them.
      drills.putIfAbsent(drill.name(), drill.point());
      return null;
    }

    @Override
    public Void buttonhole(PointMark.Buttonhole hole) {
      rows.computeIfAbsent(hole.name(), name -> new ArrayList<>()).add(hole);
      return null;
    }
  }

  /**
   * Where edges of a piece have unlike allowances: the name and allowance of those that few have.
   */
  private void allowances(Piece piece, List<Label> labels) {
    Map<String, String> stated = new LinkedHashMap<>();
    Map<String, Integer> counts = new LinkedHashMap<>();
    piece
        .shape()
        .stated()
        .edges()
        .forEach(
            (edge, allowance) -> {
              if (!allowance.fold()) {
                String text = allowance(allowance);
                stated.put(edge, text);
                counts.merge(text, 1, Integer::sum);
              }
            });
    String usual = counts.keySet().stream().max(Comparator.comparing(counts::get)).orElse("");
    stated.forEach(
        (edge, text) -> {
          if (!text.equals(usual)) {
            labels.add(
                new Label(
                    wording.text(
                        "mark.allowance",
                        Map.of("edge", EdgeWords.of(List.of(edge), wording).get(0), "value", text)),
                    middle(piece.shape().panel().line(edge))));
          }
        });
  }

  private String allowance(Allowance allowance) {
    if (allowance.widest() <= SAME) {
      return wording.text("mark.allowance.none");
    }
    String from = length(allowance.start());
    String to = length(allowance.end());
    return from.equals(to)
        ? from
        : wording.text("mark.allowance.changing", Map.of("from", from, "to", to));
  }

  private static Point middle(Path path) {
    return path.atLength(path.length() / 2);
  }

  private String named(String kind, String name) {
    return wording.text("mark." + kind, Map.of("name", name.replace('_', ' ')));
  }

  private static Point foot(Piece piece, Intake.Dart dart) {
    Point first = piece.shape().panel().line(dart.edge()).atLength(dart.from());
    return first.towards(dart.apex(), 0.6);
  }

  private String dartText(Intake.Dart dart) {
    return wording.text("mark.dart", Map.of("width", length(dart.width())));
  }

  private String pleatText(Intake.Pleat pleat) {
    String key = "mark.pleat." + pleat.kind().name().toLowerCase(Locale.ROOT);
    return wording.text(key, Map.of("width", length(pleat.width())));
  }

  private String buttonholes(List<PointMark.Buttonhole> row) {
    PointMark.Buttonhole first = row.get(0);
    return wording.text(
        "mark.buttonhole",
        Map.of("count", row.size(), "length", length(first.from().distance(first.to()))));
  }

  private static String sign(PointMark.MatchPoint match) {
    return match.name().replace('_', ' ').toUpperCase(Locale.ROOT);
  }

  private String length(double millimetres) {
    return form.print(Value.Quantity.length(millimetres));
  }

  /** A piece's marks in words, for whoever has them read out. */
  public List<String> words(Piece piece) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (Mark mark : marks(piece)) {
      String kind = mark.read(COUNTED);
      if (!kind.isEmpty()) {
        counts.merge(kind, 1, Integer::sum);
      }
    }
    List<String> words = new ArrayList<>();
    counts.forEach(
        (kind, count) -> words.add(wording.text("mark.count." + kind, Map.of("count", count))));
    return words;
  }
}
