package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * A piece of cloth folded over at straight lines, in its panel's coordinates.
 *
 * @param flat the cloth before
 * @param layers what lies on what, the lowest first: what stays where it was, then what is folded
 * @param cuts the lines at which it is folded, and beyond which nothing is seen
 * @param outline round all of it
 * @param isPeeled whether a corner is turned back to show what lies below
 */
public record FoldedCloth(
    Cloth flat, List<Layer> layers, List<Cut> cuts, Path outline, boolean isPeeled)
    implements Body {
  /** What the lines at which it is folded are called where something lies beyond them. */
  private static final String KEY = "folds";

  /** So much of what is seen is all of it, but for a seam of the other side. */
  private static final double ALMOST = 0.97;

  /**
   * A part of the cloth.
   *
   * @param path its outline where it lies
   * @param isTurned whether its other side is seen
   * @param map from where it lay before all folds
   * @param cuts lines beyond which there is nothing of it, where it lies
   */
  public record Layer(Path path, boolean isTurned, Affine map, List<Cut> cuts) {
    /** Copies the list. */
    public Layer {
      cuts = List.copyOf(cuts);
    }

    private Optional<Layer> kept(Crease crease) {
      Lines.Cropped rest = crease.kept(path);
      return rest.from() == null && crease.isBeyond(path)
          ? Optional.empty()
          : Optional.of(new Layer(rest.path(), isTurned, map, cuts(crease, rest, Affine.IDENTITY)));
    }

    private Optional<Layer> lifted(Crease crease) {
      Lines.Cropped rest = crease.kept(path);
      return rest.from() == null && !crease.isBeyond(path)
          ? Optional.empty()
          : Optional.of(
              new Layer(
                  crease.flap(path),
                  !isTurned,
                  crease.map().after(map),
                  cuts(crease, rest, crease.map())));
    }

    private List<Cut> cuts(Crease crease, Lines.Cropped rest, Affine moved) {
      List<Cut> all = new ArrayList<>();
      cuts.forEach(cut -> all.add(cut.transformed(moved)));
      if (rest.from() != null) {
        all.add(new Cut(KEY, rest.from(), rest.to(), crease.away()));
      }
      return all;
    }

    /** It as something of its own, as it lay before. */
    private PlacedBody alone(PlacedBody laid) {
      Path shape = path.transformed(laid.map());
      Body body = laid.lying().body();
      return new PlacedBody(
          new PosedBody(
              body instanceof FoldedCloth folded ? folded.flat : body, laid.lying().pose(), null),
          laid.map().after(map),
          shape,
          cuts.stream().map(cut -> cut.transformed(laid.map())).toList(),
          shape);
    }
  }

  /** Copies the lists. */
  public FoldedCloth {
    layers = List.copyOf(layers);
    cuts = List.copyOf(cuts);
  }

  /**
   * Cloth folded at lines, one after another: all that lies beyond a line then goes over.
   *
   * @param flat the cloth
   * @param creases the lines, each of which parts what is left of the lowest layer
   */
  public static FoldedCloth of(Cloth flat, List<Crease> creases) {
    return of(flat, creases, false);
  }

  /**
   * The same.
   *
   * @param peeled whether a corner is turned back to show what lies below
   */
  public static FoldedCloth of(Cloth flat, List<Crease> creases, boolean peeled) {
    List<Layer> layers = List.of(new Layer(flat.outline(), false, Affine.IDENTITY, flat.cuts()));
    List<Cut> cuts = new ArrayList<>(flat.cuts());
    for (Crease crease : creases) {
      Lines.Cropped rest = crease.kept(layers.get(0).path);
      cuts.add(new Cut(KEY, rest.from(), rest.to(), crease.away()));
      List<Layer> folded = new ArrayList<>();
      layers.forEach(layer -> layer.kept(crease).ifPresent(folded::add));
      for (int i = layers.size() - 1; i >= 0; i--) {
        layers.get(i).lifted(crease).ifPresent(folded::add);
      }
      layers = folded;
    }
    return new FoldedCloth(
        flat, layers, cuts, Lines.round(layers.stream().map(Layer::path).toList()), peeled);
  }

  /** Whether a line parts a shape, so that something is folded over and something stays. */
  public static boolean parts(Path shape, Crease crease) {
    return crease.kept(shape).from() != null;
  }

  @Override
  public Path whole() {
    return outline;
  }

  @Override
  public List<Flap> flaps() {
    return flat.flaps();
  }

  @Override
  public boolean liesUnder() {
    return false;
  }

  @Override
  public double covered() {
    return 0;
  }

  @Override
  public List<List<Point>> covers() {
    return layers.subList(1, layers.size()).stream()
        .map(layer -> layer.path.flattened(FlatInk.FLATNESS))
        .toList();
  }

  @Override
  public void draw(PlacedBody laid, FlatInk ink) {
    draw(layers.get(0), laid, ink);
  }

  @Override
  public void drawFolded(PlacedBody laid, Marks marks, FlatInk ink) {
    for (Layer layer : layers.subList(1, layers.size())) {
      draw(layer, laid, ink);
      marks.draw(layer.alone(laid), ink);
    }
  }

  /** Where only one side of it can be seen, that. */
  @Override
  public Side seen(Side up) {
    double all = 0;
    double turned = 0;
    for (int i = 0; i < layers.size(); i++) {
      double open =
          Lines.open(
              layers.get(i).path,
              layers.subList(i + 1, layers.size()).stream().map(Layer::path).toList());
      all += open;
      turned += layers.get(i).isTurned ? open : 0;
    }
    return turned > ALMOST * all ? up.other() : up;
  }

  private void draw(Layer layer, PlacedBody laid, FlatInk ink) {
    Path path = layer.path.transformed(laid.map());
    Side side = layer.isTurned ? flat.side().other() : flat.side();
    ink.canvas().cloth(path, flat.texture(), side, flat.grain() + ink.turn());
    ink.outline(
        path,
        layer.cuts.stream().filter(Cut::isBroken).map(cut -> cut.transformed(laid.map())).toList());
  }
}
