package org.lapmark.print;

import com.ibm.icu.text.ListFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Item.Alignment;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Arc;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.source.JoinStyle;
import org.lapmark.wording.Wording;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Draws the tiles of one sheet. Used once. */
final class TilePainter {
  /** The paper kept free around lines and lettering, in millimetres. */
  private static final double CLEAR = 1.2;

  /** How far lettering keeps from the lines on which tiles meet, in millimetres. */
  private static final double FROM_EDGE = 1.5;

  /** A join this long, in millimetres, has two marks instead of one. */
  private static final double LONG_JOIN = 110;

  /** The radius of the half discs across a join, in millimetres. */
  private static final double MARK = 6;

  /** The radius of the circle where four tiles meet, in millimetres. */
  private static final double CORNER = 4;

  /** Half the length of the stroke at either end of a check line, in millimetres. */
  private static final double CHECK_END = 3;

  private static final double TICK = 4;
  private static final double SQUARE_MARGIN = 7;
  private static final double LEADER_DOT = 0.6;
  private static final double LONGEST_LEADER = 30;

  /** How far from a piece its lettering is looked for a place, in millimetres. */
  private static final double FAR = 300;

  /** How far a leader reaches into a piece, in millimetres. */
  private static final double LEADER_REACH = 2;

  private final Wording wording;
  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final SheetSubject subject;
  private final GradedPattern pattern;
  private final Paper paper;
  private final Tiling tiling;
  private final SheetLayout layout;
  private final List<SheetSubject.LineName> names;
  private final Map<Cell, List<Item>> items = new LinkedHashMap<>();
  private final Map<Cell, FreeSpace> spaces = new LinkedHashMap<>();
  private final Map<Cell, List<Box>> placed = new LinkedHashMap<>();
  private final Map<Cell, List<Integer>> pieceIndexes = new LinkedHashMap<>();

  TilePainter(
      SheetPlanner planner,
      SheetSubject subject,
      Paper paper,
      Tiling tiling,
      SheetSubject.Drawn drawn) {
    this.wording = planner.wording();
    this.styles = planner.styles();
    this.lettering = planner.lettering();
    this.subject = subject;
    this.pattern = subject.pattern();
    this.paper = paper;
    this.tiling = tiling;
    this.layout = drawn.layout();
    this.names = drawn.names();
  }

  List<Tile> paint() {
    for (Cell cell : layout.cells()) {
      items.put(cell, new ArrayList<>());
      spaces.put(cell, new FreeSpace(cell.shown()));
      pieceIndexes.put(cell, new ArrayList<>());
      placed.put(cell, new ArrayList<>());
      lines(cell);
    }
    square(layout.cells().get(0), layout.square());
    layout.endSquare().ifPresent(this::endSquare);
    layout.joins().forEach(this::join);
    corners();
    checkLines();
    labels();
    markLabels();
    layout.joins().forEach(this::notes);
    List<Tile> tiles = new ArrayList<>();
    for (Cell cell : layout.cells()) {
      code(cell);
      tiles.add(tile(cell));
    }
    return tiles;
  }

  private void lines(Cell cell) {
    Layering.Sorter sorter = new Layering.Sorter();
    for (int i = 0; i < layout.art().size(); i++) {
      PieceArt art = layout.art().get(i);
      if (!cell.shown().overlaps(art.bounds())) {
        continue;
      }
      if (cell.core().overlaps(art.bounds()) && art.polygon().intersects(geometry(cell.core()))) {
        pieceIndexes.get(cell).add(i);
      }
      for (PieceArt.Stroke stroke : art.strokes()) {
        List<Path> parts = Dashes.inside(stroke.path(), styles.style(stroke.role()), cell.shown());
        if (!parts.isEmpty()) {
          sorter.add(stroke.layering(), new Item.Shape(parts, stroke.role()));
        }
        for (Path part : CurveClip.inside(stroke.path(), cell.shown())) {
          spaces.get(cell).takeLine(part.flattened(0.2), CLEAR);
        }
      }
    }
    for (SheetSubject.LineName name : names) {
      if (name.cell() == cell) {
        sorter.add(name.layering(), name.item());
        spaces.get(cell).takeBox(name.box().expanded(CLEAR));
      }
    }
    items.get(cell).addAll(sorter.items());
  }

