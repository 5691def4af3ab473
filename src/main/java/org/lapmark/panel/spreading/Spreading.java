package org.lapmark.panel.spreading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * Cuts a panel along slash lines, opens or overlaps them, and redraws its outline.
 *
 * <p>The part on which the middle of the grainline lies stays where it is (without a grainline, the
 * part at which the first edge begins), and the others move away from it; where the middle of the
 * grainline lies on a slash line, both sides of that move by half. Parts move as they are: shifted,
 * or turned about the hinge. An edge that is cut stays one edge.
 *
 * <p>At an opening a cubic with the tangents of both sides replaces a stretch of the edge on either
 * side of the cut, usually as long as the opening is wide and 5 mm more, between a quarter and four
 * times that, or less where a corner, a turn or another cut is nearer. It bends to the side to
 * which the edge bends there, so that a rounded edge stays rounded, and the edge is as long as
 * before and the opening, measured along it, more: exactly where such a curve can be, else within
 * an eighth of what is redrawn times the square of the angle, in radians, by which it turns there.
 * Where the edge is too straight for the slant of the opening it bends to one side and back, which
 * is told. A straight edge whose parts are only shifted stays straight from corner to corner.
 *
 * <p>At a hinge the edge keeps its length within 1e-6 mm. Where it bends to the side to which it
 * turns at the hinge, a cubic of just the length that it replaces makes it smooth; a straight edge,
 * on which there is no such curve, turns at the hinge by the angle of the opening.
 *
 * <p>A mark goes with the part on which it lies. A line that crosses a slash line is redrawn like
 * an edge; a closed one, as of a pocket's place, keeps its shape and goes with its middle.
 */
public final class Spreading {
  /** How far off the outline, in millimetres, a line's end may lie; also how near is the same. */
  private static final double SNAP = 0.05;

  private static final double CHORD = 1e-3;

  private final Panel panel;
  private final Path outline;
  private final double length;
  private final List<Double> starts = new ArrayList<>();
  private final List<Cut> cuts = new ArrayList<>();

  /** A slash line with its ends on the outline: arc lengths, and the points in between. */
  private record Cut(Slash slash, double from, double to, List<Point> points, Path side) {
    Point start() {
      return points.get(0);
    }

    Point end() {
      return points.get(points.size() - 1);
    }
  }

  private final Consumer<PanelException> notices;

  private Spreading(Panel panel, Consumer<PanelException> notices) {
    this.panel = panel;
    this.notices = notices;
    this.outline = panel.outline();
    this.length = outline.length();
    double at = 0;
    for (Edge edge : panel.edges()) {
      starts.add(at);
      at += edge.path().length();
    }
  }

  /**
   * Opens slash lines.
   *
   * @param panel the panel
   * @param slashes the lines; those that open by 0 change nothing
   * @param notices told of an edge that can't be redrawn without bending to one side and back
   * @return the panel with the same names, and its marks where they have come to
   * @throws PanelException when a line doesn't lead across the panel, lines cross, an opening is at
   *     a corner or too wide for a smooth line, or the outline folds over itself
   */
  public static Panel spread(Panel panel, List<Slash> slashes, Consumer<PanelException> notices) {
    Spreading spreading = new Spreading(panel, notices);
    for (Slash slash : slashes) {
      spreading.cut(slash);
    }
    spreading.checkApart();
    spreading.cuts.removeIf(cut -> cut.slash.open() == 0);
    return spreading.cuts.isEmpty() ? panel : spreading.opened();
  }

