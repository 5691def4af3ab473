package org.lapmark.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.figure.FigureSource.Arrangement;
import org.lapmark.figure.FigureSource.Clips;
import org.lapmark.figure.FigureSource.Dimension;
import org.lapmark.figure.FigureSource.Label;
import org.lapmark.figure.FigureSource.LineKind;
import org.lapmark.figure.FigureSource.Measured;
import org.lapmark.figure.FigureSource.Place;
import org.lapmark.figure.FigureSource.SewnLine;
import org.lapmark.figure.FigureSource.Shown;
import org.lapmark.figure.FigureSource.Side;
import org.lapmark.figure.FigureSource.Thing;
import org.lapmark.figure.FigureSource.View;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.Piece;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;

/** Draws pieces laid flat, and layers lying on each other along a seam. */
final class PieceArtist {
  /** The least distance between the ends of a dimension, in millimetres of the figure. */
  private static final double SHORTEST_DIMENSION = 0.1;

  /** How far each layer is moved on paper, down and right, so that the lower ones are seen. */
  static final double STAGGER = 2.5;

  /** A zip longer than its edge by no more than this, in millimetres, fits it. */
  private static final double LONGER = 0.5;

  /** No clip comes nearer to the stitching line than this, in millimetres. */
  private static final double UNCLIPPED = 0.5;

  /** The least depth of a clip, in millimetres of cloth. */
  private static final double SHORTEST_CUT = 0.1;

  private static final int MOST_CUTS = 500;
  private static final double ROW_GAP = 16;
  private static final double COLUMN_GAP = 11;
  private static final double FLATNESS = 0.05;
  private static final double NOTCH = 2.2;

  /** The radius of a drill point's or a match point's ring. */
  private static final double POINT = 0.8;

  private static final double BAND = 3.2;

  /** How much of the top layer is cut away. */
  private static final double CUT_AWAY = 0.4;

  private final Evaluation evaluation;
  private final double scale;
  private final Canvas canvas;

  PieceArtist(Evaluation evaluation, StyleSheet styles, LetteringMeasure lettering, double scale) {
    this.evaluation = evaluation;
    this.scale = scale;
    this.canvas = new Canvas(styles, lettering);
  }

  /** Something lying at its place: what it is, how it got there, and its outline on paper. */
  private record Laid(Lying lying, Affine map, Path outline, List<Cut> cuts) {
    Laid(Lying lying, Affine map) {
      this(
          lying,
          map,
          lying.outline().transformed(map),
          lying.cut() == null ? List.of() : List.of(lying.cut().transformed(map)));
    }

    /** Whether a place on paper is left out. */
    boolean hides(Point place) {
      return cuts.stream().anyMatch(cut -> cut.hides(place));
    }

    /** All of it, also what is left out to show what lies beneath. */
    Path whole() {
      return lying.outline().transformed(map);
    }
  }

  Canvas draw(FigureSource.Pieces frame) {
    List<Lying> views = new ArrayList<>();
    frame.views().forEach(view -> evaluation.attempt(() -> lying(view)).ifPresent(views::add));
    List<Laid> laid = new ArrayList<>();
    double x = 0;
    double y = 0;
    for (Lying view : views) {
      Affine facing = Affine.scaling(scale, scale).after(view.facing());
      Box box = view.outline().transformed(facing).bounds();
      if (frame.arrangement() == Arrangement.JOINED && view.zip() != null) {
        double inset = (view.zip().tape() - view.zip().visible()) / 2 * scale;
        box = new Box(box.minX(), box.minY() + inset, box.maxX(), box.maxY() - inset);
      }
      Point to =
          switch (frame.arrangement()) {
            case ROW -> new Point(x - box.minX(), -box.centre().y());
            case COLUMN, JOINED -> new Point(-box.centre().x(), y - box.minY());
          };
      laid.add(new Laid(view, Affine.translation(to.x(), to.y()).after(facing)));
      x += box.width() + ROW_GAP;
      y += box.height() + (frame.arrangement() == Arrangement.JOINED ? 0 : COLUMN_GAP);
    }
    if (frame.arrangement() == Arrangement.JOINED) {
      // The zip lies under the strips that were turned away from it.
      for (Laid one : laid) {
        if (one.lying.zip() != null) {
          base(one);
        }
      }
    }
    for (int i = 0; i < laid.size(); i++) {
      Laid one = laid.get(i);
      if (frame.arrangement() != Arrangement.JOINED || one.lying.zip() == null) {
        base(one);
      }
    }
    if (frame.arrangement() == Arrangement.JOINED) {
      for (Laid zip : laid) {
        if (zip.lying.zip() != null) {
          for (Laid cover : laid) {
            if (cover.lying.zip() == null) {
              canvas.within(
                  cover.outline,
                  List.of(tape(zip.lying.zip()).transformed(zip.map)),
                  "figure-under");
            }
          }
        }
      }
    }
    Box shape = canvas.bounds();
    for (Laid one : laid) {
      boolean hidden = frame.arrangement() == Arrangement.JOINED && one.lying.zip() != null;
      details(one, hidden ? others(laid, one) : List.of());
    }
    for (Laid one : laid) {
      boolean joined = frame.arrangement() == Arrangement.JOINED;
      dimensions(one, joined ? shape : one.outline.bounds());
    }
    return canvas;
  }

  private static List<Laid> others(List<Laid> all, Laid but) {
    return all.stream().filter(one -> one != but).toList();
  }

  Canvas draw(FigureSource.Layers frame) {
    List<Lying> views = new ArrayList<>();
    frame.views().forEach(view -> evaluation.attempt(() -> lying(view)).ifPresent(views::add));
    if (views.size() < frame.views().size()) {
      return canvas;
    }
    List<Laid> laid = new ArrayList<>();
    boolean cutAway = frame.views().stream().anyMatch(view -> view.cutAway() != null);
    for (Lying lying : views) {
      View view = lying.view();
      Affine map =
          laid.isEmpty()
              ? Affine.scaling(scale, scale).after(lying.facing())
              : onto(laid.get(0), lying);
      double moved = cutAway ? 0 : STAGGER * laid.size();
      Laid one = new Laid(lying, Affine.translation(moved, moved).after(map));
      int above = frame.views().size() - 1 - laid.size();
      laid.add(view.cutAway() == null ? one : cutAway(one, above));
    }
    checkZips(laid);
    for (int i = 0; i < laid.size(); i++) {
      base(laid.get(i));
      for (Laid below : laid.subList(0, i)) {
        canvas.within(laid.get(i).outline, List.of(below.outline), "figure-under");
      }
      details(laid.get(i), laid.subList(i + 1, laid.size()));
    }
    Box shape = canvas.bounds();
    laid.forEach(one -> dimensions(one, shape));
    return canvas;
  }

