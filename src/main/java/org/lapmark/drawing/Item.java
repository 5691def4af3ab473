package org.lapmark.drawing;

import java.util.List;
import java.util.Objects;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** One thing drawn. Later items cover earlier ones. */
public sealed interface Item {
  /**
   * Has a reader read this kind of item.
   *
   * @param reader what is done with each kind
   * @param <E> how reading may fail
   * @throws E when the reader fails
   */
  <E extends Exception> void read(Reader<E> reader) throws E;

  /**
   * The same elsewhere; lettering keeps its size and direction.
   *
   * @param map a map that moves or scales along the axes
   * @return the item under the map
   */
  Item transformed(Affine map);

  /**
   * What is done with each kind of item: whoever draws has to know them all.
   *
   * @param <E> how reading may fail
   */
  interface Reader<E extends Exception> {
    /** Reads paths. */
    void shape(Shape shape) throws E;

    /** Reads a line of text. */
    void lettering(Lettering line) throws E;

    /** Reads items that belong together. */
    void group(Group group) throws E;

    /** Reads a part of a picture that an author brings. */
    void art(Art art) throws E;
  }

  /**
   * Paths stroked or filled together, by the even-odd rule where filled.
   *
   * @param paths the paths in millimetres
   * @param role the style role
   */
  record Shape(List<Path> paths, String role) implements Item {
    /** Copies the list. */
    public Shape {
      paths = List.copyOf(paths);
      Objects.requireNonNull(role);
    }

    @Override
    public <E extends Exception> void read(Reader<E> reader) throws E {
      reader.shape(this);
    }

    @Override
    public Item transformed(Affine map) {
      return new Shape(paths.stream().map(path -> path.transformed(map)).toList(), role);
    }
  }

  /**
   * One line of text, drawn as real text in the embedded font.
   *
   * @param text the text
   * @param anchor a point on the baseline, in millimetres
   * @param alignment what of the text stands at the anchor
   * @param angle how far the baseline is turned about the anchor, in degrees clockwise on paper
   * @param role the style role, which states size and weight
   */
  record Lettering(String text, Point anchor, Alignment alignment, double angle, String role)
      implements Item {
    /** Checks the components. */
    public Lettering {
      Objects.requireNonNull(text);
      Objects.requireNonNull(anchor);
      Objects.requireNonNull(alignment);
      Objects.requireNonNull(role);
    }

    @Override
    public <E extends Exception> void read(Reader<E> reader) throws E {
      reader.lettering(this);
    }

    @Override
    public Item transformed(Affine map) {
      return new Lettering(text, map.apply(anchor), alignment, angle, role);
    }
  }

  /**
   * Items that are moved by a map and seen only inside a clip.
   *
   * @param clip a closed path in the coordinates outside the map, or null for none
   * @param map what is applied to the items
   * @param layer the name of the layer they belong to, or null
   * @param otherLayers further layers they belong to: they are seen as long as any of all is on
   * @param items the items, in the map's own coordinates
   */
  record Group(Path clip, Affine map, String layer, List<String> otherLayers, List<Item> items)
      implements Item {
    /** Copies the lists. */
    public Group {
      Objects.requireNonNull(map);
      otherLayers = List.copyOf(otherLayers);
      items = List.copyOf(items);
    }

    /**
     * A group of one layer or none.
     *
     * @param clip a closed path in the coordinates outside the map, or null for none
     * @param map what is applied to the items
     * @param layer the name of the layer they belong to, or null
     * @param items the items, in the map's own coordinates
     */
    public Group(Path clip, Affine map, String layer, List<Item> items) {
      this(clip, map, layer, List.of(), items);
    }

    @Override
    public <E extends Exception> void read(Reader<E> reader) throws E {
      reader.group(this);
    }

    @Override
    public Item transformed(Affine outer) {
      return new Group(
          clip == null ? null : clip.transformed(outer),
          outer.after(map),
          layer,
          otherLayers,
          items);
    }
  }

  /** A part of a picture that an author brings, with a look of its own. */
  sealed interface Art extends Item {
    @Override
    default <E extends Exception> void read(Reader<E> reader) throws E {
      reader.art(this);
    }

    @Override
    default Item transformed(Affine map) {
      return new Group(null, map, null, List.of(this));
    }
  }

  /**
   * Paths stroked or filled together.
   *
   * @param paths the paths in millimetres
   * @param ink how they look
   */
  record Inked(List<Path> paths, Ink ink) implements Art {
    /** Copies the list. */
    public Inked {
      paths = List.copyOf(paths);
      Objects.requireNonNull(ink);
    }
  }

  /**
   * One line of text in a size and colour of its own.
   *
   * @param line the text and its place; its role says nothing
   * @param size in points
   * @param bold whether it is in the heavier weight
   * @param colour red, green and blue in 24 bits
   */
  record Words(Lettering line, double size, boolean bold, int colour) implements Art {
    /** Its look but for the colour. */
    public Style style() {
      return new Style(0, List.of(), 0, 0, size, bold, 0);
    }
  }

  /**
   * A photograph.
   *
   * @param photograph what is shown
   * @param place where, in millimetres
   */
  record Photo(Photograph photograph, Box place) implements Art {}

  /** What of a line of text stands at its anchor. */
  enum Alignment {
    /** Its beginning. */
    START,
    /** Its middle. */
    MIDDLE,
    /** Its end. */
    END
  }
}