  private void cut(Slash slash) {
    List<Double> ends = new ArrayList<>();
    List<Point> line = slash.line().flattened(CHORD);
    Point first = line.get(0);
    Point last = line.get(line.size() - 1);
    List<Meeting> meetings = new ArrayList<>();
    if (outline.distance(first) <= SNAP) {
      meetings.add(new Meeting(0, outline.nearestLength(first)));
    }
    meetings.addAll(crossings(slash.line(), line));
    if (outline.distance(last) <= SNAP) {
      meetings.add(new Meeting(line.size() - 1.0, outline.nearestLength(last)));
    }
    meetings.sort(Comparator.comparingDouble(Meeting::along));
    List<Meeting> apart = new ArrayList<>();
    for (Meeting meeting : meetings) {
      if (ends.stream().noneMatch(end -> apart(end, meeting.at) <= 1.2 * SNAP)) {
        ends.add(meeting.at);
        apart.add(meeting);
      }
    }
    if (apart.size() != 2) {
      throw PanelCode.SLASH_NOT_ACROSS.exception(
          "panel", panel.name(), "slash", slash.name(), "count", apart.size());
    }
    double from = snapped(apart.get(0).at);
    double to = snapped(apart.get(1).at);
    List<Point> points = new ArrayList<>();
    points.add(outline.atLength(from));
    for (int i = 0; i < line.size(); i++) {
      if (i > apart.get(0).along && i < apart.get(1).along) {
        points.add(line.get(i));
      }
    }
    points.add(outline.atLength(to));
    Point inside = middle(points);
    if (!outline.encloses(inside) || outline.distance(inside) < SNAP) {
      throw PanelCode.SLASH_NOT_ACROSS.exception(
          "panel", panel.name(), "slash", slash.name(), "count", 0);
    }
    double across = points.get(0).distance(points.get(points.size() - 1));
    if (Math.abs(slash.open()) > across && slash.hinge() != Slash.Hinge.NONE) {
      throw PanelCode.SLASH_TOO_WIDE.exception(
          "panel",
          panel.name(),
          "slash",
          slash.name(),
          "open",
          Math.abs(slash.open()),
          "length",
          across);
    }
    List<Curve> around = new ArrayList<>(stretch(from, to).curves());
    for (int i = points.size() - 1; i > 0; i--) {
      around.add(new Line(points.get(i), points.get(i - 1)));
    }
    cuts.add(new Cut(slash, from, to, List.copyOf(points), new Path(around)));
  }

  private static Point middle(List<Point> points) {
    Path line = Path.polyline(points);
    return line.atLength(line.length() / 2);
  }

  private Path stretch(double from, double to) {
    if (to > from) {
      return outline.part(from, to);
    }
    Path tail = outline.part(from, length);
    return to <= Path.JOIN_TOLERANCE ? tail : tail.then(outline.part(0, to));
  }

  /** Where a line meets the outline: how far along its points, and where on the outline. */
  private record Meeting(double along, double at) {}

  private List<Meeting> crossings(Path drawn, List<Point> line) {
    List<Meeting> found = new ArrayList<>();
    Box box = drawn.bounds().expanded(SNAP);
    Point before = outline.start();
    for (Curve curve : outline.curves()) {
      if (!curve.bounds().expanded(SNAP).overlaps(box)) {
        before = curve.end();
        continue;
      }
      for (Point next : curve.flattened(CHORD)) {
        for (int i = 1; i < line.size(); i++) {
          double along = crossing(line.get(i - 1), line.get(i), before, next);
          if (along >= 0) {
            Point at = line.get(i - 1).towards(line.get(i), along);
            found.add(new Meeting(i - 1 + along, outline.nearestLength(at)));
          }
        }
        before = next;
      }
    }
    return found;
  }

  /** How far along the first of two straight lines they cross, from 0 to 1; below 0 if nowhere. */
  private static double crossing(Point from, Point to, Point start, Point end) {
    Point along = to.minus(from);
    Point across = end.minus(start);
    double cross = along.cross(across);
    if (cross == 0) {
      return -1;
    }
    double t = start.minus(from).cross(across) / cross;
    double u = start.minus(from).cross(along) / cross;
    return t >= 0 && t <= 1 && u >= 0 && u <= 1 ? t : -1;
  }

  /** How far two places of the outline are apart, the shorter way round. */
  private double apart(double one, double other) {
    double apart = Math.abs(one - other);
    return Math.min(apart, length - apart);
  }

  /** A place that is that of a corner, a join of curves or another line's end if one is near. */
  private double snapped(double at) {
    List<Double> known = new ArrayList<>(starts);
    cuts.forEach(cut -> known.addAll(List.of(cut.from, cut.to)));
    double join = 0;
    for (Curve curve : outline.curves()) {
      known.add(join);
      join += curve.length();
    }
    for (double place : known) {
      if (apart(place, at) <= SNAP) {
        return place;
      }
    }
    return at;
  }

