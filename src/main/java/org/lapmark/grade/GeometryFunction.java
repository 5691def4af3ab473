package org.lapmark.grade;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Value;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.panel.Panel;

/** What formulas can ask of panels, by what the functions are called in lower case. */
enum GeometryFunction {
  /** Of an edge or chain, its darts and pleats closed. */
  LENGTH("edge") {
    @Override
    Value of(SourceText function, List<SourceText> references, Shapes shapes) {
      SourceText reference = references.get(0);
      Panel panel = shapes.shape(owner(function, reference));
      return Quantity.length(PatternScope.closed(panel, member(reference)).length());
    }
  },
  /** Between two corners, straight. */
  DISTANCE("corner") {
    @Override
    Value of(SourceText function, List<SourceText> references, Shapes shapes) {
      Point from = corner(function, references.get(0), shapes);
      return Quantity.length(from.distance(corner(function, references.get(1), shapes)));
    }

    private Point corner(SourceText function, SourceText reference, Shapes shapes) {
      Panel panel = shapes.shape(owner(function, reference));
      return PatternScope.corner(panel, member(reference));
    }
  },
  /** Across, as drawn. */
  WIDTH(panel -> Quantity.length(panel.outline().bounds().width())),
  /** From top to bottom, as drawn. */
  HEIGHT(panel -> Quantity.length(panel.outline().bounds().height())),
  /** Once round. */
  PERIMETER(panel -> Quantity.length(panel.outline().length())),
  /** Inside the stitching line. */
  AREA(panel -> new Quantity(Math.abs(panel.outline().signedArea()), Dimension.AREA));

  private final String needs;
  private final Function<Panel, Value> ofPanel;

  GeometryFunction(String needs) {
    this.needs = needs;
    this.ofPanel = null;
  }

  GeometryFunction(Function<Panel, Value> ofPanel) {
    this.needs = "panel";
    this.ofPanel = ofPanel;
  }

  /** Gives the panels that functions are asked of. */
  interface Shapes {
    /**
     * A panel as far as its geometry goes.
     *
     * @param name where it is named
     * @return the panel without its stated notches
     */
    Panel shape(SourceText name);
  }

  /** What a function comes to; the formula's parser lets no others pass. */
  static Value value(SourceText function, List<SourceText> references, Shapes shapes) {
    return valueOf(function.text().toUpperCase(Locale.ROOT)).of(function, references, shapes);
  }

  Value of(SourceText function, List<SourceText> references, Shapes shapes) {
    SourceText panel = references.get(0);
    require(panel.text().indexOf('.') < 0, function, panel);
    return ofPanel.apply(shapes.shape(panel));
  }

  /** The panel in a reference {@code panel.edge}. */
  SourceText owner(SourceText function, SourceText reference) {
    int dot = reference.text().indexOf('.');
    require(dot >= 0, function, reference);
    return reference.part(0, dot);
  }

  static SourceText member(SourceText reference) {
    return reference.part(reference.text().indexOf('.') + 1, reference.text().length());
  }

  private void require(boolean holds, SourceText function, SourceText reference) {
    if (!holds) {
      throw new FindingException(
          Finding.of(
              GradeCode.REFERENCE_KIND,
              reference.position(),
              "function",
              function.text(),
              "reference",
              reference.text(),
              "needs",
              needs));
    }
  }
}
