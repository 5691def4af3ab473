package org.lapmark.figure.flat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.FlatInk;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.figure.workpiece.Mounted;
import org.lapmark.figure.workpiece.Overlay;
import org.lapmark.figure.workpiece.PlacedBody;
import org.lapmark.figure.workpiece.PosedBody;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Key;

/**
 * A piece, or what was assembled before, that lies on another one or is joined to its edge; as much
 * of it is drawn as of that one.
 *
 * @param number the piece's number, or null
 * @param unit what was assembled, or null
 * @param cloth its material, or null for the first
 * @param side its side; null for that of the unit
 * @param over whether it is seen from its other side, as what it is joined to is turned over
 * @param turned edges whose allowance is folded away
 * @param lines stitching on it
 * @param ownEdge the edge of it that lies at the place, or null for its top
 * @param joined the edge of the other to which it is sewn so that it reaches beyond it, or null
 * @param place where the middle of that edge or of its top lies; null where it lies in its own
 *     coordinates
 * @param turn by how many degrees clockwise it is turned about its place, 0 for its top to the edge
 * @param name its name, or null for the computed one
 */
record PieceThing(
    SourceText number,
    SourceText unit,
    SourceText cloth,
    Side side,
    boolean over,
    List<SourceText> turned,
    List<SewnLine> lines,
    SourceText ownEdge,
    SourceText joined,
    Place place,
    double turn,
    TemplateText name)
    implements Thing {
  /** A placement line that leaves its chord by less than this is straight, in millimetres. */
  private static final double STRAIGHT = 1;

  /** What lies farther from a piece doesn’t lie on it, in millimetres. */
  private static final double ASIDE = 0.5;

  /** The most pieces and units on others that one figure shows. */
  private static final int MOST = 400;

  static PieceThing read(Keys keys) {
    boolean isUnit = keys.has(UNIT);
    Key<?> what = isUnit ? UNIT : PIECE;
    List<Key<?>> places = new ArrayList<>(Place.KEYS);
    places.add(TURN);
    List<Key<?>> known =
        new ArrayList<>(isUnit ? List.of(SIDE) : List.of(CLOTH, SIDE, TURNED, LINES));
    known.addAll(List.of(OWN_EDGE, JOINED));
    known.addAll(places);
    known.add(NAME);
    List<Key<?>> idle = new ArrayList<>(List.of(WIDTH, CROPPED, PART, THROUGH, WRAPPED));
    if (isUnit) {
      idle.addAll(List.of(CLOTH, TURNED, LINES));
    }
    keys.idle(what, idle, known);
    Place place = null;
    if (keys.has(JOINED)) {
      keys.need(OWN_EDGE);
      keys.idle(JOINED, places, List.of(OWN_EDGE, NAME));
    } else if (places.stream().anyMatch(keys::has) || keys.has(OWN_EDGE)) {
      place = Place.read(keys);
    }
    return keys.whole(
        new PieceThing(
            keys.get(PIECE),
            keys.get(UNIT),
            keys.get(CLOTH),
            isUnit ? keys.get(SIDE) : keys.or(SIDE, Side.RIGHT),
            false,
            keys.all(TURNED),
            keys.all(LINES),
            keys.get(OWN_EDGE),
            keys.get(JOINED),
            place,
            keys.or(TURN, 0.0),
            keys.get(NAME)));
  }

  @Override
  public SourceText joinedTo() {
    return joined;
  }

  @Override
  public Optional<Thing> turnedOver() {
    if (joined == null) {
      return Optional.empty();
    }
    List<SewnLine> done = lines.stream().map(SewnLine::done).toList();
    return Optional.of(
        new PieceThing(
            number, unit, cloth, side, !over, turned, done, ownEdge, joined, place, turn, name));
  }

  private SourceText stated() {
    return unit == null ? number : unit;
  }

  private Side seen(Side up) {
    return !over ? up : up == Side.RIGHT ? Side.WRONG : Side.RIGHT;
  }

  /** What is shown, by itself. */
  private View view(Staging staging, Subject on) {
    if (unit == null) {
      List<SourceText> folded = new ArrayList<>(turned);
      if (joined != null) {
        folded.add(ownEdge);
      }
      return View.of(number, cloth, seen(side), folded, lines);
    }
    View view = Units.of(unit, on.within(), staging);
    return View.unit(
        view,
        seen(side == null ? view.side() : side),
        joined == null ? List.of() : List.of(ownEdge));
  }

  /**
   * What lies there.
   *
   * @param view what it is
   * @param subject the same in the variant
   * @param map from its coordinates to the other piece's
   */
  private record Lying(View view, Subject subject, Affine map) {}

  private Lying lying(Staging staging, Subject on) {
    staging.count(stated().position(), "things", MOST);
    View view = view(staging, on);
    if (view.isZip()) {
      throw Faults.of(stated().position(), FigureCode.FIGURE_NEEDS_PIECE, "name", "unit");
    }
    List<String> within = unit == null ? on.within() : Units.within(on.within(), unit.text());
    Subject subject = Subjects.of(view, within, staging);
    return new Lying(view, subject, map(staging, on, subject));
  }

  /** Its outline on the other piece, to which it is joined. */
  Path joinedOutline(Staging staging, Subject on) {
    Lying lying = lying(staging, on);
    return lying.subject.body().outline().transformed(lying.map);
  }

  @Override
  public Overlay stage(Staging staging, Subject on, PlacedBody laid) {
    Lying lying = lying(staging, on);
    Subject own = lying.subject;
    PosedBody posed = new PosedBody(own.body(), laid.lying().pose().after(lying.map), null);
    on.checkSeen(
        laid,
        place == null ? stated().position() : place.position(),
        own.body().outline().transformed(laid.map().after(lying.map)).flattened(FlatInk.FLATNESS));
    Box box = own.body().outline().transformed(lying.map).bounds();
    if (joined == null && !on.body().whole().bounds().expanded(ASIDE).overlaps(box)) {
      throw Faults.of(
          place == null ? stated().position() : place.position(),
          FigureCode.FIGURE_BESIDE_PIECE,
          "number",
          Integer.toString(on.piece().number()),
          "size",
          staging.size());
    }
    PlacedBody placed = new PlacedBody(posed, laid.map().after(lying.map));
    String words = staging.attempt(() -> words(staging, lying)).orElse("");
    String said = unit == null ? PieceNames.plain(own.piece(), staging) : words;
    return new Mounted(
        lying.view.stage(staging, own, placed), lying.map, joined != null, words, said);
  }

  private String words(Staging staging, Lying lying) {
    if (name != null) {
      return staging.text(name);
    }
    if (unit != null && lying.view.name() != null) {
      return staging.text(lying.view.name());
    }
    Subject own = lying.subject;
    return PieceNames.of(own.piece(), own.material(), own.side(), staging);
  }

  private Affine map(Staging staging, Subject on, Subject own) {
    Affine mirror = own.side() == on.side() ? Affine.IDENTITY : Affine.scaling(-1, 1);
    if (joined != null) {
      Path seam = on.line(joined);
      Point middle = seam.start().towards(seam.end(), 0.5);
      return level(own, mirror, middle, Lines.inward(seam).times(-1), 0);
    }
    if (place == null) {
      return moved(own, on);
    }
    Optional<Path> line = place.line(on);
    if (ownEdge == null
        && place.along() == null
        && place.inside() == null
        && line.isPresent()
        && isBent(line.get())) {
      return fitted(line.get(), own, mirror);
    }
    Place.Spot spot = place.stage(staging, on);
    if (ownEdge != null) {
      Point in = Affine.rotation(turn).applyVector(spot.inward());
      return level(own, mirror, spot.point(), in, own.allowance(own.edges(ownEdge).get(0)));
    }
    Point in = Affine.rotation(turn).applyVector(spot.inward());
    Box box = own.body().outline().transformed(mirror).bounds();
    Point top = new Point(box.centre().x(), box.minY());
    return laid(spot.point(), in, top).after(mirror);
  }

  /** Derived panels keep their place; others of their own are centred. */
  private static Affine moved(Subject own, Subject on) {
    Box box = own.panel().outline().bounds();
    Box host = on.panel().outline().bounds();
    if (host.expanded(1e-6).contains(box)) {
      return Affine.IDENTITY;
    }
    Point by = host.centre().minus(box.centre());
    return Affine.translation(by.x(), by.y());
  }

  /** With a point of it at a place, its y axis along a direction of length 1. */
  static Affine laid(Point place, Point in, Point own) {
    Affine inward = new Affine(in.y(), -in.x(), in.x(), in.y(), 0, 0);
    Point at = place.minus(inward.apply(own));
    return Affine.translation(at.x(), at.y()).after(inward);
  }

  /** With the middle of its own edge, so far outside its stitching line, at a place. */
  private Affine level(Subject own, Affine mirror, Point at, Point inward, double outside) {
    Path edge = own.line(ownEdge);
    Point in = mirror.applyVector(Lines.inward(edge));
    double cos = in.dot(inward);
    double sin = in.cross(inward);
    Affine turned = new Affine(cos, sin, -sin, cos, 0, 0).after(mirror);
    Point middle = edge.start().towards(edge.end(), 0.5).minus(Lines.inward(edge).times(outside));
    Point by = at.minus(turned.apply(middle));
    return Affine.translation(by.x(), by.y()).after(turned);
  }

  private static boolean isBent(Path line) {
    if (line.isClosed()) {
      return true;
    }
    Point along = line.end().minus(line.start());
    if (along.norm() < STRAIGHT) {
      return true;
    }
    Point across = along.unit().quarterTurn();
    return line.flattened(0.1).stream()
        .anyMatch(point -> Math.abs(point.minus(line.start()).dot(across)) > STRAIGHT);
  }

  /**
   * Within a line that shows where its finished edges lie: in its middle, or against the side that
   * lies across from where the line is open.
   */
  private Affine fitted(Path line, Subject own, Affine mirror) {
    Affine facing = Affine.rotation(turn).after(mirror);
    Box box = own.panel().outline().transformed(facing).bounds();
    Box within = line.bounds();
    Point by = within.centre().minus(box.centre());
    if (!line.isClosed()) {
      Point open = line.start().towards(line.end(), 0.5).minus(within.centre());
      if (Math.abs(open.y()) >= Math.abs(open.x())) {
        double y = open.y() <= 0 ? within.maxY() - box.maxY() : within.minY() - box.minY();
        by = new Point(by.x(), y);
      } else {
        double x = open.x() <= 0 ? within.maxX() - box.maxX() : within.minX() - box.minX();
        by = new Point(x, by.y());
      }
    }
    return Affine.translation(by.x(), by.y()).after(facing);
  }
}