  private void checkApart() {
    for (int i = 0; i < cuts.size(); i++) {
      for (int j = i + 1; j < cuts.size(); j++) {
        Cut one = cuts.get(i);
        Cut other = cuts.get(j);
        if (isCrossed(one, other)) {
          throw PanelCode.SLASHES_CROSS.exception(
              "panel", panel.name(), "slash", other.slash.name(), "other", one.slash.name());
        }
      }
    }
  }

  private boolean isCrossed(Cut one, Cut other) {
    boolean sameFrom = other.from == one.from || other.from == one.to;
    boolean sameTo = other.to == one.from || other.to == one.to;
    if (sameFrom && sameTo) {
      return true;
    }
    if (!sameFrom && !sameTo && isAfter(one, other.from) != isAfter(one, other.to)) {
      return true;
    }
    for (int i = 1; i < one.points.size(); i++) {
      for (int j = 1; j < other.points.size(); j++) {
        Point from = one.points.get(i - 1);
        Point to = one.points.get(i);
        double along = crossing(from, to, other.points.get(j - 1), other.points.get(j));
        if (along >= 0 && outline.distance(from.towards(to, along)) > SNAP) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether a place lies between a line's ends, clockwise from where it begins. */
  private boolean isAfter(Cut cut, double at) {
    return clockwise(cut.from, at) < clockwise(cut.from, cut.to);
  }

  private double clockwise(double from, double to) {
    return to >= from ? to - from : to - from + length;
  }

  /** Which side of each line: true for the side clockwise from where the line begins. */
  private List<Boolean> sides(double at) {
    return cuts.stream().map(cut -> isAfter(cut, at)).toList();
  }

  private List<Boolean> sides(Point point) {
    return cuts.stream().map(cut -> cut.side.encloses(point)).toList();
  }

  private Panel opened() {
    Motions motions = new Motions();
    Map<Double, Cut> places = new TreeMap<>();
    for (Cut cut : cuts) {
      places.put(cut.from, cut);
      places.put(cut.to, cut);
    }
    List<Double> order = List.copyOf(places.keySet());
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      double at = order.get(i);
      double before = order.get((i + order.size() - 1) % order.size());
      double after = order.get((i + 1) % order.size());
      joints.add(
          new Joint(
              at,
              motions.of(sides(halfway(before, at))),
              motions.of(sides(halfway(at, after))),
              places.get(at)));
    }
    Map<Integer, Redrawing> redrawn = redrawn(joints, motions);
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < panel.edges().size(); i++) {
      Edge edge = panel.edges().get(i);
      edges.add(new Edge(edge.name(), edge.from(), edge.to(), redrawn.get(i).path()));
    }
    Panel opened = new Panel(panel.name(), edges, panel.chains(), marks(redrawn, motions));
    if (opened.outline().selfCrossing().isPresent() || !(opened.outline().signedArea() > 0)) {
      Point at = opened.outline().selfCrossing().orElse(opened.outline().start());
      throw PanelCode.SLASH_FOLDS.exception(
          "panel", panel.name(), "slash", widest().slash.name(), "x", at.x(), "y", at.y());
    }
    return opened;
  }

  private Cut widest() {
    return cuts.stream()
        .max(Comparator.comparingDouble(cut -> Math.abs(cut.slash.open())))
        .orElseThrow();
  }

  private double halfway(double from, double to) {
    double at = from + (to > from ? to - from : to - from + length) / 2;
    return at >= length ? at - length : at;
  }

  /** A place of the outline at which it is cut, with the motions of what lies on either side. */
  private record Joint(double at, Affine before, Affine after, Cut cut) {
    double gap(Point point) {
      return before.apply(point).distance(after.apply(point));
    }
  }

  /** How the parts move. */
  private final class Motions {
    private final List<Boolean> fixed;
    private final Affine first;

    Motions() {
      Point grain = null;
      for (Mark mark : panel.marks()) {
        if (mark instanceof Mark.Grainline line) {
          grain = line.from().towards(line.to(), 0.5);
        }
      }
      List<Boolean> sides = grain == null ? sides(firstStretch()) : sides(grain);
      Affine before = Affine.IDENTITY;
      for (int i = 0; i < cuts.size() && grain != null; i++) {
        if (Path.polyline(cuts.get(i).points).distance(grain) <= SNAP) {
          sides = new ArrayList<>(sides);
          sides.set(i, true);
          before = motion(cuts.get(i), true, 0.5);
        }
      }
      this.fixed = List.copyOf(sides);
      this.first = before;
    }

    /** The middle of the stretch from the first edge's start to the first cut. */
    private double firstStretch() {
      double least = length;
      for (Cut cut : cuts) {
        for (double at : List.of(cut.from, cut.to)) {
          if (at > 0) {
            least = Math.min(least, at);
          }
        }
      }
      return least / 2;
    }

    /** The motion of the part that lies on these sides of the lines. */
    Affine of(List<Boolean> sides) {
      List<Integer> between = new ArrayList<>();
      for (int i = 0; i < cuts.size(); i++) {
        if (!sides.get(i).equals(fixed.get(i))) {
          between.add(i);
        }
      }
      // From the part that stays to this one: what lies beyond a line shrinks from each to the
      // next.
      between.sort(Comparator.comparingDouble(i -> -beyond(cuts.get(i), sides.get(i))));
      Affine motion = first;
      for (int i : between) {
        motion = motion.after(motion(cuts.get(i), sides.get(i), 1));
      }
      return motion;
    }

    private double beyond(Cut cut, boolean after) {
      double between = clockwise(cut.from, cut.to);
      return after ? between : length - between;
    }

    /** How one side of a line moves against the other, or by a share of that. */
    private Affine motion(Cut cut, boolean after, double share) {
      Point along = cut.end().minus(cut.start());
      double open = (after ? 1 : -1) * cut.slash.open();
      if (cut.slash.hinge() == Slash.Hinge.NONE) {
        Point shift = along.unit().quarterTurn().times(-open * share);
        return Affine.translation(shift.x(), shift.y());
      }
      boolean atEnd = cut.slash.hinge() == Slash.Hinge.TO;
      Point pivot = atEnd ? cut.end() : cut.start();
      double angle = 2 * StrictMath.asin(open / (2 * along.norm())) * share * (atEnd ? 1 : -1);
      return Affine.translation(pivot.x(), pivot.y())
          .after(Affine.rotation(StrictMath.toDegrees(angle)))
          .after(Affine.translation(-pivot.x(), -pivot.y()));
    }
  }

  /** Every edge redrawn, by its index. */
  private Map<Integer, Redrawing> redrawn(List<Joint> joints, Motions motions) {
    Map<Integer, Redrawing.Bridge> heads = new LinkedHashMap<>();
    int count = panel.edges().size();
    for (Joint joint : joints) {
      int index = starts.indexOf(joint.at);
      if (index >= 0 && joint.gap(outline.atLength(joint.at)) > Redrawing.NOTHING) {
        heads.put(index, overCorner(index, joint, joints));
      }
    }
    Map<Integer, Redrawing> redrawn = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      Path line = panel.edges().get(i).path();
      List<Joint> inner = new ArrayList<>();
      for (Joint joint : joints) {
        if (joint.at > starts.get(i) && joint.at < starts.get(i) + line.length() - SNAP / 2) {
          inner.add(new Joint(joint.at - starts.get(i), joint.before, joint.after, joint.cut));
        }
      }
      double first = starts.get(i) + (inner.isEmpty() ? line.length() : inner.get(0).at) / 2;
      List<Cut> aslant = new ArrayList<>();
      redrawn.put(
          i,
          line(
              line,
              motions.of(sides(first)),
              inner,
              heads.get(i),
              heads.get((i + 1) % count),
              aslant));
      String edge = panel.edges().get(i).name();
      aslant.forEach(cut -> notices.accept(turnsBack(cut, edge)));
    }
    return redrawn;
  }

