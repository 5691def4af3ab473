package org.lapmark.print;

import com.ibm.icu.text.ListFormatter;
import java.util.ArrayList;
import java.util.BitSet;
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
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Cell;
import org.lapmark.print.arrange.Join;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.line.CurveClip;
import org.lapmark.print.line.Dashes;
import org.lapmark.print.line.FreeSpace;
import org.lapmark.print.line.Moved;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.MarkLabels;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.PieceLabel;
import org.lapmark.print.piece.TextBlock;
import org.lapmark.wording.Wording;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Draws the tiles of one sheet. Used once. */
final class TilePainter {
  /** The paper kept free around lines and lettering, in millimetres. */
  static final double CLEAR = 1.2;

  /** How far lettering keeps from the lines on which tiles meet, in millimetres. */
  private static final double FROM_EDGE = 1.5;

  /** How far a tile's code keeps from lines and words where there is room, in millimetres. */
  private static final double CODE_APART = 3;

  /** How wide the words on a tile without a line are, in millimetres. */
  private static final double BLANK_WIDTH = 90;

  private static final double TICK = 4;
  private static final double SQUARE_MARGIN = 7;
  private static final double SMALL_MARGIN = 4;

  /** How wide the words on joining are tried beside a small square, in millimetres. */
  private static final double[] JOINING_WIDTHS = {90, 60, 42};

  private static final double LEADER_DOT = 0.6;
  private static final double LONGEST_LEADER = 30;

  /** How far from a piece its lettering is looked for a place, in millimetres. */
  private static final double FAR = 300;

  /** How far a leader reaches into a piece, in millimetres. */
  private static final double LEADER_REACH = 2;

  private final SheetPlanner planner;
  private final Wording wording;
  private final StyleSheet styles;
  private final LetteringMeasure lettering;
  private final SheetSubject subject;
  private final EvaluatedPattern pattern;
  private final Paper paper;
  private final Tiling tiling;
  private final SheetLayout layout;
  private final List<SheetSubject.LineName> names;
  private final List<CheckLine> checks;
  private final List<Cell> blank;
  private final Map<Cell, List<Item>> items = new LinkedHashMap<>();
  private final Map<Cell, FreeSpace> spaces = new LinkedHashMap<>();
  private final Map<Cell, List<Box>> placed = new LinkedHashMap<>();
  private final Map<Cell, List<Integer>> pieceIndexes = new LinkedHashMap<>();