  private static Geometry geometry(Box box) {
    return new GeometryFactory()
        .toGeometry(new Envelope(box.minX(), box.maxX(), box.minY(), box.maxY()));
  }

  private void endSquare(Box box) {
    layout.cells().stream()
        .filter(cell -> cell.core().contains(box.expanded(-0.01)))
        .findFirst()
        .ifPresent(cell -> square(cell, box));
  }

  private void square(Cell cell, Box box) {
    List<Item> list = items.get(cell);
    list.add(new Item.Shape(List.of(Path.rectangle(box)), "test-square"));
    spaces.get(cell).takeBox(box.expanded(CLEAR));
    List<TextBlock.Text> texts = new ArrayList<>();
    texts.add(new TextBlock.Text(wording.text("tile.square.name"), "test-square-name"));
    texts.add(new TextBlock.Text(wording.text("tile.square.check"), "test-square-text"));
    if (paper.kind() != Paper.Kind.PAGE) {
      texts.add(new TextBlock.Text(wording.text("tile.square.frame"), "test-square-text"));
    }
    texts.add(
        new TextBlock.Text(
            wording.text(
                layout.joins().isEmpty() ? "tile.square.apart" : "tile.square.join." + way()),
            "test-square-text"));
    double y = box.minY() + SQUARE_MARGIN;
    for (TextBlock.Text text : texts) {
      TextBlock block =
          TextBlock.of(List.of(text), box.width() - 2 * SQUARE_MARGIN, styles, lettering);
      list.addAll(
          block.in(Box.at(box.minX() + SQUARE_MARGIN, y, block.width(), block.height()), false));
      y += block.height() + 3;
    }
    if (box == layout.square()) {
      list.addAll(
          subject.legend(
              new Box(box.minX() + SQUARE_MARGIN, y, box.maxX() - SQUARE_MARGIN, box.maxY() - 4)));
    }
  }

  /** The way of joining, as the words' keys have it. */
  private String way() {
    return switch (tiling.joins()) {
      case OVERLAP -> "overlap";
      case BUTT -> "butt";
      case NO_TRIM -> "fold";
    };
  }

  /**
   * The line on which two tiles meet, and the half discs across it. They stand off the middle, so
   * that they don't meet when one tile is turned over or end for end.
   */
  private void join(Join join) {
    boolean butt = tiling.joins() == JoinStyle.BUTT;
    boolean folded = tiling.joins() == JoinStyle.NO_TRIM;
    items.get(join.first()).add(across(join, join.first(), folded ? "fold-back" : "trim-line"));
    items.get(join.second()).add(across(join, join.second(), butt ? "trim-line" : "meet-line"));
    double[] places = join.length() > LONG_JOIN ? new double[] {0.22, 0.72} : new double[] {0.38};
    for (double place : places) {
      Point centre = clearPlace(join, place, MARK);
      half(join, centre, MARK, true);
      half(join, centre, MARK, false);
      Box box = new Box(centre.x(), centre.y(), centre.x(), centre.y()).expanded(MARK + CLEAR);
      spaces.get(join.first()).takeBox(box);
      spaces.get(join.second()).takeBox(box);
    }
  }