  /** A zip that is laid along an edge must not be longer than that. */
  private void checkZips(List<Laid> laid) {
    for (Laid zip : laid) {
      for (Laid piece : laid) {
        if (zip.lying.zip() != null && piece.lying.piece() != null) {
          double opening = edge(piece.lying.panel(), seamEdge(piece.lying.view())).length();
          if (zip.lying.zip().length() > opening + LONGER) {
            evaluation.notice(
                zip.lying.view().length().text().position(),
                FigureCode.FIGURE_ZIP_TOO_LONG,
                "length",
                Evaluation.hundredth(zip.lying.zip().length()),
                "opening",
                Evaluation.hundredth(opening),
                "edge",
                seamEdge(piece.lying.view()).text(),
                "size",
                evaluation.size());
          }
        }
      }
    }
  }

  /**
   * Leaves out a layer's part on one side of the picture, so that what lies under it is seen: of
   * the top layer the most.
   */
  private static Laid cutAway(Laid laid, int above) {
    Point side =
        switch (laid.lying.view().cutAway()) {
          case LEFT -> new Point(-1, 0);
          case RIGHT -> new Point(1, 0);
          case ABOVE -> new Point(0, -1);
          case BELOW -> new Point(0, 1);
        };
    double start = Double.POSITIVE_INFINITY;
    double end = Double.NEGATIVE_INFINITY;
    for (Point point : laid.outline.flattened(FLATNESS)) {
      start = Math.min(start, point.dot(side));
      end = Math.max(end, point.dot(side));
    }
    double cut = end - (end - start) * CUT_AWAY * StrictMath.pow(0.5, above);
    Lines.Cropped rest = Lines.crop(laid.outline, side.times(cut), side);
    List<Cut> cuts = new ArrayList<>();
    laid.cuts.forEach(one -> cuts.add(one.before(side.times(cut), side)));
    if (rest.from() != null) {
      cuts.add(new Cut("cut_away", rest.from(), rest.to(), side));
    }
    return new Laid(laid.lying, laid.map, rest.path(), cuts);
  }

  private Lying lying(View view) {
    if (view.zip() != null) {
      String id = evaluation.hardware(view.zip());
      Lying.Zip zip =
          new Lying.Zip(
              evaluation.length(view.length(), 1, 5_000),
              evaluation.property(view.zip(), "tape_width"),
              evaluation.property(view.zip(), "visible_width"));
      Path tape = tape(zip);
      return new Lying(view, null, id, null, tape, tape, null, Map.of(), List.of(), zip);
    }
    Piece piece = evaluation.piece(view.piece());
    Panel panel = piece.shape().panel();
    List<String> turned = new ArrayList<>();
    view.turned()
        .forEach(edge -> evaluation.run(() -> turned.addAll(evaluation.edges(panel, edge))));
    String material = evaluation.attempt(() -> evaluation.cloth(piece, view.cloth())).orElse("");
    Path whole =
        turned.isEmpty()
            ? piece.shape().cuttingLine().path()
            : Lines.outline(panel, piece.shape().allowances(), turned);
    Map<String, Double> allowances = new LinkedHashMap<>(piece.shape().allowances());
    turned.forEach(edge -> allowances.put(edge, 0.0));
    Path outline = whole;
    Cut cut = null;
    if (view.cropped() != null && view.edge() != null) {
      Path edge = edge(panel, view.edge());
      Point inward = inward(edge);
      double most = edge.atLength(edge.length() / 2).minus(farthest(whole, inward)).norm() * 4;
      double kept = evaluation.length(view.cropped(), 1, Math.max(most, 1));
      Lines.Cropped cropped =
          Lines.crop(whole, edge.atLength(edge.length() / 2).plus(inward.times(kept)), inward);
      outline = cropped.path();
      if (cropped.from() != null) {
        cut = new Cut("cropped", cropped.from(), cropped.to(), inward);
      }
    }
    return new Lying(
        view,
        piece,
        material,
        evaluation.texture(material),
        whole,
        outline,
        cut,
        allowances,
        turned,
        null);
  }

  private static Point farthest(Path outline, Point direction) {
    Point best = outline.start();
    for (Point point : outline.flattened(1)) {
      if (point.dot(direction) > best.dot(direction)) {
        best = point;
      }
    }
    return best;
  }

  private Path edge(Panel panel, SourceText reference) {
    List<String> names = evaluation.line(panel, reference);
    Path path = null;
    for (String name : names) {
      Path next = panel.line(name);
      path = path == null ? next : path.then(next);
    }
    return path;
  }

  /** The direction from an edge's chord into the panel, which lies on its right hand. */
  private static Point inward(Path edge) {
    return chord(edge).quarterTurn();
  }

  private static Point chord(Path edge) {
    Point chord = edge.end().minus(edge.start());
    return chord.norm() < 1e-6 ? edge.tangentAtLength(0) : chord.unit();
  }

  private static Point middle(Path edge) {
    return edge.start().towards(edge.end(), 0.5);
  }