  /** The curve across an opening at a corner at which the outline doesn't turn. */
  private Redrawing.Bridge overCorner(int index, Joint joint, List<Joint> joints) {
    int count = panel.edges().size();
    int previous = (index + count - 1) % count;
    Path before = panel.edges().get(previous).path();
    Path after = panel.edges().get(index).path();
    double end = before.length();
    if (Redrawing.isKink(Redrawing.backwards(before, end), Redrawing.onwards(after, 0))) {
      throw atCorner(joint.cut);
    }
    List<Double> stops = stops(after, inside(index, joints));
    List<Double> earlier = stops(before, inside(previous, joints));
    // An edge that is both before and after this corner is shared by the curve's two ends.
    double room = count == 1 ? end / 2 : Double.POSITIVE_INFINITY;
    Redrawing.Bridge bridge =
        Redrawing.bridge(
            new Redrawing.Side(
                before,
                end,
                joint.before,
                Math.min(room, (end - earlier.get(earlier.size() - 2)) / 2)),
            new Redrawing.Side(after, 0, joint.after, Math.min(room, stops.get(1) / 2)));
    if (bridge == null) {
      throw unsmooth(joint.cut);
    }
    if (bridge.turnsBack()) {
      notices.accept(turnsBack(joint.cut, panel.edges().get(index).name()));
    }
    return bridge;
  }

