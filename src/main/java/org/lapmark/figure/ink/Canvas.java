package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.LetteringMeasure;
import org.lapmark.drawing.Style;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * What is drawn of one picture, in millimetres on paper, and what its labels must keep clear of.
 * Labels are wished for here and placed when the whole figure is known.
 */
public final class Canvas {
  /**
   * A straight stretch of a drawn line.
   *
   * @param from one end
   * @param to the other
   */
  public record Stretch(Point from, Point to) {}

  /**
   * A label that is to be placed.
   *
   * @param text its text
   * @param ring whether it stands in a ring
   * @param anchors finds the points it may name, the best first
   * @param home where it may stand without a leader, or null
   */
  public record Wish(
      String text, boolean ring, Supplier<List<Point>> anchors, Predicate<Point> home) {}

  /** Cloth, and whether it has lines or dots of a texture. */
  private record Surface(Predicate<Point> extent, boolean isTextured) {}

  private static final String TEXT = "figure-text";
  private static final String DIMENSION = "figure-dimension";
  private static final double FLATNESS = 0.05;

  /** What lettering at one of several places keeps clear of lines and of other lettering. */
  private static final double BETWEEN = 0.6;

  private final LetteringMeasure lettering;
  private final Style text;
  private final List<Item> items = new ArrayList<>();
  private final List<Stretch> lines = new ArrayList<>();
  private final List<Box> texts = new ArrayList<>();
  private final List<List<Point>> covered = new ArrayList<>();
  private final List<Surface> surfaces = new ArrayList<>();
  private final List<Wish> wishes = new ArrayList<>();
  private final Set<Integer> leftOut = new TreeSet<>();
  private final List<DimensionLine> dimensions = new ArrayList<>();
  private final Map<Beside, List<String>> measured = new EnumMap<>(Beside.class);
  private final List<String> lettered = new ArrayList<>();
  private boolean crowded;
  private Box bounds;

  /**
   * An empty canvas.
   *
   * @param styles the roles of {@code figure-…}
   * @param lettering the font in which it is lettered
   */
  public Canvas(StyleSheet styles, LetteringMeasure lettering) {
    this(styles.style(TEXT), lettering);
  }

  private Canvas(Style text, LetteringMeasure lettering) {
    this.lettering = lettering;
    this.text = text;
  }

  /** An empty canvas of the same look and lettering. */
  public Canvas another() {
    return new Canvas(text, lettering);
  }

  /** What is drawn, in order. */
  public List<Item> items() {
    return items;
  }

  /** What labels keep clear of. */
  public List<Stretch> lines() {
    return lines;
  }

  /** Lettering that stands at its place. */
  public List<Box> texts() {
    return texts;
  }

  /** Shapes that are filled with a texture. */
  public List<List<Point>> covered() {
    return covered;
  }

  /** Whether the cloth that is seen at a point has lines or dots of a texture. */
  boolean isTextured(Point point) {
    boolean textured = false;
    for (Surface surface : surfaces) {
      if (surface.extent.test(point)) {
        textured = surface.isTextured;
      }
    }
    return textured;
  }

  /** Labels that are to be placed. */
  public List<Wish> wishes() {
    return wishes;
  }

  /** What the drawing takes up, without labels that are to be placed. */
  public Box bounds() {
    return bounds == null ? Box.at(0, 0, 1, 1) : bounds;
  }

  private void grow(Box box) {
    bounds = bounds == null ? box : bounds.union(box);
  }

  /** Adds what another picture drew, moved. */
  public void add(Canvas other, Point by) {
    items.add(
        new Item.Group(null, Affine.translation(by.x(), by.y()), null, List.copyOf(other.items)));
    other.lines.forEach(s -> lines.add(new Stretch(s.from.plus(by), s.to.plus(by))));
    other.texts.forEach(box -> texts.add(box.moved(by)));
    other.covered.forEach(
        polygon -> covered.add(polygon.stream().map(point -> point.plus(by)).toList()));
    other.wishes.forEach(
        wish ->
            wishes.add(
                new Wish(
                    wish.text,
                    wish.ring,
                    () -> wish.anchors.get().stream().map(anchor -> anchor.plus(by)).toList(),
                    wish.home == null ? null : point -> wish.home.test(point.minus(by)))));
    other.surfaces.forEach(
        one ->
            surfaces.add(new Surface(point -> one.extent.test(point.minus(by)), one.isTextured)));
    leftOut.addAll(other.leftOut);
    crowded |= other.crowded;
    grow(other.bounds().moved(by));
  }