  /** Quarter circles where four tiles meet: joined well, they make a whole circle. */
  private void corners() {
    for (Join upper : layout.joins()) {
      if (!upper.sideways()) {
        continue;
      }
      Optional<Cell> lowerLeft = below(upper.first());
      Optional<Cell> lowerRight = below(upper.second());
      boolean closed =
          lowerLeft.isPresent()
              && lowerRight.isPresent()
              && layout.joins().stream()
                  .anyMatch(
                      join -> join.first() == lowerLeft.get() && join.second() == lowerRight.get());
      if (closed) {
        Point corner = new Point(upper.to().x(), lowerLeft.get().core().minY());
        List<Cell> around =
            List.of(lowerRight.get(), lowerLeft.get(), upper.first(), upper.second());
        for (int i = 0; i < around.size(); i++) {
          Arc arc = Arc.ofCircle(corner, CORNER, i * Math.PI / 2, Math.PI / 2);
          items
              .get(around.get(i))
              .add(new Item.Shape(List.of(new Path(List.of(arc))), "corner-mark"));
          spaces
              .get(around.get(i))
              .takeBox(
                  new Box(corner.x(), corner.y(), corner.x(), corner.y()).expanded(CORNER + CLEAR));
        }
      }
    }
  }

  private Optional<Cell> below(Cell cell) {
    return layout.joins().stream()
        .filter(join -> !join.sideways() && join.first() == cell)
        .map(Join::second)
        .findFirst();
  }

  /** A line across and a line down through each island of joined tiles, with their lengths. */
  private void checkLines() {
    for (boolean sideways : new boolean[] {true, false}) {
      for (CheckLine check : CheckLine.of(layout, sideways)) {
        for (Cell cell : check.cells()) {
          items
              .get(cell)
              .add(
                  new Item.Shape(
                      Dashes.inside(check.line(), styles.style("check-line"), cell.shown()),
                      "check-line"));
          CurveClip.inside(check.line(), cell.shown())
              .forEach(part -> spaces.get(cell).takeLine(part.flattened(1), CLEAR));
        }
        boolean said = false;
        for (boolean last : new boolean[] {false, true}) {
          Cell cell = check.cells().get(last ? check.cells().size() - 1 : 0);
          Point end = last ? check.to() : check.from();
          Point arm = sideways ? new Point(0, CHECK_END) : new Point(CHECK_END, 0);
          Path tick = new Path(List.of(new Line(end.minus(arm), end.plus(arm))));
          items.get(cell).add(new Item.Shape(List.of(tick), "check-end"));
          spaces.get(cell).takeLine(tick.flattened(1), CLEAR);
          said |= checkText(check, cell, end);
        }
        for (int i = 0; i < check.cells().size() && !said; i++) {
          Cell cell = check.cells().get(i);
          Point middle = cell.core().centre();
          said =
              checkText(
                  check,
                  cell,
                  sideways
                      ? new Point(middle.x(), check.from().y())
                      : new Point(check.from().x(), middle.y()));
        }
      }
    }
  }

  /** Puts the length beside the line near one of its points; false when there is no room. */
  private boolean checkText(CheckLine check, Cell cell, Point end) {
    String text =
        wording.text("tile.check", Map.of("length", Long.toString(Math.round(check.length()))));
    TextBlock block =
        TextBlock.of(List.of(new TextBlock.Text(text, "join-note")), 1000, styles, lettering);
    boolean turned = !check.sideways();
    double reach = 9;
    Box near =
        turned
            ? new Box(end.x() - reach, room(cell).minY(), end.x() + reach, room(cell).maxY())
            : new Box(room(cell).minX(), end.y() - reach, room(cell).maxX(), end.y() + reach);
    Optional<Box> found =
        spaces
            .get(cell)
            .finder(null, true)
            .find(
                turned ? block.height() : block.width(),
                turned ? block.width() : block.height(),
                end,
                shared(near, room(cell)));
    found.ifPresent(
        box -> {
          items.get(cell).addAll(block.in(box, turned));
          spaces.get(cell).takeBox(box.expanded(CLEAR));
        });
    return found.isPresent();
  }

  /** The line of a join through all that a tile shows. */
  private static Item across(Join join, Cell cell, String role) {
    Box box = cell.shown();
    Point from = join.from();
    Line line =
        join.sideways()
            ? new Line(new Point(from.x(), box.minY()), new Point(from.x(), box.maxY()))
            : new Line(new Point(box.minX(), from.y()), new Point(box.maxX(), from.y()));
    return new Item.Shape(List.of(new Path(List.of(line))), role);
  }

