package org.lapmark.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
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
import org.lapmark.panel.PanelCode;
import org.lapmark.source.ThingSource;
import org.lapmark.wording.Wording;

/** What the words, references and formulas of a figure stand for in one variant. */
record Evaluation(
    GradedPattern pattern,
    PrintForm form,
    Wording wording,
    Set<Finding> notices,
    Set<Finding> faults,
    FigureLengths lengths) {
  Evaluation(GradedPattern pattern, PrintForm form, Wording wording) {
    this(pattern, form, wording, new LinkedHashSet<>(), new LinkedHashSet<>(), new FigureLengths());
  }

  /** What can be had of something; else nothing, and what is wrong with it is kept. */
  <T> Optional<T> attempt(Supplier<T> wanted) {
    try {
      return Optional.of(wanted.get());
    } catch (FindingException e) {
      faults.add(e.finding());
      return Optional.empty();
    }
  }

  /** Does something, unless something is wrong with it, which is kept. */
  void run(Runnable wanted) {
    attempt(
        () -> {
          wanted.run();
          return true;
        });
  }

  /** What is drawn all the same and should be known; said once, however often it is drawn. */
  void notice(Position position, FigureCode code, Object... arguments) {
    notices.add(Finding.of(code, position, arguments));
  }

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
      return share(formula, quantity.amount(), "yes") * whole;
    }
    return length(formula, 0, whole);
  }

  /** A share of something that has no length. */
  double share(Formula formula, String key) {
    return share(formula, plain(formula, key, "a share: a plain number from 0 to 1"), "no");
  }

  private double share(Formula formula, double share, String lengths) {
    if (!(share >= -1e-9 && share <= 1 + 1e-9)) {
      throw fault(
          formula.text().position(),
          FigureCode.FIGURE_SHARE_BEYOND,
          "value",
          hundredth(share),
          "size",
          size(),
          "lengths",
          lengths);
    }
    return Math.max(0, Math.min(1, share));
  }

  /** A plain number. */
  double number(Formula formula, String key) {
    return plain(formula, key, "a plain number");
  }

  private double plain(Formula formula, String key, String needed) {
    Value value = formula.evaluate(pattern.scope());
    if (value instanceof Value.Quantity quantity && quantity.dimension() == Dimension.PLAIN) {
      return quantity.amount();
    }
    throw fault(
        formula.text().position(),
        FigureCode.FIGURE_VALUE_KIND,
        "name",
        key.substring(key.indexOf('/') + 1),
        "needed",
        needed,
        "example",
        Examples.of(key));
  }

  static String hundredth(double value) {
    return BigDecimal.valueOf(Math.rint(value * 100) / 100).stripTrailingZeros().toPlainString();
  }

  /** An author's text with its values printed. */
  String text(TemplateText text) {
    lengths.text(text);
    return text.print(pattern.scope(), pattern.variant(), form).stream()
        .map(part -> part instanceof PrintedValue value ? value.text() : part.toString())
        .collect(Collectors.joining());
  }

  /** A length as a reader sees it. */
  String printed(double millimetres) {
    return FigureLengths.print(millimetres, form);
  }

  /** A dimension as a reader sees it, which is held against the figure's other lengths. */
  String dimension(Position place, double millimetres) {
    lengths.dimension(place, millimetres);
    return printed(millimetres);
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
        Known.listed(
            pattern.pieces().stream().map(piece -> Integer.toString(piece.number())).toList()));
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
          Known.listed(cut));
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
    if (things.stream().anyMatch(thing -> thing.id().text().equals(id.text()))) {
      throw fault(
          id.position(),
          FigureCode.FIGURE_PROPERTY_MISSING,
          "name",
          id.text(),
          "property",
          property);
    }
    throw unknown(
        FigureCode.FIGURE_HARDWARE_UNKNOWN,
        id,
        things.stream().map(thing -> thing.id().text()).toList());
  }

  Panel panel(SourceText name) {
    Panel panel = pattern.panels().get(name.text());
    if (panel == null) {
      throw unknown(FigureCode.FIGURE_PANEL_UNKNOWN, name, pattern.panels().keySet());
    }
    return panel;
  }

  /** The edges that a reference names, which follow one another. */
  List<String> line(Panel panel, SourceText reference) {
    List<String> edges = edges(panel, reference);
    String name = reference.text().substring(reference.text().indexOf('.') + 1);
    if (!panel.isOneLine(name)) {
      throw new FindingException(
          new Finding(
              PanelCode.EDGE_IN_PARTS, reference.position(), panel.inParts(name).arguments()));
    }
    return edges;
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
        Known.listed(known));
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
        Known.listed(known));
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
    String word = Texture.word(material);
    return word.isEmpty() ? statedName(material) : word("cloth." + word);
  }

  /** A material's name as its author states it, up to the first comma. */
  String statedName(String material) {
    String name =
        pattern.source().materials().stream()
            .filter(thing -> thing.id().text().equals(material))
            .findFirst()
            .flatMap(thing -> printed(thing.name()))
            .orElse(material);
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }

  /** A text that was printed before, so that what is wrong with it is known. */
  private Optional<String> printed(TemplateText text) {
    try {
      return Optional.of(text(text));
    } catch (FindingException e) {
      return Optional.empty();
    }
  }

  /** A material with the side that faces the reader, where its sides differ. */
  String clothAndSide(String material, FigureSource.Side side) {
    return texture(material).sided() ? sided(clothName(material), side) : clothName(material);
  }

  /** A name with the side that faces the reader. */
  String sided(String name, FigureSource.Side side) {
    return word("cloth.sided", "cloth", name, "side", side(side));
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