  /** Adds what another canvas drew, without the labels that it wished for. */
  public void addUnlettered(Canvas other) {
    items.addAll(other.items);
    lines.addAll(other.lines);
    texts.addAll(other.texts);
    covered.addAll(other.covered);
    leftOut.addAll(other.leftOut);
    if (other.bounds != null) {
      grow(other.bounds);
    }
  }

  /** Fills a shape with a material. */
  public void cloth(Path outline, Texture texture, Side side, double angle) {
    items.addAll(texture.fill(outline, side, angle));
    List<Point> shape = outline.flattened(FLATNESS);
    covered.add(shape);
    surfaces.add(new Surface(new Region(shape), texture.isDrawn(side)));
    grow(outline.bounds());
  }

  /** Fills what of a shape lies within another one that is filled already. */
  public void clothWithin(Path clip, Path outline, Texture texture, Side side, double angle) {
    items.add(new Item.Group(clip, Affine.IDENTITY, null, texture.fill(outline, side, angle)));
    surfaces.add(new Surface(new Region(outline.flattened(FLATNESS)), texture.isDrawn(side)));
  }

  /** Draws a line that labels keep clear of. */
  public void line(Path path, String role) {
    lines(List.of(path), role);
  }

  /** Draws lines that labels keep clear of. */
  public void lines(List<Path> paths, String role) {
    if (paths.isEmpty()) {
      return;
    }
    items.add(new Item.Shape(paths, role));
    for (Path path : paths) {
      obstacle(path);
      grow(path.bounds());
    }
  }

  /** Draws a line seen only within a shape. */
  public void within(Path clip, List<Path> paths, String role) {
    if (!paths.isEmpty()) {
      items.add(new Item.Group(clip, Affine.IDENTITY, null, List.of(new Item.Shape(paths, role))));
    }
  }

  /** Fills or draws something that labels may stand on. */
  public void shape(Path path, String role) {
    shapes(List.of(path), role);
  }

  /** The same of several paths; what lies within a second one is left out. */
  public void shapes(List<Path> paths, String role) {
    items.add(new Item.Shape(paths, role));
    paths.forEach(path -> grow(path.bounds()));
  }

  /** Keeps labels clear of a line without drawing it. */
  public void obstacle(Path path) {
    List<Point> points = path.flattened(FLATNESS);
    for (int i = 1; i < points.size(); i++) {
      lines.add(new Stretch(points.get(i - 1), points.get(i)));
    }
  }

  /**
   * Wishes for a label of the first of some points that can be named, or at home without a leader.
   */
  public void wish(String words, List<Point> anchors, Predicate<Point> home) {
    List<Point> found = List.copyOf(anchors);
    wish(words, () -> found, home);
  }

  /** Wishes for a label whose points are found when it is placed. */
  public void wish(String words, Supplier<List<Point>> anchors, Predicate<Point> home) {
    wishes.add(new Wish(words, false, anchors, home));
  }

  /**
   * Names a shape where it is open to view: on it if there is room.
   *
   * @param words the name
   * @param shape a closed run of points
   * @param covers shapes that lie over it
   */
  public void name(String words, List<Point> shape, List<List<Point>> covers) {
    Region open = new Region(shape);
    List<Region> hidden = covers.stream().map(Region::new).toList();
    wish(
        words,
        () -> {
          List<Point> anchors = Polygons.spread(shape, covers);
          return anchors.isEmpty() ? List.of(shape.get(0)) : anchors;
        },
        point -> open.test(point) && hidden.stream().noneMatch(cover -> cover.test(point)));
  }

  /** Wishes for a number in a ring. */
  public void ring(int number, Point anchor) {
    wishes.add(new Wish(Integer.toString(number), true, () -> List.of(anchor), null));
  }

  /** The height of a line of lettering, from above the capitals to below the descenders. */
  public double lineHeight() {
    return 0.92 * text.fontSize() * 25.4 / 72;
  }

  /** From one baseline to the next. */
  public double leading() {
    return 1.16 * text.fontSize() * 25.4 / 72;
  }

  /** A line of lettering whose box begins at a height, at a place along it. */
  Item lettering(String words, Point top, Item.Alignment alignment) {
    double baseline = top.y() + 0.70 * text.fontSize() * 25.4 / 72;
    return new Item.Lettering(words, new Point(top.x(), baseline), alignment, 0, TEXT);
  }