  /** The place near a stated one at which the mark's disc meets the fewest lines. */
  private Point clearPlace(Join join, double place, double radius) {
    Point best = join.from().towards(join.to(), place);
    double bestClear = clearance(best, radius);
    double reach = join.length() * 0.2;
    for (double shift = 2; shift <= reach && bestClear < radius + CLEAR; shift += 2) {
      for (double sign : new double[] {1, -1}) {
        // Marks of two lines that meet in a corner must not run into each other.
        double along = Math.max(2 * radius + 3, join.length() * place + sign * shift);
        along = Math.min(join.length() - 2 * radius - 3, along);
        Point point = join.from().towards(join.to(), along / join.length());
        double clear = clearance(point, radius);
        if (clear > bestClear + 1e-9) {
          best = point;
          bestClear = clear;
        }
      }
    }
    return best;
  }

  private double clearance(Point point, double radius) {
    double least = radius + CLEAR;
    for (PieceArt art : layout.art()) {
      if (!art.bounds().expanded(2 * radius).contains(point)) {
        continue;
      }
      for (PieceArt.Stroke stroke : art.strokes()) {
        if (stroke.path().bounds().expanded(2 * radius).contains(point)) {
          least = Math.min(least, stroke.path().distance(point));
        }
      }
    }
    return least;
  }

  private void half(Join join, Point centre, double radius, boolean first) {
    // The first tile's half bulges left or up, the second's right or down.
    double start = join.sideways() ? Math.PI / 2 : Math.PI;
    Arc arc = Arc.ofCircle(centre, radius, first ? start : start + Math.PI, Math.PI);
    Cell cell = first ? join.first() : join.second();
    items.get(cell).add(new Item.Shape(List.of(new Path(List.of(arc))), "join-mark"));
    Style style = styles.style("join-number");
    double side = first ? -1 : 1;
    double away = 0.45 * radius;
    double x = centre.x() + (join.sideways() ? side * away : 0);
    double y = centre.y() + (join.sideways() ? 0 : side * away);
    items
        .get(cell)
        .add(
            new Item.Lettering(
                Integer.toString(join.number()),
                new Point(x, y + (lettering.ascent(style) - lettering.descent(style)) / 2),
                Alignment.MIDDLE,
                0,
                "join-number"));
  }

  private void notes(Join join) {
    String first = wording.text("tile.join.first." + way(), Map.of("code", join.second().code()));
    String second = wording.text("tile.join.second." + way(), Map.of("code", join.first().code()));
    // Edge to edge, nothing lies beyond the line: the words stand before it.
    boolean beyond = tiling.joins() != JoinStyle.BUTT;
    note(join, join.first(), first, beyond ? 1 : -1);
    note(join, join.second(), second, beyond ? -1 : 1);
  }

  /** A word beside the line: as far as there is a strip that joining hides, on that. */
  private void note(Join join, Cell cell, String text, int side) {
    TextBlock block =
        TextBlock.of(List.of(new TextBlock.Text(text, "join-note")), 1000, styles, lettering);
    double near = 0.8;
    double far = MARK;
    double low = Math.min(side * near, side * far);
    double high = Math.max(side * near, side * far);
    Box strip =
        join.sideways()
            ? new Box(join.from().x() + low, join.from().y(), join.from().x() + high, join.to().y())
            : new Box(
                join.from().x(), join.from().y() + low, join.to().x(), join.from().y() + high);
    boolean turned = join.sideways();
    Point middle =
        join.from()
            .towards(join.to(), 0.47)
            .plus(turned ? new Point(side * 2.4, 0) : new Point(0, side * 2.4));
    spaces
        .get(cell)
        .finder(null, true)
        .find(
            turned ? block.height() : block.width(),
            turned ? block.width() : block.height(),
            middle,
            strip)
        .ifPresent(
            box -> {
              items.get(cell).addAll(block.in(box, turned));
              spaces.get(cell).takeBox(box.expanded(CLEAR));
            });
  }