  /** Where a layer lies so that its edge meets the lowest layer's. */
  private Affine onto(Laid base, Lying layer) {
    if (base.lying.zip() != null) {
      throw Evaluation.fault(
          base.lying.view().zip().position(), FigureCode.FIGURE_NEEDS_PIECE, "name", "layers");
    }
    Path seam = edge(base.lying.panel(), seamEdge(base.lying.view()));
    Point inward = base.map.applyVector(inward(seam)).unit();
    double allowance =
        allowance(
            base.lying, evaluation.edges(base.lying.panel(), seamEdge(base.lying.view())).get(0));
    if (layer.zip() != null) {
      // The tape's edge lies level with the raw edge.
      Point raw = base.map.apply(middle(seam)).minus(inward.times(allowance * scale));
      Point along = new Point(inward.y(), -inward.x()).times(scale);
      Point across = inward.times(scale);
      return new Affine(along.x(), along.y(), across.x(), across.y(), raw.x(), raw.y());
    }
    Path edge = edge(layer.panel(), seamEdge(layer.view()));
    Affine mirror = layer.mirrored() ? Affine.scaling(-1, 1) : Affine.IDENTITY;
    Point own = mirror.applyVector(inward(edge));
    double cos = own.dot(inward);
    double sin = own.cross(inward);
    Affine turn = new Affine(cos, sin, -sin, cos, 0, 0);
    Affine turned = Affine.scaling(scale, scale).after(turn).after(mirror);
    Point by = base.map.apply(middle(seam)).minus(turned.apply(middle(edge)));
    return Affine.translation(by.x(), by.y()).after(turned);
  }

  private static SourceText seamEdge(View view) {
    if (view.edge() == null) {
      throw Evaluation.fault(
          (view.piece() == null ? view.zip() : view.piece()).position(),
          FigureCode.FIGURE_KEY_MISSING,
          "name",
          "edge");
    }
    return view.edge();
  }

  private static double allowance(Lying lying, String edge) {
    return lying.allowances().getOrDefault(edge, 0.0);
  }

  /** The cloth itself, with its outline. */
  private void base(Laid laid) {
    Lying lying = laid.lying;
    if (lying.zip() != null) {
      zip(laid);
      return;
    }
    canvas.cloth(laid.outline, lying.texture(), lying.view().side(), lying.angle());
    for (Flap flap : Flap.of(lying)) {
      canvas.clothWithin(
          laid.outline,
          flap.shape().transformed(laid.map),
          lying.texture(),
          Side.RIGHT,
          lying.angle());
      within(laid, List.of(flap.raw().transformed(laid.map)), "figure-outline");
    }
    cutOutline(laid.outline, laid.cuts);
    List<Thing> drawn = new ArrayList<>();
    List<List<Point>> shapes = new ArrayList<>();
    for (Thing thing : lying.view().things()) {
      evaluation
          .attempt(() -> thing(laid, thing).flattened(FLATNESS))
          .ifPresent(
              shape -> {
                drawn.add(thing);
                shapes.add(shape);
              });
    }
    for (int i = 0; i < shapes.size(); i++) {
      Thing thing = drawn.get(i);
      String words = evaluation.attempt(() -> thingName(thing)).orElse("");
      if (!words.isEmpty()) {
        nameOn(words, shapes.get(i), shapes.subList(i + 1, shapes.size()));
      }
    }
  }

  /** Names a shape where it is open to view: on it if there is room. */
  private void nameOn(String words, List<Point> shape, List<List<Point>> covers) {
    canvas.wish(
        words,
        () -> {
          List<Point> anchors = spread(shape, covers);
          return anchors.isEmpty() ? List.of(shape.get(0)) : anchors;
        },
        point ->
            Lines.inside(shape, point)
                && covers.stream().noneMatch(cover -> Lines.inside(cover, point)));
  }

  private String thingName(Thing thing) {
    if (thing.name() != null) {
      return evaluation.text(thing.name());
    }
    if (thing.piece() == null) {
      return "";
    }
    Piece piece = evaluation.piece(thing.piece());
    return pieceName(piece, evaluation.cloth(piece, thing.cloth()), thing.side());
  }

  /** The outline but for the place where the rest is left out, which gets a break line. */
  private void cutOutline(Path outline, List<Cut> cuts) {
    if (cuts.isEmpty()) {
      canvas.line(outline, "figure-outline");
      return;
    }
    List<Point> points = outline.flattened(FLATNESS);
    for (int i = 1; i < points.size(); i++) {
      Point a = points.get(i - 1);
      Point b = points.get(i);
      if (!a.equals(b) && cuts.stream().noneMatch(cut -> cut.holds(a, b))) {
        canvas.line(Path.polyline(List.of(a, b)), "figure-outline");
      }
    }
    cuts.forEach(cut -> canvas.line(breakLine(cut.from(), cut.to()), "figure-break"));
  }

  private static Path breakLine(Point from, Point to) {
    Point along = to.minus(from).unit();
    Point across = along.quarterTurn();
    Point middle = from.towards(to, 0.5);
    return Path.polyline(
        List.of(
            from,
            middle.minus(along.times(1.6)),
            middle.minus(along.times(0.6)).plus(across.times(1.8)),
            middle.plus(along.times(0.6)).minus(across.times(1.8)),
            middle.plus(along.times(1.6)),
            to));
  }

  private static Path tape(Lying.Zip zip) {
    double half = zip.length() / 2 + Lying.Zip.END;
    return Path.rectangle(new Box(-half, 0, half, zip.tape()));
  }

  private void zip(Laid laid) {
    Lying.Zip zip = laid.lying.zip();
    canvas.shape(laid.outline, "figure-tape");
    canvas.line(laid.outline, "figure-outline");
    double half = zip.length() / 2;
    double middle = zip.tape() / 2;
    boolean face = laid.lying.view().side() == Side.RIGHT;
    Path coil =
        Path.polyline(List.of(new Point(-half, middle), new Point(half, middle)))
            .transformed(laid.map);
    canvas.line(coil, face ? "figure-coil" : "figure-coil-back");
    double stop = 2.5 / Math.max(scale, 0.35) * 0.6;
    for (double end : new double[] {-half, half}) {
      canvas.line(
          Path.polyline(List.of(new Point(end, middle - stop), new Point(end, middle + stop)))
              .transformed(laid.map),
          "figure-stop");
    }
    if (face) {
      double at = half - 9;
      Path slider =
          Path.rectangle(new Box(at - 4, middle - 3.5, at + 4, middle + 3.5)).transformed(laid.map);
      canvas.shape(slider, "figure-slider");
      Path pull =
          Path.rectangle(new Box(at - 17, middle - 1.8, at - 3, middle + 1.8))
              .transformed(laid.map);
      canvas.shape(pull, "figure-slider");
    }
  }