  TilePainter(
      SheetPlanner planner,
      SheetSubject subject,
      Paper paper,
      Tiling tiling,
      SheetSubject.Drawn drawn,
      List<Cell> blank) {
    this.blank = blank;
    this.planner = planner;
    this.wording = planner.wording();
    this.styles = planner.styles();
    this.lettering = planner.lettering();
    this.subject = subject;
    this.pattern = subject.pattern();
    this.paper = paper;
    this.tiling = tiling;
    this.layout = drawn.layout();
    this.names = drawn.names();
    this.checks = drawn.checks();
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
    JoinPainter joins = new JoinPainter(planner, tiling, layout, checks, blank, items, spaces);
    joins.paint();
    labels();
    markLabels();
    joiningBeside();
    joins.notes();
    List<Tile> tiles = new ArrayList<>();
    for (Cell cell : layout.cells()) {
      if (blank.contains(cell)) {
        blank(cell);
      }
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
    boolean small = isSmall(box);
    double margin = small ? SMALL_MARGIN : SQUARE_MARGIN;
    double y = box.minY() + margin;
    for (TextBlock.Text text : squareTexts(box, small)) {
      TextBlock block = TextBlock.of(List.of(text), box.width() - 2 * margin, styles, lettering);
      list.addAll(block.in(Box.at(box.minX() + margin, y, block.width(), block.height()), false));
      y += block.height() + (small ? 1.5 : 3);
    }
    if (box == layout.square() && !small) {
      list.addAll(
          subject.legend(new Box(box.minX() + margin, y, box.maxX() - margin, box.maxY() - 4)));
    }
  }

  private static boolean isSmall(Box square) {
    return square.width() < SheetLayout.SQUARE - 1;
  }

  private List<TextBlock.Text> squareTexts(Box box, boolean small) {
    String key = small ? "tile.square.small." : "tile.square.";
    List<TextBlock.Text> texts = new ArrayList<>();
    texts.add(new TextBlock.Text(wording.text(key + "name"), "test-square-name"));
    texts.add(new TextBlock.Text(wording.text(key + "check"), "test-square-text"));
    if (layout.art().stream().anyMatch(art -> art.polygon().intersects(geometry(box)))) {
      texts.add(new TextBlock.Text(wording.text(key + "inside"), "test-square-text"));
    }
    if (!paper.filling().isPaged()) {
      texts.add(new TextBlock.Text(wording.text("tile.square.frame"), "test-square-text"));
    }
    if (!small) {
      texts.add(joining());
    }
    return texts;
  }

  private TextBlock.Text joining() {
    return new TextBlock.Text(
        wording.text(
            layout.joins().isEmpty()
                ? "tile.square.apart"
                : "tile.square.join." + JoinPainter.way(tiling.joins())),
        "test-square-text");
  }

  /** How to join, beside a square that has no room for so many words. */
  private void joiningBeside() {
    Cell cell = layout.cells().get(0);
    if (!isSmall(layout.square())) {
      return;
    }
    FreeSpace space = spaces.get(cell);
    BitSet pieces = new BitSet();
    for (PieceArt art : layout.art()) {
      if (art.bounds().overlaps(cell.shown())) {
        pieces.or(space.inside(art.outline()));
      }
    }
    // Off the pieces, if there is room.
    FreeSpace.Finder off = space.finder(pieces, false);
    FreeSpace.Finder anywhere = space.finder(null, true);
    for (FreeSpace.Finder finder : List.of(off, anywhere)) {
      for (double width : JOINING_WIDTHS) {
        TextBlock block = TextBlock.of(List.of(joining()), width, styles, lettering);
        Optional<Box> found =
            finder.find(block.width(), block.height(), layout.square().centre(), room(cell));
        if (found.isPresent()) {
          items.get(cell).addAll(block.in(found.get(), false));
          space.takeBox(found.get().expanded(CLEAR));
          return;
        }
      }
    }
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
                  Comparator.<Cell>comparingInt(cell -> blank.contains(cell) ? 1 : 0)
                      .thenComparingDouble(cell -> cell.core().centre().distance(middle(art))))
              .toList();
      List<Supplier<PieceLabel.Form>> full = label.full(art.piece());
      // On a tile that everybody prints, if there is room.
      List<Cell> printed = cells.stream().filter(cell -> !blank.contains(cell)).toList();
      Cell home = inside(full, art, printed);
      if (home == null && printed.size() < cells.size()) {
        home = inside(full, art, cells);
      }
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
    if (!isOneSize()) {
      return;
    }
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

  /** Marks of several sizes stand beside each other; words between them would be in the way. */
  private boolean isOneSize() {
    return subject instanceof OneSize;
  }

  private static Point middle(PieceArt art) {
    Coordinate centre = art.polygon().getCentroid().getCoordinate();
    return new Point(centre.x, centre.y);
  }

  static Box room(Cell cell) {
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
      BitSet pieces = new BitSet();
      for (PieceArt other : layout.art()) {
        if (other.bounds().overlaps(cell.shown()) && other.bounds().overlaps(around)) {
          pieces.or(space.inside(other.outline()));
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

  /** Says that nobody needs a tile. */
  private void blank(Cell cell) {
    TextBlock block =
        TextBlock.of(
            List.of(new TextBlock.Text(wording.text("tile.blank"), "test-square-text")),
            BLANK_WIDTH,
            styles,
            lettering);
    spaces
        .get(cell)
        .finder(null, true)
        .find(block.width(), block.height(), cell.core().centre(), room(cell))
        .ifPresent(
            box -> {
              items.get(cell).addAll(block.in(box, false));
              spaces.get(cell).takeBox(box.expanded(CLEAR));
            });
  }

  /** The tile's code in large, where it stays visible when the tiles are joined. */
  private void code(Cell cell) {
    if (layout.joins().stream().noneMatch(j -> j.first() == cell || j.second() == cell)) {
      return;
    }
    FreeSpace.Finder finder = spaces.get(cell).finder(null, true);
    // Away from other words where there is room, so that it isn't read as one of them.
    for (double apart : new double[] {CODE_APART, 0}) {
      for (String role : List.of("tile-code", "tile-code-small")) {
        TextBlock block =
            TextBlock.of(List.of(new TextBlock.Text(cell.code(), role)), 1000, styles, lettering);
        Optional<Box> found =
            finder.find(
                block.width() + 2 * apart,
                block.height() + 2 * apart,
                cell.core().centre(),
                room(cell));
        if (found.isPresent()) {
          Box box = found.get().expanded(-apart);
          items.get(cell).addAll(block.in(box, false));
          spaces.get(cell).takeBox(box.expanded(CLEAR));
          return;
        }
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
        new Drawing(paper.width(), paper(cell).height(), page),
        numbers,
        alternative(cell),
        cell.core(),
        neighbours(cell).stream().map(Cell::code).toList(),
        blank.contains(cell));
  }

  /** A tile's own paper: off a roll, as long as the tile. */
  private Paper paper(Cell cell) {
    double margins = paper.height() - paper.window().height();
    return paper.cut(cell.window().height() + margins);
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
    Box box = paper(cell).window();
    Point back = new Point(cell.window().minX() - box.minX(), cell.window().minY() - box.minY());
    if (!paper.filling().isPaged()) {
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
    double inset = paper.filling().isPaged() ? 0 : 1;
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
      List<String> marks = isOneSize() ? labels.words(art.piece()) : List.of();
      content.add(
          marks.isEmpty()
              ? named
              : wording.text(
                  "tile.alternative.marked", Map.of("piece", named, "marks", list.format(marks))));
    }
    if (blank.contains(cell)) {
      content.add(wording.text("tile.alternative.blank"));
    }
    if (cell == layout.cells().get(0)) {
      content.add(
          wording.text(
              isSmall(layout.square())
                  ? "tile.alternative.square.small"
                  : "tile.alternative.square"));
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