  private void labels() {
    PieceLabel label = subject.label();
    for (int i = 0; i < layout.art().size(); i++) {
      PieceArt art = layout.art().get(i);
      int index = i;
      List<Cell> cells =
          layout.cells().stream()
              .filter(cell -> pieceIndexes.get(cell).contains(index))
              .sorted(
                  Comparator.comparingDouble(cell -> cell.core().centre().distance(middle(art))))
              .toList();
      List<Supplier<PieceLabel.Form>> full = label.full(art.piece());
      Cell home = inside(full, art, cells);
      if (home == null) {
        home = outside(label, full, art, cells);
      }
      for (Cell cell : cells) {
        if (cell != home) {
          inside(label.brief(art.piece()), art, List.of(cell));
        }
      }
    }
  }

  /** Words beside darts, pleats and the like, once on every tile that shows where they stand. */
  private void markLabels() {
    MarkLabels labels =
        new MarkLabels(wording, styles, lettering, pattern.source().masthead().form());
    for (int i = 0; i < layout.art().size(); i++) {
      for (Cell cell : layout.cells()) {
        if (pieceIndexes.get(cell).contains(i)) {
          PieceArt art = layout.art().get(i);
          Affine map = layout.pieces().get(i).placement();
          items.get(cell).addAll(labels.on(art, map, spaces.get(cell), room(cell)));
        }
      }
    }
  }

  private static Point middle(PieceArt art) {
    Coordinate centre = art.polygon().getCentroid().getCoordinate();
    return new Point(centre.x, centre.y);
  }

  private static Box shared(Box a, Box b) {
    return new Box(
        Math.max(a.minX(), b.minX()),
        Math.max(a.minY(), b.minY()),
        Math.min(a.maxX(), b.maxX()),
        Math.min(a.maxY(), b.maxY()));
  }

  private static Box room(Cell cell) {
    return cell.core().expanded(-FROM_EDGE);
  }

  /** Puts lettering inside a piece and inside one tile; gives the tile, or null. */
  private Cell inside(List<Supplier<PieceLabel.Form>> forms, PieceArt art, List<Cell> cells) {
    List<FreeSpace.Finder> finders = new ArrayList<>();
    for (Cell cell : cells) {
      FreeSpace space = spaces.get(cell).part(art.bounds());
      finders.add(space.finder(space.inside(art.outline()), true));
    }
    Point middle = middle(art);
    for (Supplier<PieceLabel.Form> supplier : forms) {
      PieceLabel.Form form = supplier.get();
      Box best = null;
      Cell home = null;
      for (int i = 0; i < cells.size(); i++) {
        Cell cell = cells.get(i);
        Optional<Box> found = finders.get(i).find(form.width(), form.height(), middle, room(cell));
        if (found.isPresent()
            && (best == null
                || found.get().centre().distance(middle) < best.centre().distance(middle))) {
          best = found.get();
          home = cell;
        }
      }
      if (best != null) {
        put(form, home, best);
        return home;
      }
    }
    return null;
  }

  private void put(PieceLabel.Form form, Cell cell, Box box) {
    items.get(cell).addAll(form.block().in(box, form.turned()));
    placed.get(cell).add(box);
    spaces.get(cell).takeBox(box.expanded(CLEAR));
  }