  private PanelException turnsBack(Cut cut, String edge) {
    return PanelCode.SLASH_BENDS_BACK.exception(
        "panel",
        panel.name(),
        "slash",
        cut.slash.name(),
        "open",
        Math.abs(cut.slash.open()),
        "edge",
        edge);
  }

  private List<Joint> inside(int edge, List<Joint> joints) {
    double start = starts.get(edge);
    double end = start + panel.edges().get(edge).path().length();
    return joints.stream()
        .filter(joint -> joint.at > start && joint.at < end - SNAP / 2)
        .map(joint -> new Joint(joint.at - start, joint.before, joint.after, joint.cut))
        .toList();
  }

  /** The places of a line that no curve may run over: its ends, turns and cuts, in order. */
  private static List<Double> stops(Path line, List<Joint> joints) {
    TreeSet<Double> stops = new TreeSet<>(Redrawing.kinks(line));
    joints.forEach(joint -> stops.add(joint.at));
    stops.add(0.0);
    stops.add(line.length());
    return List.copyOf(stops);
  }

  /**
   * A line with the cuts inside it redrawn.
   *
   * @param aslant gets the cuts across which it bends to one side and back
   */
  private Redrawing line(
      Path line,
      Affine first,
      List<Joint> joints,
      Redrawing.Bridge head,
      Redrawing.Bridge tail,
      List<Cut> aslant) {
    Redrawing redrawing = new Redrawing();
    double length = line.length();
    double from = 0;
    if (head != null) {
      redrawing.replace(0, 0, head.right(), head.curve().part(0.5, 1));
      from = head.right();
    }
    double end = tail == null ? length : length - tail.left();
    Affine moved = first;
    List<Double> stops = stops(line, joints);
    for (int i = 0; i < joints.size(); i++) {
      Joint joint = joints.get(i);
      Straight straight = straight(line, joints.subList(i, joints.size()), head, tail);
      if (straight != null) {
        Joint last = joints.get(i + straight.joints - 1);
        redrawing.keep(line, from, straight.from, moved);
        redrawing.replace(
            straight.from, joint.at, straight.to, straight.line(line, moved, last.after));
        from = straight.to;
        moved = last.after;
        i += straight.joints - 1;
        continue;
      }
      int stop = stops.indexOf(joint.at);
      boolean hinge = joint.gap(line.atLength(joint.at)) <= Redrawing.NOTHING;
      boolean kink = Redrawing.isKink(line, joint.at);
      if (kink && !hinge) {
        throw atCorner(joint.cut);
      }
      Redrawing.Side before =
          new Redrawing.Side(
              line, joint.at, joint.before, room(line, joint, joints, stops.get(stop - 1), head));
      Redrawing.Side after =
          new Redrawing.Side(
              line, joint.at, joint.after, room(line, joint, joints, stops.get(stop + 1), tail));
      Redrawing.Bridge bridge = null;
      if (!hinge) {
        bridge = Redrawing.bridge(before, after);
        if (bridge == null) {
          throw unsmooth(joint.cut);
        }
        if (bridge.turnsBack()) {
          aslant.add(joint.cut);
        }
      } else if (!kink) {
        bridge = Redrawing.overHinge(before, after);
      }
      if (bridge == null) {
        redrawing.keep(line, from, joint.at, moved);
        from = joint.at;
      } else {
        redrawing.keep(line, from, joint.at - bridge.left(), moved);
        redrawing.replace(
            joint.at - bridge.left(), joint.at, joint.at + bridge.right(), bridge.curve());
        from = joint.at + bridge.right();
      }
      moved = joint.after;
    }
    redrawing.keep(line, from, end, moved);
    if (tail != null) {
      redrawing.replace(end, length, length, tail.curve().part(0, 0.5));
    }
    return redrawing;
  }

