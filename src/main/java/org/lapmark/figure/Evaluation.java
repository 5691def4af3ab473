package org.lapmark.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.Cut;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.measure.PrintForm;
import org.lapmark.measure.PrintedValue;
import org.lapmark.measure.TemplateText;
import org.lapmark.measure.Value;
import org.lapmark.panel.Panel;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** What the words, references and formulas of a figure stand for in one variant. */
record Evaluation(GradedPattern pattern, PrintForm form, Wording wording) {
  String size() {
    return pattern.variant().size();
  }

  double length(Formula formula) {
    return formula.amount(pattern.scope(), Dimension.LENGTH);
  }

  /** A length within limits. */
  double length(Formula formula, double least, double most) {
    double length = length(formula);
    return within(formula, length, least, most);
  }

  private double within(Formula formula, double length, double least, double most) {
    if (!(length >= least - 1e-6 && length <= most + 1e-6)) {
      throw fault(
          formula.text().position(),
          FigureCode.FIGURE_DISTANCE_BEYOND,
          "value",
          hundredth(length),
          "size",
          size(),
          "least",
          hundredth(least),
          "most",
          hundredth(most));
    }
    return length;
  }

  /** What ends where it begins, by its end. */
  FindingException empty(Formula end, String name) {
    return fault(
        end.text().position(), FigureCode.FIGURE_STRETCH_EMPTY, "name", name, "size", size());
  }

  /** A length from an edge's start, or a fraction of the edge. */
  double along(Formula formula, double whole, double otherwise) {
    if (formula == null) {
      return otherwise;
    }
    Value value = formula.evaluate(pattern.scope());
    if (value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.PLAIN) {
      return within(formula, quantity.amount() * whole, 0, whole);
    }
    return length(formula, 0, whole);
  }

  /** A plain number, or 1 where none is stated. */
  double number(Formula formula) {
    if (formula == null) {
      return 1;
    }
    Value value = formula.evaluate(pattern.scope());
    if (value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.PLAIN) {
      return quantity.amount();
    }
    throw fault(
        formula.text().position(),
        FigureCode.FIGURE_VALUE_KIND,
        "name",
        formula.text().text(),
        "needed",
        "a plain number");
  }

  static String hundredth(double value) {
    return BigDecimal.valueOf(Math.rint(value * 100) / 100).stripTrailingZeros().toPlainString();
  }

  /** An author's text with its values printed. */
  String text(TemplateText text) {
    return text.print(pattern.scope(), pattern.variant(), form).stream()
        .map(part -> part instanceof PrintedValue value ? value.text() : part.toString())
        .collect(Collectors.joining());
  }

  /** A length as a reader sees it. */
  String printed(double millimetres) {
    return form.print(Value.Quantity.length(Math.rint(millimetres * 1e6) / 1e6));
  }

  Piece piece(SourceText number) {
    for (Piece piece : pattern.pieces()) {
      if (Integer.toString(piece.number()).equals(number.text())) {
        return piece;
      }
    }
    throw fault(
        number.position(),
        FigureCode.FIGURE_PIECE_UNKNOWN,
        "number",
        number.text(),
        "known",
        pattern.pieces().stream()
            .map(piece -> Integer.toString(piece.number()))
            .collect(Collectors.joining(", ")));
  }

  /** The material a piece is shown in: the stated one, which it must be cut from, or the first. */
  String cloth(Piece piece, SourceText stated) {
    List<String> cut = piece.cuts().stream().map(Cut::material).toList();
    if (stated == null) {
      return cut.isEmpty() ? "" : cut.get(0);
    }
    String material = material(stated);
    if (!cut.contains(material)) {
      throw fault(
          stated.position(),
          FigureCode.FIGURE_NOT_CUT_FROM,
          "number",
          Integer.toString(piece.number()),
          "name",
          material,
          "known",
          String.join(", ", cut));
    }
    return material;
  }