  /**
   * Puts lettering on free paper near a piece that is too small for it: with a leader where one can
   * be drawn that is short and crosses nothing, else with the piece's number inside the piece, and
   * where not even that fits, with a leader as it comes.
   */
  private Cell outside(
      PieceLabel label, List<Supplier<PieceLabel.Form>> full, PieceArt art, List<Cell> cells) {
    Note first = null;
    for (Cell cell : cells) {
      Geometry part = art.polygon().intersection(geometry(room(cell)));
      if (part.isEmpty()) {
        continue;
      }
      Coordinate inner = part.getInteriorPoint().getCoordinate();
      Point dot = new Point(inner.x, inner.y);
      Box around = new Box(dot.x(), dot.y(), dot.x(), dot.y()).expanded(FAR);
      FreeSpace space = spaces.get(cell).part(around);
      boolean[] pieces = null;
      for (PieceArt other : layout.art()) {
        if (other.bounds().overlaps(cell.shown()) && other.bounds().overlaps(around)) {
          pieces = union(pieces, space.inside(other.outline()));
        }
      }
      FreeSpace.Finder finder = space.finder(pieces, false);
      for (Supplier<PieceLabel.Form> supplier : full) {
        PieceLabel.Form form = supplier.get();
        if (form.turned()) {
          continue;
        }
        Optional<Box> box = finder.find(form.width(), form.height(), dot, room(cell));
        if (box.isEmpty()) {
          continue;
        }
        Note note = new Note(cell, form, box.get(), tip(leaderLine(box.get(), dot), art));
        if (clear(note, art)) {
          leader(cell, note.box(), note.dot());
          put(form, cell, note.box());
          return cell;
        }
        first = first == null ? note : first;
      }
    }
    if (first == null) {
      return null;
    }
    if (inside(label.number(art.piece()), art, List.of(first.cell())) == null) {
      leader(first.cell(), first.box(), first.dot());
    }
    put(first.form(), first.cell(), first.box());
    return first.cell();
  }

  /** The point of a leader just inside the outline. */
  private static Point tip(Path leader, PieceArt art) {
    double length = leader.length();
    for (double at = 0; at < length; at += 0.25) {
      Point point = leader.atLength(at);
      if (art.polygon()
          .contains(new GeometryFactory().createPoint(new Coordinate(point.x(), point.y())))) {
        return leader.atLength(Math.min(length, at + LEADER_REACH));
      }
    }
    return leader.end();
  }

  /** A place for lettering outside its piece, and the point in the piece that it speaks of. */
  private record Note(Cell cell, PieceLabel.Form form, Box box, Point dot) {}

  private boolean clear(Note note, PieceArt own) {
    Path line = leaderLine(note.box(), note.dot());
    if (line.length() > LONGEST_LEADER) {
      return false;
    }
    List<Coordinate> ends = new ArrayList<>();
    for (Point point : line.flattened(1)) {
      ends.add(new Coordinate(point.x(), point.y()));
    }
    Geometry segment = new GeometryFactory().createLineString(ends.toArray(Coordinate[]::new));
    return !segment.intersects(geometry(layout.square()))
        && layout.art().stream().noneMatch(art -> art != own && art.polygon().intersects(segment))
        && placed.get(note.cell()).stream().noneMatch(box -> segment.intersects(geometry(box)));
  }

  private static boolean[] union(boolean[] a, boolean[] b) {
    if (a == null) {
      return b;
    }
    for (int i = 0; i < a.length; i++) {
      a[i] |= b[i];
    }
    return a;
  }

  private static Path leaderLine(Box box, Point dot) {
    Point from =
        new Point(
            Math.max(box.minX(), Math.min(box.maxX(), dot.x())),
            Math.max(box.minY(), Math.min(box.maxY(), dot.y())));
    Point start = from.plus(dot.minus(from).unit().times(Math.min(0.8, from.distance(dot))));
    return Path.polyline(List.of(start, dot));
  }

  private void leader(Cell cell, Box box, Point dot) {
    Path line = leaderLine(box, dot);
    items.get(cell).add(new Item.Shape(List.of(line), "leader"));
    items.get(cell).add(new Item.Shape(List.of(Path.circle(dot, LEADER_DOT)), "leader-dot"));
    spaces.get(cell).takeLine(line.flattened(0.2), CLEAR);
  }