  /** How wide a line of lettering is. */
  public double width(String words) {
    return lettering.width(words, text);
  }

  /**
   * A dimension between two points, with witness lines.
   *
   * @param a one point
   * @param b the other
   * @param beside where it stands
   * @param words its lettering
   * @param shape the box that it stands beside
   */
  public void dimension(Point a, Point b, Beside beside, String words, Box shape) {
    List<DimensionLine> places =
        DimensionLine.places(a, b, beside, width(words), lineHeight(), shape);
    Optional<DimensionLine> free =
        Stream.of(false, true)
            .flatMap(
                interrupted ->
                    places.stream()
                        .filter(place -> place.isFree(lines, texts, dimensions, interrupted)))
            .findFirst();
    crowded |= free.isEmpty();
    DimensionLine place = free.orElse(places.get(0));
    for (Stretch one : place.witnesses(texts)) {
      line(Path.polyline(List.of(one.from(), one.to())), DIMENSION);
    }
    line(Path.polyline(List.of(place.from(), place.to())), DIMENSION);
    place.ticks().forEach(tick -> shape(tick, "figure-tick"));
    dimensions.add(place);
    measured.computeIfAbsent(beside, side -> new ArrayList<>()).add(words);
    write(words, place.words());
  }

  /**
   * Lettering at the first of some places where it is in nothing's way.
   *
   * @param words the lettering
   * @param middles the middles of its places, the best first
   */
  public void fixed(String words, List<Point> middles) {
    List<Box> places = middles.stream().map(middle -> box(words, middle)).toList();
    Optional<Box> free =
        places.stream()
            .filter(box -> !covers(box.expanded(BETWEEN)) && !hit(box.expanded(BETWEEN)))
            .findFirst();
    crowded |= free.isEmpty();
    lettered.add(words);
    write(words, free.orElse(places.get(0)));
  }

  /** Lettering at a fixed place. */
  public void fixed(String words, Point middle) {
    lettered.add(words);
    write(words, box(words, middle));
  }

  /**
   * Lettering in as many lines as it needs, one below the other.
   *
   * @param words the lettering
   * @param first the middle of the first line
   * @param widest how long a line may be
   * @return how many lines it has
   */
  public int fixed(String words, Point first, double widest) {
    List<String> broken = LineBreaks.within(words, widest, this);
    for (int i = 0; i < broken.size(); i++) {
      write(broken.get(i), box(broken.get(i), first.plus(new Point(0, i * leading()))));
    }
    return broken.size();
  }

  private Box box(String words, Point middle) {
    double width = width(words);
    return Box.at(middle.x() - width / 2, middle.y() - lineHeight() / 2, width, lineHeight());
  }

  private void write(String words, Box box) {
    items.add(lettering(words, new Point(box.centre().x(), box.minY()), Item.Alignment.MIDDLE));
    texts.add(box);
    grow(box);
  }

  /** What is lettered in it, but for dimensions and numbers in rings. */
  public List<String> lettered() {
    List<String> all = new ArrayList<>(lettered);
    wishes.stream().filter(wish -> !wish.ring).map(Wish::text).forEach(all::add);
    return all;
  }

  /** The lettering of its dimensions by the side on which they stand. */
  public Map<Beside, List<String>> measured() {
    return measured;
  }

  /** Its numbers in rings. */
  public List<Integer> numbers() {
    return wishes.stream().filter(Wish::ring).map(wish -> Integer.valueOf(wish.text)).toList();
  }

  /** Whether something of it has no place where it is in nothing's way. */
  public boolean isCrowded() {
    return crowded;
  }

  /** How far from a shape the line of a dimension stands, counted from 0 for the nearest. */
  public static double dimensionAt(int row) {
    return DimensionLine.at(row);
  }

  /**
   * Says that a dimension isn't drawn, because its ends lie on each other as seen from where it
   * would stand.
   *
   * @param number which of the figure's dimensions it is
   */
  public void leaveOut(int number) {
    leftOut.add(number);
  }

  /** The dimensions that aren't drawn. */
  public Set<Integer> leftOut() {
    return leftOut;
  }

  private boolean hit(Box box) {
    return texts.stream().anyMatch(other -> other.overlaps(box));
  }

  private boolean covers(Box box) {
    return lines.stream().anyMatch(s -> Polygons.crosses(box, s.from, s.to));
  }
}
