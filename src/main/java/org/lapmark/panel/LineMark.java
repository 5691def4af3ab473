package org.lapmark.panel;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** A line inside a panel. */
public sealed interface LineMark extends Mark {
  /**
   * The line.
   *
   * @return a path in panel coordinates
   */
  Path path();

  /**
   * The same mark elsewhere.
   *
   * @param line its line
   * @return the mark
   */
  LineMark along(Path line);

  /**
   * The mark's image on the other half of a panel.
   *
   * @param line its line
   * @param ending what is added to the name of a mark of which a panel has one alone
   * @return the image
   */
  default LineMark image(Path line, String ending) {
    return along(line);
  }

  /**
   * Whether it is shown, in a look and with words that bear its kind's name; what isn't is there
   * for derivations.
   *
   * @return false for a style line
   */
  default boolean isDrawn() {
    return true;
  }

  /**
   * Whether a panel can be split along it.
   *
   * @return false for a placement line
   */
  default boolean splits() {
    return true;
  }

  @Override
  default boolean isMeasured() {
    return isDrawn() && path().curves().stream().allMatch(Line.class::isInstance);
  }

  @Override
  default LineMark transformed(Affine map, ToDoubleFunction<String> lengths) {
    return along(path().transformed(map));
  }

  @Override
  default <R> R read(Mark.Reader<R> reader) {
    return reader.line(this);
  }

  @Override
  default Optional<Point> knownBy(Function<String, Path> edges) {
    return isDrawn() ? Optional.of(path().atLength(path().length() / 2)) : Optional.empty();
  }

  @Override
  default <R> R place(Mark.Placing<R> placing) {
    return placing.line(this);
  }

  /**
   * A line that shows where something is placed.
   *
   * @param name what is placed
   * @param path the line
   */
  record Placement(String name, Path path) implements LineMark {
    @Override
    public String kindName() {
      return "placement";
    }

    @Override
    public Placement along(Path line) {
      return new Placement(name, line);
    }

    @Override
    public boolean splits() {
      return false;
    }
  }

  /**
   * A line along which cloth is folded, inside the panel.
   *
   * @param name what is folded
   * @param path the line
   */
  record FoldLine(String name, Path path) implements LineMark {
    @Override
    public String kindName() {
      return "fold";
    }

    @Override
    public FoldLine along(Path line) {
      return new FoldLine(name, line);
    }
  }

  /**
   * A line along which the panel can be split into others. It isn't drawn.
   *
   * @param name its name
   * @param path the line
   */
  record StyleLine(String name, Path path) implements LineMark {
    @Override
    public String kindName() {
      return "style";
    }

    @Override
    public <R> R read(Mark.Reader<R> reader) {
      return reader.styleLine(this);
    }

    @Override
    public StyleLine along(Path line) {
      return new StyleLine(name, line);
    }

    @Override
    public StyleLine image(Path line, String ending) {
      return new StyleLine(name + ending, line);
    }

    @Override
    public boolean isDrawn() {
      return false;
    }
  }
}