  /** The tile's code in large, where it stays visible when the tiles are joined. */
  private void code(Cell cell) {
    if (layout.joins().stream().noneMatch(j -> j.first() == cell || j.second() == cell)) {
      return;
    }
    FreeSpace.Finder finder = spaces.get(cell).finder(null, true);
    for (String role : List.of("tile-code", "tile-code-small")) {
      TextBlock block =
          TextBlock.of(List.of(new TextBlock.Text(cell.code(), role)), 1000, styles, lettering);
      Optional<Box> found =
          finder.find(block.width(), block.height(), cell.core().centre(), room(cell));
      if (found.isPresent()) {
        items.get(cell).addAll(block.in(found.get(), false));
        spaces.get(cell).takeBox(found.get().expanded(CLEAR));
        return;
      }
    }
  }

  private Tile tile(Cell cell) {
    Point shift =
        new Point(
            paper.window().minX() - cell.window().minX(),
            paper.window().minY() - cell.window().minY());
    List<Item> page = new ArrayList<>(frame(cell));
    Affine map = Affine.translation(shift.x(), shift.y());
    items.get(cell).forEach(item -> page.add(Moved.by(map, item)));
    page.addAll(caption(cell));
    List<Integer> numbers =
        pieceIndexes.get(cell).stream().map(i -> layout.pieces().get(i).piece().number()).toList();
    return new Tile(
        cell.code(),
        cell.column(),
        cell.row(),
        cell.window(),
        new Drawing(paper.width(), paper.height(), page),
        numbers,
        alternative(cell),
        cell.core(),
        neighbours(cell).stream().map(Cell::code).toList());
  }

  private List<Cell> neighbours(Cell cell) {
    List<Cell> cells = new ArrayList<>();
    layout.joins().stream().filter(j -> j.second() == cell).forEach(j -> cells.add(j.first()));
    layout.joins().stream().filter(j -> j.first() == cell).forEach(j -> cells.add(j.second()));
    return cells;
  }

  /**
   * Ticks at the corners of the window, or a whole frame on a large sheet: where some is missing,
   * the printer has cut something off.
   */
  private List<Item> frame(Cell cell) {
    Box box = paper.window();
    Point back = new Point(cell.window().minX() - box.minX(), cell.window().minY() - box.minY());
    if (paper.kind() != Paper.Kind.PAGE) {
      return List.of(new Item.Shape(List.of(Path.rectangle(box)), "sheet-frame"));
    }
    List<Path> ticks = new ArrayList<>();
    for (double x : new double[] {box.minX(), box.maxX()}) {
      for (double y : new double[] {box.minY() + tiling.caption(), box.maxY()}) {
        if (crowded(new Point(x, y).plus(back))) {
          continue;
        }
        double inX = x == box.minX() ? TICK : -TICK;
        double inY = y == box.maxY() ? -TICK : TICK;
        ticks.add(
            Path.polyline(List.of(new Point(x + inX, y), new Point(x, y), new Point(x, y + inY))));
      }
    }
    return ticks.isEmpty() ? List.of() : List.of(new Item.Shape(ticks, "tile-frame"));
  }

  /** Whether something that shows a cropped page as well as a tick would lies in a corner. */
  private boolean crowded(Point corner) {
    double reach = TICK + CLEAR;
    return layout.square().expanded(reach).contains(corner)
        || layout.art().stream()
            .filter(art -> art.bounds().expanded(reach).contains(corner))
            .flatMap(art -> art.strokes().stream())
            .anyMatch(
                stroke ->
                    stroke.path().bounds().expanded(reach).contains(corner)
                        && stroke.path().distance(corner) < reach);
  }

