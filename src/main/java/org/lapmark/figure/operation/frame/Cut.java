package org.lapmark.figure.operation.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.figure.scene.PrintedLength;
import org.lapmark.figure.section.SectionScene;
import org.lapmark.figure.section.SectionScene.Spot;
import org.lapmark.figure.section.Solid;
import org.lapmark.figure.section.Thread;
import org.lapmark.geometry.Point;

/** A section as it is put together: layers, stitches, dimensions. It grows only. */
public final class Cut {
  /** From one layer to the next that lies close on it, in levels. */
  public static final double NEXT = 0.78;

  /** How far cloth goes on beyond what is shown, on paper. */
  public static final double BEYOND = 9;

  /** How far from a seam the middle of a layer turns that is folded back there, on paper. */
  public static final double TURN = 1.1;

  private final List<SectionScene.Layer> layers = new ArrayList<>();
  private final List<SectionScene.Inlay> inlays = new ArrayList<>();
  private final List<SectionScene.Label> labels = new ArrayList<>();
  private final List<SectionScene.Distance> distances = new ArrayList<>();

  /** A place at a distance and a level. */
  public static Spot at(double along, double level) {
    return new Spot(along, level);
  }

  /** A place beside a distance, so far on paper. */
  public static Spot at(double along, double level, double aside) {
    return new Spot(along, level, aside);
  }

  /** A layer with its name; the side faces up where it begins. */
  public Cut layer(Material cloth, Side up, Spot... line) {
    return layer(cloth, cloth.name(), up, Arrays.asList(line));
  }

  /** A layer that is named elsewhere. */
  public Cut more(Material cloth, Side up, Spot... line) {
    return layer(cloth, "", up, Arrays.asList(line));
  }

  /** A layer with any name. */
  public Cut layer(Material cloth, String name, Side up, List<Spot> line) {
    layers.add(new SectionScene.Layer(cloth.texture(), up, line, name));
    return this;
  }

  /** Stitches of this step. */
  public Cut sewn(Spot from, Spot to) {
    return sewn(from, to, "");
  }

  /** Stitches of this step with a label. */
  public Cut sewn(Spot from, Spot to, String words) {
    inlays.add(new Thread(from, to, true, Optional.of(words).filter(text -> !text.isEmpty())));
    return this;
  }

  /** Stitches of an earlier step. */
  public Cut before(Spot from, Spot to) {
    inlays.add(new Thread(from, to, false, Optional.empty()));
    return this;
  }

  /** Something cut through. */
  public Cut solid(Spot at, List<Point> ring, Texture texture, String words) {
    inlays.add(
        new Solid(
            at,
            ring,
            Optional.ofNullable(texture),
            Optional.of(words).filter(text -> !text.isEmpty())));
    return this;
  }

  /** Metal cut through. */
  public Cut metal(List<Spot> ring, String words) {
    inlays.add(new Metal(ring, false, words));
    return this;
  }

  /** A tool cut through. */
  public Cut tool(List<Spot> ring, String words) {
    inlays.add(new Metal(ring, true, words));
    return this;
  }

  /** A layer with a hole from here to there, from as far on one side as on the other. */
  public Cut pierced(Material cloth, String name, double level, double far, double hole) {
    layer(cloth, name, Side.RIGHT, List.of(at(-far, level, -BEYOND), at(-hole, level)));
    return more(cloth, Side.RIGHT, at(hole, level), at(far, level, BEYOND));
  }

  /** A label of a place. */
  public Cut label(String words, Spot at) {
    labels.add(new SectionScene.Label(words, at));
    return this;
  }

  /** A dimension above. */
  public Cut above(double from, double to, String length) {
    distances.add(new SectionScene.Distance(from, to, true, new PrintedLength(0, length)));
    return this;
  }

  /** A dimension below. */
  public Cut below(double from, double to, String length) {
    distances.add(new SectionScene.Distance(from, to, false, new PrintedLength(0, length)));
    return this;
  }

  /** Points round a place, in millimetres on paper, from an angle to another, clockwise. */
  public static List<Spot> round(Spot centre, double radius, double from, double to) {
    List<Spot> spots = new ArrayList<>();
    int steps = (int) Math.max(4, Math.ceil(Math.abs(to - from) / 20));
    for (int i = 0; i <= steps; i++) {
      double angle = StrictMath.toRadians(from + (to - from) * i / steps);
      spots.add(
          at(
              centre.along(),
              centre.level() + radius * StrictMath.sin(angle) / SectionScene.LEVEL,
              centre.aside() + radius * StrictMath.cos(angle)));
    }
    return spots;
  }

  /** What has been put together. */
  public SectionScene scene() {
    return new SectionScene(List.of(), layers, List.of(), labels, distances, inlays, "");
  }
}