  /** Draws a thing and gives its outline on paper. */
  private Path thing(Laid laid, Thing thing) {
    if (thing.piece() != null) {
      return piece(laid, thing);
    }
    if (thing.band() != null) {
      return band(laid, thing);
    }
    Placement placement = placement(laid.lying, thing.place());
    double width = evaluation.length(thing.width(), 0.1, 10_000);
    double length = evaluation.length(thing.length(), 0.1, 10_000);
    double seen =
        thing.cropped() == null ? length : evaluation.length(thing.cropped(), 0.1, length);
    Point along = placement.inward.quarterTurn().times(-width / 2);
    Point in = placement.inward.times(seen);
    Point at = placement.point;
    Path outline =
        Path.polyline(
            List.of(
                at.minus(along),
                at.plus(along),
                at.plus(along).plus(in),
                at.minus(along).plus(in),
                at.minus(along)));
    Path drawn = outline.transformed(laid.map);
    checkSeen(laid, thing.place().edge().position(), drawn.flattened(FLATNESS));
    Point down = laid.map.applyVector(placement.inward);
    double angle = StrictMath.toDegrees(StrictMath.atan2(down.y(), down.x())) - 90;
    if (thing.cloth() != null) {
      canvas.cloth(
          drawn, evaluation.texture(evaluation.material(thing.cloth())), thing.side(), angle);
    } else {
      canvas.cloth(drawn, Texture.MAIN, Side.WRONG, 0);
    }
    if (seen < length) {
      Point a = laid.map.apply(at.plus(along));
      Point b = laid.map.apply(at.plus(along).plus(in));
      Point c = laid.map.apply(at.minus(along).plus(in));
      Point d = laid.map.apply(at.minus(along));
      canvas.line(Path.polyline(List.of(c, d, a, b)), "figure-outline");
      canvas.line(breakLine(b, c), "figure-break");
    } else {
      canvas.line(drawn, "figure-outline");
    }
    return drawn;
  }

  /** Another piece, of which as much is drawn as of the one that it lies on. */
  private Path piece(Laid laid, Thing thing) {
    Piece piece = evaluation.piece(thing.piece());
    String material = evaluation.cloth(piece, thing.cloth());
    Affine on = on(laid.lying, thing, piece);
    Path at = piece.shape().cuttingLine().path().transformed(laid.map.after(on));
    SourceText place = thing.place() == null ? thing.piece() : thing.place().edge();
    checkSeen(laid, place.position(), at.flattened(FLATNESS));
    List<Cut> cuts = new ArrayList<>();
    for (Cut cut : laid.cuts) {
      Lines.Cropped rest = Lines.crop(at, cut.from(), cut.away());
      if (rest.from() != null) {
        at = rest.path();
        cuts.add(new Cut(cut.key(), rest.from(), rest.to(), cut.away()));
      }
    }
    Point down = on.applyVector(new Point(0, 1));
    double turned =
        thing.place() == null ? 0 : StrictMath.toDegrees(-StrictMath.atan2(down.x(), down.y()));
    canvas.cloth(at, evaluation.texture(material), thing.side(), laid.lying.angle() + turned);
    cutOutline(at, cuts);
    return at;
  }

  /** From the coordinates of a piece that lies on another one to that one's. */
  private Affine on(Lying lying, Thing thing, Piece piece) {
    if (thing.place() == null) {
      Box own = piece.shape().panel().outline().bounds();
      Box host = lying.panel().outline().bounds();
      // Derived panels keep their place; others of their own are centred.
      Point by =
          host.expanded(1e-6).contains(own) ? new Point(0, 0) : host.centre().minus(own.centre());
      return Affine.translation(by.x(), by.y());
    }
    Placement placement = placement(lying, thing.place());
    Affine mirror = thing.side() == lying.view().side() ? Affine.IDENTITY : Affine.scaling(-1, 1);
    Affine facing = Affine.rotation(thing.turn()).after(mirror);
    Point in = placement.inward;
    Affine inward = new Affine(in.y(), -in.x(), in.x(), in.y(), 0, 0).after(facing);
    Box box = piece.shape().cuttingLine().path().transformed(facing).bounds();
    Point top = new Point(box.centre().x(), box.minY());
    Point at = placement.point.minus(new Affine(in.y(), -in.x(), in.x(), in.y(), 0, 0).apply(top));
    return Affine.translation(at.x(), at.y()).after(inward);
  }

  /** Something of which nothing is seen isn't what its author meant. */
  private void checkSeen(Laid laid, Position stated, List<Point> places) {
    for (Cut cut : laid.cuts) {
      if (places.stream().allMatch(cut::hides)) {
        throw leftOut(laid, stated, cut);
      }
    }
  }

  private static FindingException leftOut(Laid laid, Position stated, Cut cut) {
    return Evaluation.fault(
        stated,
        FigureCode.FIGURE_LEFT_OUT,
        "number",
        Integer.toString(laid.lying.piece().number()),
        "key",
        cut.key());
  }

  /** A band along the raw edge: what lies between the outline and its parallel. */
  private Path band(Laid laid, Thing thing) {
    Lying lying = laid.lying;
    Panel panel = lying.panel();
    List<String> edges = evaluation.edges(panel, thing.band());
    double width = evaluation.length(thing.width(), 0.1, 500);
    double outside = allowance(lying, edges.get(0)) - width;
    List<Path> inner = Lines.beside(panel, lying.allowances(), edges, outside, lying.turned());
    if (inner.size() != 1 || !inner.get(0).isClosed()) {
      throw Evaluation.fault(
          thing.band().position(),
          FigureCode.FIGURE_LINE_IMPOSSIBLE,
          "value",
          Evaluation.hundredth(width),
          "edge",
          thing.band().text(),
          "size",
          evaluation.size());
    }
    Path hole = inner.get(0).transformed(laid.map);
    String material = evaluation.material(thing.cloth());
    Path outline = laid.outline;
    canvas.cloth(outline, evaluation.texture(material), thing.side(), lying.angle());
    canvas.cloth(hole, lying.texture(), lying.view().side(), lying.angle());
    canvas.line(outline, "figure-outline");
    canvas.line(hole, "figure-outline");
    Point start = outline.start();
    double at = hole.nearestLength(start);
    Path turned =
        at < 1e-6
            ? hole
            : hole.part(at, hole.length())
                .then(at > hole.length() - 1e-6 ? hole : hole.part(0, at));
    return outline
        .then(Path.polyline(List.of(start, turned.start())))
        .then(turned.reversed())
        .then(Path.polyline(List.of(turned.start(), start)));
  }