  private List<Item> caption(Cell cell) {
    Box box = paper.window();
    Style bold = styles.style("tile-label-bold");
    double inset = paper.kind() == Paper.Kind.PAGE ? 0 : 1;
    double baseline = box.minY() + lettering.ascent(bold) + inset / 2;
    double left = box.minX() + inset + lettering.width(cell.code(), bold) + 3;
    String text = "";
    String role = "tile-label";
    search:
    for (String candidate : captions(cell)) {
      for (String size : List.of("tile-label", "tile-label-7")) {
        text = candidate;
        role = size;
        if (lettering.width(candidate, styles.style(size)) <= box.maxX() - left) {
          break search;
        }
      }
    }
    while (text.length() > 1 && lettering.width(text, styles.style(role)) > box.maxX() - left) {
      text = text.substring(0, text.offsetByCodePoints(text.length(), -2)) + "…";
    }
    return List.of(
        new Item.Lettering(
            cell.code(),
            new Point(box.minX() + inset, baseline),
            Alignment.START,
            0,
            "tile-label-bold"),
        new Item.Lettering(text, new Point(left, baseline), Alignment.START, 0, role));
  }

  private List<String> captions(Cell cell) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("title", pattern.source().masthead().title().text());
    arguments.put("size", subject.size());
    arguments.put("edition", pattern.source().masthead().edition().text());
    List<String> captions = new ArrayList<>();
    List<Piece> pieces =
        pieceIndexes.get(cell).stream().map(i -> layout.pieces().get(i).piece()).toList();
    for (boolean names : new boolean[] {true, false}) {
      List<String> list =
          pieces.stream().map(piece -> names ? named(piece) : "" + piece.number()).toList();
      String text =
          pieces.isEmpty()
              ? wording.text("tile.caption.square")
              : wording.text(
                  "tile.caption.pieces",
                  Map.of("count", pieces.size(), "pieces", String.join(", ", list)));
      Map<String, Object> all = new LinkedHashMap<>(arguments);
      all.put("pieces", text);
      captions.add(wording.text(subject.key("tile.caption"), all));
    }
    captions.add(wording.text(subject.key("tile.caption.short"), arguments));
    if (paper.isCorrected()) {
      captions.replaceAll(this::corrected);
    }
    return captions;
  }

  private String corrected(String caption) {
    return wording.text(
        "tile.caption.corrected",
        Map.of(
            "across",
            paper.correction().across(),
            "down",
            paper.correction().down(),
            "caption",
            caption));
  }

  private String named(Piece piece) {
    return wording.text(
        "tile.piece", Map.of("number", Integer.toString(piece.number()), "name", piece.name()));
  }

  private String alternative(Cell cell) {
    ListFormatter list = ListFormatter.getInstance(wording.locale());
    MarkLabels labels =
        new MarkLabels(wording, styles, lettering, pattern.source().masthead().form());
    List<String> content = new ArrayList<>();
    for (int i : pieceIndexes.get(cell)) {
      PieceArt art = layout.art().get(i);
      String named = subject.part(art, cell);
      List<String> marks = labels.words(art.piece());
      content.add(
          marks.isEmpty()
              ? named
              : wording.text(
                  "tile.alternative.marked", Map.of("piece", named, "marks", list.format(marks))));
    }
    if (cell == layout.cells().get(0)) {
      content.add(wording.text("tile.alternative.square"));
    }
    List<String> sides = new ArrayList<>();
    for (Join join : layout.joins()) {
      if (join.second() == cell) {
        sides.add(side(join.sideways() ? "left" : "above", join.first()));
      }
    }
    for (Join join : layout.joins()) {
      if (join.first() == cell) {
        sides.add(side(join.sideways() ? "right" : "below", join.second()));
      }
    }
    String joins =
        sides.isEmpty()
            ? wording.text("tile.alternative.alone")
            : wording.text("tile.alternative.joins", Map.of("sides", list.format(sides)));
    return wording.text(
        subject.key("tile.alternative"),
        Map.of(
            "code",
            cell.code(),
            "size",
            subject.size(),
            "content",
            list.format(content),
            "joins",
            joins));
  }

  private String side(String side, Cell other) {
    return wording.text("tile.side." + side, Map.of("code", other.code()));
  }
}