  /** A straight stretch of a line, from turn to turn, and how many of the next cuts are in it. */
  private record Straight(double from, double to, int joints) {
    Line line(Path line, Affine before, Affine after) {
      return new Line(before.apply(line.atLength(from)), after.apply(line.atLength(to)));
    }
  }

  /** The stretch that stays straight although it is cut, its parts being only shifted, or null. */
  private Straight straight(
      Path line, List<Joint> joints, Redrawing.Bridge head, Redrawing.Bridge tail) {
    Joint first = joints.get(0);
    TreeSet<Double> turns = new TreeSet<>(stops(line, List.of()));
    double from = turns.lower(first.at);
    double to = turns.higher(first.at);
    List<Joint> inside = joints.stream().filter(joint -> joint.at < to).toList();
    boolean open = from == 0 && head != null || to == line.length() && tail != null;
    if (open
        || turns.contains(first.at)
        || !inside.stream().allMatch(Spreading::isShift)
        || !Redrawing.isStraight(line.part(from, to))) {
      return null;
    }
    Straight straight = new Straight(from, to, inside.size());
    Line drawn = straight.line(line, first.before, inside.get(inside.size() - 1).after);
    Point along = first.before.applyVector(line.tangentAtLength(from));
    if (drawn.end().minus(drawn.start()).dot(along) <= Redrawing.NOTHING) {
      throw unsmooth(first.cut);
    }
    return straight;
  }

  /**
   * How much of a line may be redrawn from a cut towards a stop; two curves share what is there.
   */
  private static double room(
      Path line, Joint joint, List<Joint> joints, double stop, Redrawing.Bridge beyond) {
    double whole = Math.abs(stop - joint.at);
    boolean atEnd = stop == 0 || stop == line.length();
    boolean shared = atEnd ? beyond != null : joints.stream().anyMatch(other -> other.at == stop);
    return shared ? whole / 2 : whole;
  }

  private static boolean isShift(Joint joint) {
    return Math.abs(joint.before.a() - joint.after.a()) < 1e-12
        && Math.abs(joint.before.b() - joint.after.b()) < 1e-12;
  }

  private PanelException unsmooth(Cut cut) {
    PanelCode code = cut.slash.open() < 0 ? PanelCode.SLASH_TURNS_BACK : PanelCode.SLASH_NOT_SMOOTH;
    return code.exception(
        "panel", panel.name(), "slash", cut.slash.name(), "open", Math.abs(cut.slash.open()));
  }

  private PanelException atCorner(Cut cut) {
    return PanelCode.SLASH_AT_CORNER.exception("panel", panel.name(), "slash", cut.slash.name());
  }