  String material(SourceText id) {
    return thing(id, pattern.source().materials(), FigureCode.FIGURE_MATERIAL_UNKNOWN);
  }

  String hardware(SourceText id) {
    return thing(id, pattern.source().hardware(), FigureCode.FIGURE_HARDWARE_UNKNOWN);
  }

  private String thing(SourceText id, List<ThingSource> things, FigureCode code) {
    List<String> known = things.stream().map(thing -> thing.id().text()).toList();
    if (known.contains(id.text())) {
      return id.text();
    }
    throw unknown(code, id, known);
  }

  /** A property of a material or of hardware, in millimetres. */
  double property(SourceText id, String property) {
    List<ThingSource> things = new ArrayList<>(pattern.source().hardware());
    things.addAll(pattern.source().materials());
    for (ThingSource thing : things) {
      if (thing.id().text().equals(id.text()) && thing.properties().containsKey(property)) {
        return length(thing.properties().get(property));
      }
    }
    throw unknown(FigureCode.FIGURE_HARDWARE_UNKNOWN, id, List.of());
  }

  Panel panel(SourceText name) {
    Panel panel = pattern.panels().get(name.text());
    if (panel == null) {
      throw unknown(FigureCode.FIGURE_PANEL_UNKNOWN, name, pattern.panels().keySet());
    }
    return panel;
  }

  /** The edges that a reference names: one, those of a chain, or all. */
  List<String> edges(Panel panel, SourceText reference) {
    String name = reference.text();
    if (name.startsWith(panel.name() + ".")) {
      name = name.substring(panel.name().length() + 1);
    }
    List<String> all = panel.edges().stream().map(edge -> edge.name()).toList();
    if (name.equals("all")) {
      return all;
    }
    if (panel.chains().containsKey(name)) {
      return panel.chains().get(name);
    }
    if (all.contains(name)) {
      return List.of(name);
    }
    Set<String> known = new LinkedHashSet<>(all);
    known.addAll(panel.chains().keySet());
    throw fault(
        reference.position(),
        FigureCode.FIGURE_EDGE_UNKNOWN,
        "panel",
        panel.name(),
        "name",
        name,
        "near",
        Nearest.of(name, known).orElse("none"),
        "known",
        String.join(", ", known));
  }

  FindingException unknown(FigureCode code, SourceText word, Collection<String> known) {
    return fault(
        word.position(),
        code,
        "name",
        word.text(),
        "near",
        Nearest.of(word.text(), known).orElse("none"),
        "known",
        String.join(", ", known));
  }

  static FindingException fault(Position position, FigureCode code, Object... namesAndValues) {
    return new FindingException(Finding.of(code, position, namesAndValues));
  }

  String word(String key, Object... namesAndValues) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return wording.text("figure." + key, arguments);
  }

  /** What a material is called in a label. */
  String clothName(String material) {
    Texture texture = Texture.of(material);
    if (texture != Texture.OTHER) {
      return word("cloth." + texture.word());
    }
    return pattern.pieces().stream()
        .flatMap(piece -> piece.cuts().stream())
        .filter(cut -> cut.material().equals(material))
        .map(Cut::materialName)
        .findFirst()
        .orElse(material);
  }

  /** A material with the side that faces the reader, where its sides differ. */
  String clothAndSide(String material, FigureSource.Side side) {
    return Texture.of(material).sided()
        ? word("cloth.sided", "cloth", clothName(material), "side", side(side))
        : clothName(material);
  }

  String side(FigureSource.Side side) {
    return word(side == FigureSource.Side.RIGHT ? "side.right" : "side.wrong");
  }

  /**
   * The texture in which a material is shown: the one its author states, or that of its id.
   *
   * @param material the material's id
   * @return the texture
   */
  Texture texture(String material) {
    return pattern.source().materials().stream()
        .filter(thing -> thing.id().text().equals(material) && thing.texture() != null)
        .findFirst()
        .map(thing -> Texture.stated(thing.texture().text()))
        .orElseGet(() -> Texture.of(material));
  }
}