  private record Placement(Point point, Point inward) {}

  private Placement placement(Lying lying, Place place) {
    Panel panel = lying.panel();
    Path edge = edge(panel, place.edge());
    double at = evaluation.along(place.along(), edge.length(), edge.length() / 2);
    double allowance = allowance(lying, edgeAt(panel, place.edge(), at));
    Box box = lying.outline().bounds();
    double reach = new Point(box.width(), box.height()).norm();
    double inside = place.inside() == null ? 0 : evaluation.length(place.inside(), -reach, reach);
    Point inward = edge.tangentAtLength(at).quarterTurn();
    return new Placement(edge.atLength(at).plus(inward.times(inside - allowance)), inward);
  }

  private String edgeAt(Panel panel, SourceText reference, double at) {
    double left = at;
    List<String> names = evaluation.edges(panel, reference);
    for (String name : names) {
      double length = panel.line(name).length();
      if (left <= length + 1e-9) {
        return name;
      }
      left -= length;
    }
    return names.get(names.size() - 1);
  }

  private String pieceName(Piece piece, String material, Side side) {
    if (piece.cuts().size() == 1 && !evaluation.texture(material).sided()) {
      return evaluation.word(
          "piece.short", "number", Integer.toString(piece.number()), "name", piece.name());
    }
    return evaluation.word(
        "piece",
        "number",
        Integer.toString(piece.number()),
        "name",
        piece.name(),
        "cloth",
        evaluation.clothAndSide(material, side));
  }

  /** Points well inside a shape and outside others that cover it, those in the open first. */
  private static List<Point> spread(List<Point> shape, List<List<Point>> covers) {
    Box box = bounds(shape);
    List<Point> found = new ArrayList<>();
    for (double margin : new double[] {2.5, 1.1, 0.5}) {
      int columns = (int) Math.max(3, Math.min(44, box.width() / 1.4));
      int rows = (int) Math.max(3, Math.min(30, box.height() / 1.4));
      for (int i = 0; i < columns; i++) {
        for (int j = 0; j < rows; j++) {
          Point point =
              new Point(
                  box.minX() + box.width() * (i + 0.5) / columns,
                  box.minY() + box.height() * (j + 0.5) / rows);
          if (Lines.inside(shape, point)
              && clear(shape, point, margin)
              && covers.stream()
                  .noneMatch(cover -> Lines.inside(cover, point) || !clear(cover, point, margin))) {
            found.add(point);
          }
        }
      }
      if (!found.isEmpty()) {
        break;
      }
    }
    if (found.size() < 2) {
      return found;
    }
    Point centre = box.centre();
    Point middle = found.stream().min(Comparator.comparingDouble(centre::distance)).orElseThrow();
    List<Point> some = new ArrayList<>();
    some.add(middle);
    int count = Math.min(16, found.size());
    for (int i = 0; i < count; i++) {
      some.add(found.get((2 * i + 1) * found.size() / (2 * count)));
    }
    return some;
  }

  private static Box bounds(List<Point> points) {
    Box box = new Box(points.get(0).x(), points.get(0).y(), points.get(0).x(), points.get(0).y());
    for (Point point : points) {
      box = box.union(new Box(point.x(), point.y(), point.x(), point.y()));
    }
    return box;
  }

  private static boolean clear(List<Point> polygon, Point point, double margin) {
    for (int i = 1; i < polygon.size(); i++) {
      Point a = polygon.get(i - 1);
      Point along = polygon.get(i).minus(a);
      double square = along.dot(along);
      double t = square == 0 ? 0 : Math.max(0, Math.min(1, point.minus(a).dot(along) / square));
      if (point.distance(a.plus(along.times(t))) < margin) {
        return false;
      }
    }
    return true;
  }

  private void details(Laid laid, List<Laid> above) {
    Lying lying = laid.lying;
    if (lying.piece() != null) {
      marks(laid);
      lying.view().lines().forEach(line -> evaluation.run(() -> line(laid, line)));
      lying.view().clips().forEach(clips -> evaluation.run(() -> clips(laid, clips)));
      if (lying.view().around() != null) {
        evaluation.run(() -> around(laid));
      }
    }
    evaluation.run(() -> name(laid, above));
    lying.view().labels().forEach(label -> evaluation.run(() -> label(laid, label)));
  }

  private void label(Laid laid, Label label) {
    Point anchor = laid.map.apply(placement(laid.lying, label.place()).point);
    checkSeen(laid, label.place().edge().position(), List.of(anchor));
    if (label.number() > 0) {
      canvas.ring(label.number(), anchor);
    } else {
      canvas.wish(evaluation.text(label.text()), List.of(anchor), null);
    }
  }

  private void name(Laid laid, List<Laid> above) {
    Lying lying = laid.lying;
    if (!lying.view().named()) {
      return;
    }
    String words;
    if (lying.view().name() != null) {
      words = evaluation.text(lying.view().name());
    } else if (lying.zip() != null) {
      words = evaluation.word(lying.view().side() == Side.RIGHT ? "zip.face.up" : "zip.face.down");
    } else {
      words = pieceName(lying.piece(), lying.material(), lying.view().side());
    }
    List<List<Point>> covers = new ArrayList<>();
    for (Laid cover : above) {
      covers.add(cover.outline.flattened(FLATNESS));
    }
    for (Thing thing : lying.view().things()) {
      if (thing.piece() != null) {
        Piece piece = evaluation.piece(thing.piece());
        Affine on = laid.map.after(on(lying, thing, piece));
        covers.add(piece.shape().cuttingLine().path().transformed(on).flattened(FLATNESS));
      }
    }
    for (Flap flap : Flap.of(lying)) {
      covers.add(flap.shape().transformed(laid.map).flattened(FLATNESS));
    }
    nameOn(words, laid.outline.flattened(FLATNESS), covers);
  }