  private List<Mark> marks(Map<Integer, Redrawing> redrawn, Motions motions) {
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      if (mark instanceof Mark.Notch notch) {
        marks.add(notch(notch, redrawn));
      } else if (mark instanceof Mark.DrillPoint drill) {
        Point at = motions.of(sides(drill.point())).apply(drill.point());
        marks.add(new Mark.DrillPoint(drill.name(), at));
      } else if (mark instanceof Mark.Placement placement) {
        marks.add(new Mark.Placement(placement.name(), moved(placement.path(), motions)));
      } else if (mark instanceof Mark.FoldLine fold) {
        marks.add(new Mark.FoldLine(fold.name(), moved(fold.path(), motions)));
      } else if (mark instanceof Mark.StyleLine style) {
        marks.add(new Mark.StyleLine(style.name(), moved(style.path(), motions)));
      } else if (mark instanceof Mark.Buttonhole hole) {
        Affine motion = motions.of(sides(hole.from().towards(hole.to(), 0.5)));
        marks.add(
            new Mark.Buttonhole(hole.name(), motion.apply(hole.from()), motion.apply(hole.to())));
      } else if (mark instanceof Mark.MatchPoint match) {
        Point at = motions.of(sides(match.point())).apply(match.point());
        marks.add(new Mark.MatchPoint(match.name(), at));
      } else if (mark instanceof Mark.Intake intake) {
        marks.add(intake(intake, redrawn, motions));
      } else {
        marks.add(mark); // The grain stays; the parts move from it.
      }
    }
    return marks;
  }

  private Mark.Notch notch(Mark.Notch notch, Map<Integer, Redrawing> redrawn) {
    for (int i = 0; i < panel.edges().size(); i++) {
      if (panel.edges().get(i).name().equals(notch.edge())) {
        return new Mark.Notch(notch.edge(), redrawn.get(i).moved(notch.at()), notch.set());
      }
    }
    return notch;
  }

  /** A dart or pleat on the redrawn edge; what goes through it makes it wider or narrower. */
  private Mark intake(Mark.Intake mark, Map<Integer, Redrawing> redrawn, Motions motions) {
    int index = 0;
    while (!panel.edges().get(index).name().equals(mark.edge())) {
      index++;
    }
    Redrawing edge = redrawn.get(index);
    double from = edge.moved(mark.from());
    double to = edge.moved(mark.to());
    Point one = edge.path().atLength(from);
    Point other = edge.path().atLength(to);
    if (mark instanceof Mark.Dart dart) {
      // The legs stay equally long.
      Point apex = motions.of(sides(dart.apex())).apply(dart.apex());
      Point middle = one.towards(other, 0.5);
      Point inwards = other.minus(one).unit().quarterTurn();
      Point on = middle.plus(inwards.times(apex.minus(middle).dot(inwards)));
      return new Mark.Dart(dart.name(), dart.edge(), from, to, on, dart.press());
    }
    Mark.Pleat pleat = (Mark.Pleat) mark;
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < pleat.lines().size(); i++) {
      Line line = pleat.lines().get(i);
      Affine motion = motions.of(sides(line.start().towards(line.end(), 0.5)));
      double share = (double) i / (pleat.lines().size() - 1);
      Point start = edge.path().atLength(from + share * (to - from));
      lines.add(new Line(start, start.plus(motion.applyVector(line.end().minus(line.start())))));
    }
    return new Mark.Pleat(
        pleat.name(), pleat.edge(), from, to, pleat.kind(), pleat.onwards(), lines);
  }

  /** A line inside the panel. */
  private Path moved(Path line, Motions motions) {
    if (line.isClosed()) {
      return line.transformed(motions.of(sides(line.bounds().centre())));
    }
    Map<Double, Cut> places = new TreeMap<>();
    for (Cut cut : cuts) {
      for (Curve curve : line.curves()) {
        Point from = curve.start();
        for (Point to : curve.flattened(CHORD)) {
          for (int i = 1; i < cut.points.size(); i++) {
            double along = crossing(from, to, cut.points.get(i - 1), cut.points.get(i));
            double at = along < 0 ? 0 : line.nearestLength(from.towards(to, along));
            if (at > SNAP && at < line.length() - SNAP) {
              places.put(at, cut);
            }
          }
          from = to;
        }
      }
    }
    List<Joint> joints = new ArrayList<>();
    List<Double> ends = new ArrayList<>(places.keySet());
    ends.add(line.length());
    double from = 0;
    Affine first = null;
    Affine moved = null;
    for (double to : ends) {
      Affine next = motions.of(sides(line.atLength((from + to) / 2)));
      if (moved == null) {
        first = next;
      } else {
        joints.add(new Joint(from, moved, next, places.get(from)));
      }
      moved = next;
      from = to;
    }
    return line(line, first, joints, null, null, new ArrayList<>()).path();
  }
}