  private void marks(Laid laid) {
    Lying lying = laid.lying;
    Panel panel = lying.panel();
    if (lying.view().shown().contains(Shown.STITCHING)) {
      List<String> edges =
          panel.edges().stream()
              .map(Edge::name)
              .filter(edge -> allowance(lying, edge) > 0)
              .toList();
      List<Path> paths =
          Lines.beside(panel, lying.allowances(), edges, 0, lying.turned()).stream()
              .map(path -> path.transformed(laid.map))
              .toList();
      within(laid, paths, "figure-stitching");
    }
    if (lying.view().shown().contains(Shown.MARKS)) {
      MarkLines lines = MarkLines.of(panel);
      within(
          laid, lines.solid().stream().map(p -> p.transformed(laid.map)).toList(), "figure-mark");
      within(
          laid,
          lines.dashed().stream().map(p -> p.transformed(laid.map)).toList(),
          "figure-mark-dashed");
      lines.drills().forEach(point -> point(laid, point, new Point(1.5 * POINT, 0)));
      lines.matches().forEach(point -> point(laid, point, new Point(POINT, POINT).times(0.7071)));
    }
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Notch notch && lying.view().shown().contains(Shown.NOTCHES)) {
        notch(laid, notch);
      } else if (mark instanceof Mark.Grainline grain
          && lying.view().shown().contains(Shown.GRAIN)) {
        grain(seen(laid, grain.transformed(laid.map, edge -> 0)));
      }
    }
  }

  /** A ring with a cross: a drill point's reaches beyond it, upright; a match point's slants. */
  private void point(Laid laid, Point point, Point arm) {
    Point at = laid.map.apply(point);
    if (laid.hides(at)) {
      return;
    }
    Point across = arm.quarterTurn();
    canvas.lines(
        List.of(
            Path.circle(at, POINT),
            Path.polyline(List.of(at.minus(arm), at.plus(arm))),
            Path.polyline(List.of(at.minus(across), at.plus(across)))),
        "figure-mark");
  }

  /** The part of a grain line that isn't left out; none if its place is. */
  private static Mark.Grainline seen(Laid laid, Mark.Grainline grain) {
    Point from = grain.from();
    Point to = grain.to();
    for (Cut cut : laid.cuts) {
      double a = from.minus(cut.from()).dot(cut.away());
      double b = to.minus(cut.from()).dot(cut.away());
      if (a > 0 && b > 0) {
        return null;
      }
      if (a > 0) {
        from = from.towards(to, a / (a - b));
      } else if (b > 0) {
        to = from.towards(to, a / (a - b));
      }
    }
    return new Mark.Grainline(from, to, grain.oneWay());
  }

  /** A notch is drawn from the raw edge inwards, a little longer than it is cut. */
  private void notch(Laid laid, Mark.Notch notch) {
    Path edge = laid.lying.panel().line(notch.edge());
    double allowance = allowance(laid.lying, notch.edge());
    // Far enough apart to be counted, in the proportions of the set.
    double least = notch.set().gaps().stream().mapToDouble(Double::doubleValue).min().orElse(1);
    double apart = 1.3 / scale / least;
    for (double offset : notch.set().offsets()) {
      double at = notch.at() + offset * apart;
      Point inward = edge.tangentAtLength(at).quarterTurn();
      Point raw = laid.map.apply(edge.atLength(at).minus(inward.times(allowance)));
      Point end = raw.plus(laid.map.applyVector(inward).unit().times(NOTCH));
      if (laid.hides(raw)) {
        continue;
      }
      canvas.line(Path.polyline(List.of(raw, end)), "figure-notch");
    }
  }

  private void grain(Mark.Grainline grain) {
    if (grain == null) {
      return;
    }
    Point a = grain.from().towards(grain.to(), 0.18);
    Point b = grain.to().towards(grain.from(), 0.18);
    canvas.line(Path.polyline(List.of(a, b)), "figure-grain");
    Point along = b.minus(a).unit();
    for (int end = grain.oneWay() ? 1 : -1; end <= 1; end += 2) {
      Point tip = end < 0 ? a : b;
      Point back = along.times(-2.2 * end);
      Point side = along.quarterTurn().times(0.8);
      canvas.shape(
          Path.polyline(List.of(tip, tip.plus(back).plus(side), tip.plus(back).minus(side), tip)),
          "figure-arrow");
    }
  }

  private void line(Laid laid, SewnLine line) {
    Lying lying = laid.lying;
    Panel panel = lying.panel();
    List<String> edges = new ArrayList<>();
    line.edges().forEach(edge -> edges.addAll(evaluation.edges(panel, edge)));
    List<Path> paths = new ArrayList<>();
    double allowance = allowance(lying, edges.get(0));
    double outside =
        switch (line.kind()) {
          case EDGE -> allowance;
          case SEW -> line.distance() == null ? 0 : -evaluation.length(line.distance(), 0, 500);
          case BASTE -> allowance - evaluation.length(line.distance(), 0, 500);
          case TOPSTITCH -> -evaluation.length(line.distance(), 0, 500);
        };
    for (Path path : Lines.beside(panel, lying.allowances(), edges, outside, lying.turned())) {
      Path drawn = path;
      if (outside < 0 && !path.isClosed()) {
        drawn = Lines.extended(path, most(lying));
      }
      paths.add(drawn.transformed(laid.map));
    }
    if (paths.isEmpty()) {
      throw Evaluation.fault(
          line.edges().get(0).position(),
          FigureCode.FIGURE_LINE_IMPOSSIBLE,
          "value",
          Evaluation.hundredth(Math.abs(outside)),
          "edge",
          line.edges().get(0).text(),
          "size",
          evaluation.size());
    }
    // Where layers are cut away, what is sewn through them is drawn all the same.
    Laid sewn = line.kind() == LineKind.EDGE ? laid : new Laid(lying, laid.map);
    Position stated = line.edges().get(0).position();
    checkSeen(sewn, stated, paths.stream().flatMap(p -> p.flattened(FLATNESS).stream()).toList());
    String role =
        switch (line.kind()) {
          case SEW -> "figure-sew";
          case BASTE -> "figure-baste";
          case TOPSTITCH -> "figure-topstitch";
          case EDGE -> "figure-edge";
        };
    String drawn = line.now() ? role + "-now" : role;
    if (line.kind() == LineKind.EDGE) {
      canvas.lines(seen(laid, paths), drawn);
    } else {
      if (lying.view().things().stream().anyMatch(thing -> thing.band() != null)) {
        canvas.within(laid.outline, paths, "figure-line-halo");
      }
      within(laid, paths, drawn);
    }
    if (line.text() != null) {
      List<Point> outline = laid.outline.flattened(FLATNESS);
      List<Point> anchors = new ArrayList<>();
      List<Point> rim = new ArrayList<>();
      for (Path path : paths) {
        double length = path.length();
        for (int i = 1; i < 12; i++) {
          Point point = path.atLength(length * i / 12);
          if (!laid.hides(point)) {
            rim.add(point);
          }
          if (line.kind() == LineKind.EDGE ? !laid.hides(point) : Lines.inside(outline, point)) {
            anchors.add(point);
          }
        }
      }
      if (anchors.isEmpty() && !laid.cuts.isEmpty()) {
        throw leftOut(laid, line.text().source().position(), laid.cuts.get(0));
      }
      // Without any allowance the line runs along the rim, inside of nothing.
      canvas.wish(evaluation.text(line.text()), anchors.isEmpty() ? rim : anchors, null);
    }
  }

  /** The parts of lines that aren't left out. */
  private static List<Path> seen(Laid laid, List<Path> paths) {
    if (laid.cuts.isEmpty()) {
      return paths;
    }
    List<Path> seen = new ArrayList<>();
    for (Path path : paths) {
      List<Point> run = new ArrayList<>();
      // Steps short enough for the place where the rest is left out.
      int steps = (int) Math.max(1, Math.ceil(path.length() / 0.25));
      for (int i = 0; i <= steps; i++) {
        Point point = path.atLength(path.length() * i / steps);
        if (!laid.hides(point)) {
          run.add(point);
        }
        if (run.size() > 1 && (i == steps || laid.hides(point))) {
          seen.add(Path.polyline(run));
        }
        if (laid.hides(point)) {
          run.clear();
        }
      }
    }
    return seen;
  }

  /** Draws lines where the piece is seen; labels keep clear of them there. */
  private void within(Laid laid, List<Path> paths, String role) {
    Path whole = laid.whole();
    canvas.within(whole, paths, role);
    List<Point> outline = whole.flattened(FLATNESS);
    for (Path path : paths) {
      List<Point> points = path.flattened(FLATNESS);
      for (int i = 1; i < points.size(); i++) {
        Point a = points.get(i - 1);
        Point b = points.get(i);
        int steps = (int) Math.max(1, Math.ceil(a.distance(b) / 2));
        for (int k = 0; k < steps; k++) {
          Point from = a.towards(b, (double) k / steps);
          Point to = a.towards(b, (k + 1.0) / steps);
          if (!from.equals(to) && Lines.inside(outline, from.towards(to, 0.5))) {
            canvas.obstacle(Path.polyline(List.of(from, to)));
          }
        }
      }
    }
  }

  private static double most(Lying lying) {
    return lying.allowances().values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
  }

  private void clips(Laid laid, Clips clips) {
    Lying lying = laid.lying;
    Path edge = edge(lying.panel(), clips.edge());
    double from = evaluation.along(clips.from(), edge.length(), 0);
    double to = evaluation.along(clips.to(), edge.length(), edge.length());
    if (to < from - 1e-6) {
      throw Evaluation.fault(
          (clips.to() == null ? clips.from() : clips.to()).text().position(),
          FigureCode.FIGURE_STRETCH_BACKWARDS,
          "name",
          "clips",
          "from",
          Evaluation.hundredth(from),
          "to",
          Evaluation.hundredth(to),
          "size",
          evaluation.size());
    }
    // One clip alone begins and ends at the same place.
    double most = to - from < 1e-6 ? 1_000 : Math.max(1, Math.min(1_000, to - from));
    double every = evaluation.length(clips.every(), 1, most);
    double allowance = allowance(lying, evaluation.edges(lying.panel(), clips.edge()).get(0));
    double depth =
        evaluation.length(
            clips.depth(), SHORTEST_CUT, Math.max(SHORTEST_CUT, allowance - UNCLIPPED));
    if ((to - from) / every > MOST_CUTS) {
      throw Evaluation.fault(
          clips.every().text().position(),
          FigureCode.FIGURE_TOO_MANY,
          "limit",
          MOST_CUTS,
          "what",
          "clips");
    }
    List<Path> cuts = new ArrayList<>();
    List<Point> wantedAt = new ArrayList<>();
    List<Point> polygon = laid.outline.flattened(FLATNESS);
    for (double at = from; at <= to + 1e-6; at += every) {
      Point inward = edge.tangentAtLength(at).quarterTurn();
      Point raw = edge.atLength(at).minus(inward.times(allowance));
      Point end = raw.plus(inward.times(depth));
      boolean wanted = !clips.curves() || bends(edge, at);
      if (wanted) {
        wantedAt.add(laid.map.apply(end));
      }
      if (wanted && Lines.inside(polygon, laid.map.apply(end))) {
        cuts.add(Path.polyline(List.of(laid.map.apply(raw), laid.map.apply(end))));
      }
    }
    if (wantedAt.isEmpty()) {
      evaluation.notice(
          clips.edge().position(),
          FigureCode.FIGURE_CLIPS_STRAIGHT,
          "edge",
          clips.edge().text(),
          "size",
          evaluation.size());
      return;
    }
    checkSeen(laid, clips.edge().position(), wantedAt);
    if (lying.view().things().stream().anyMatch(thing -> thing.band() != null)) {
      canvas.within(laid.outline, cuts, "figure-line-halo");
    }
    canvas.lines(cuts, "figure-edge-now");
  }

  private static boolean bends(Path edge, double at) {
    double near = 1.5;
    Point before = edge.tangentAtLength(Math.max(0, at - near));
    Point after = edge.tangentAtLength(Math.min(edge.length(), at + near));
    return Math.abs(before.cross(after)) > 0.01;
  }

  /** Bands outside the raw edge, one for each part of the seam's other sides. */
  private void around(Laid laid) {
    double allowance = most(laid.lying);
    for (SeamRing.Band band :
        SeamRing.bands(evaluation, laid.lying.panel(), laid.lying.view().around())) {
      band(laid, band, allowance + (1.6 + band.level() * (BAND + 0.8)) / scale);
    }
  }

  private void band(Laid laid, SeamRing.Band band, double gap) {
    double far = gap + BAND / scale;
    List<Point> inner = new ArrayList<>();
    List<Point> outer = new ArrayList<>();
    for (SeamRing.Foot foot : band.feet()) {
      inner.add(laid.map.apply(foot.point().minus(foot.inwards().times(gap))));
      outer.add(laid.map.apply(foot.point().minus(foot.inwards().times(far))));
    }
    List<Point> ring = new ArrayList<>(inner);
    for (int i = outer.size() - 1; i >= 0; i--) {
      ring.add(outer.get(i));
    }
    ring.add(inner.get(0));
    Path shape = Path.polyline(ring);
    // Without any texture: the bands stand for lengths, not for a cloth and its sides.
    canvas.line(shape, "figure-outline");
    if (band.name().isEmpty()) {
      return;
    }
    List<Point> anchors = new ArrayList<>();
    int steps = inner.size() - 1;
    for (int tenth : new int[] {5, 4, 6, 3, 7}) {
      int at = tenth * steps / 10;
      anchors.add(inner.get(at).towards(outer.get(at), 0.5));
    }
    canvas.wish(band.name(), anchors, null);
  }

  private void dimensions(Laid laid, Box shape) {
    laid.lying
        .view()
        .dimensions()
        .forEach(dimension -> evaluation.run(() -> dimension(laid, dimension, shape)));
  }

  private void dimension(Laid laid, Dimension dimension, Box shape) {
    Lying lying = laid.lying;
    if (dimension.measured() == Measured.WIDTH || dimension.measured() == Measured.HEIGHT) {
      overall(laid, dimension, shape);
      return;
    }
    if (lying.piece() == null) {
      throw Evaluation.fault(dimension.place(), FigureCode.FIGURE_KEY_MISSING, "name", "piece");
    }
    Panel panel = lying.panel();
    Path edge = edge(panel, dimension.edge());
    if (dimension.measured() == Measured.ALONG) {
      double from = evaluation.along(dimension.from(), edge.length(), 0);
      double to = evaluation.along(dimension.to(), edge.length(), edge.length());
      double allowance = allowance(lying, edgeAt(panel, dimension.edge(), from));
      Point outward = edge.tangentAtLength((from + to) / 2).quarterTurn().times(-allowance);
      Point a = laid.map.apply(edge.atLength(from).plus(outward));
      Point b = laid.map.apply(edge.atLength(to).plus(outward));
      checkSeen(laid, dimension.edge().position(), List.of(a));
      checkSeen(laid, dimension.edge().position(), List.of(b));
      stand(dimension, a, b, evaluation.dimension(dimension.place(), Math.abs(to - from)), shape);
      return;
    }
    double allowance = allowance(lying, evaluation.edges(panel, dimension.edge()).get(0));
    double depth =
        dimension.depth() == null ? allowance : evaluation.length(dimension.depth(), 0, allowance);
    // At the end of the edge that is nearer to where the dimension stands.
    double best = 0;
    double least = Double.POSITIVE_INFINITY;
    Point start = laid.map.apply(edge.start());
    Point end = laid.map.apply(edge.end());
    checkSeen(laid, dimension.edge().position(), List.of(start, end));
    for (double at : new double[] {0, edge.length()}) {
      Point point = laid.map.apply(edge.atLength(at));
      if (laid.hides(point)) {
        continue;
      }
      double distance =
          switch (dimension.beside()) {
            case ABOVE -> point.y() - shape.minY();
            case BELOW -> shape.maxY() - point.y();
            case LEFT -> point.x() - shape.minX();
            case RIGHT -> shape.maxX() - point.x();
          };
      if (distance < least) {
        least = distance;
        best = at;
      }
    }
    Point inward = edge.tangentAtLength(Math.min(best, edge.length() - 1e-3)).quarterTurn();
    Point raw = edge.atLength(best).minus(inward.times(allowance));
    stand(
        dimension,
        laid.map.apply(raw),
        laid.map.apply(raw.plus(inward.times(depth))),
        evaluation.dimension(dimension.place(), depth),
        shape);
  }

  /** Draws a dimension, unless its ends lie on each other as seen from where it stands. */
  private void stand(Dimension dimension, Point a, Point b, String words, Box shape) {
    boolean level =
        dimension.beside() == FigureSource.Beside.ABOVE
            || dimension.beside() == FigureSource.Beside.BELOW;
    if (Math.abs(level ? b.x() - a.x() : b.y() - a.y()) < SHORTEST_DIMENSION) {
      throw Evaluation.fault(dimension.place(), FigureCode.FIGURE_DIMENSION_FLAT);
    }
    canvas.dimension(a, b, dimension.beside(), words, shape);
  }

  private void overall(Laid laid, Dimension dimension, Box shape) {
    boolean width = dimension.measured() == Measured.WIDTH;
    Path outline =
        dimension.raw() || laid.lying.piece() == null
            ? laid.outline
            : laid.lying.panel().outline().transformed(laid.map);
    Box box = outline.bounds();
    Box full = laid.lying.whole().transformed(laid.map).bounds();
    Box seen = laid.outline.bounds();
    double missing = width ? full.width() - seen.width() : full.height() - seen.height();
    if (missing > 1e-6 && !laid.cuts.isEmpty()) {
      throw leftOut(laid, dimension.place(), laid.cuts.get(0));
    }
    double value = (width ? box.width() : box.height()) / scale;
    boolean above = dimension.beside() == FigureSource.Beside.ABOVE;
    boolean right = dimension.beside() == FigureSource.Beside.RIGHT;
    Point a =
        width
            ? new Point(box.minX(), above ? box.minY() : box.maxY())
            : new Point(right ? box.maxX() : box.minX(), box.minY());
    Point b =
        width
            ? new Point(box.maxX(), above ? box.minY() : box.maxY())
            : new Point(right ? box.maxX() : box.minX(), box.maxY());
    stand(dimension, a, b, evaluation.dimension(dimension.place(), value), shape);
  }
}
