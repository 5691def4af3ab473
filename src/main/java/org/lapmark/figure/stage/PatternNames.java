package org.lapmark.figure.stage;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.key.Ref;

/**
 * What the names in a figure stand for in one variant; one that stands for nothing is thrown as a
 * finding.
 *
 * @param pattern the pattern in that variant
 */
public record PatternNames(EvaluatedPattern pattern) {
  /** The piece of a number. */
  public Piece piece(SourceText number) {
    for (Piece piece : pattern.pieces()) {
      if (Integer.toString(piece.number()).equals(number.text())) {
        return piece;
      }
    }
    requireAbsent(Ref.Kind.PIECE, number, "piece " + number.text());
    throw Faults.of(
        number.position(),
        FigureCode.FIGURE_PIECE_UNKNOWN,
        "number",
        number.text(),
        "known",
        Known.listed(
            pattern.pieces().stream().map(piece -> Integer.toString(piece.number())).toList()));
  }

  /** The material a piece is shown in: the stated one, which it must be cut from, or the first. */
  public String cloth(Piece piece, SourceText stated) {
    List<String> cut = piece.cuts().stream().map(Cut::material).toList();
    if (stated == null) {
      return cut.isEmpty() ? "" : cut.get(0);
    }
    String material = material(stated);
    if (!cut.contains(material)) {
      throw Faults.of(
          stated.position(),
          FigureCode.FIGURE_NOT_CUT_FROM,
          "number",
          Integer.toString(piece.number()),
          "name",
          material,
          "place",
          place(stated),
          "known",
          Known.listed(cut));
    }
    return material;
  }

  /** The id of a material. */
  public String material(SourceText id) {
    return thing(id, pattern.source().materials(), FigureCode.FIGURE_MATERIAL_UNKNOWN);
  }

  /** The id of hardware. */
  public String hardware(SourceText id) {
    return thing(id, pattern.source().hardware(), FigureCode.FIGURE_HARDWARE_UNKNOWN);
  }

  private String thing(SourceText id, List<ThingSource> things, FigureCode code) {
    List<String> known = things.stream().map(thing -> thing.id().text()).toList();
    if (known.contains(id.text())) {
      return id.text();
    }
    requireAbsent(Ref.Kind.THING, id, id.text());
    throw unknown(code, id, known);
  }

  /**
   * Ends with the reason for which the variant doesn't have something, if there is one: a condition
   * that doesn't hold, or what has been told already.
   */
  private void requireAbsent(Ref.Kind kind, SourceText name, String called) {
    Ref what = Ref.of(kind, name.text());
    OptionsSource options = pattern.source().options();
    if (options.isUnread(what)) {
      throw new DemandGraph.Unavailable();
    }
    Formula when = options.conditions().get(what);
    if (when != null) {
      throw Faults.of(
          name.position(),
          FigureCode.FIGURE_ABSENT,
          "name",
          called,
          "when",
          when.text().text(),
          "size",
          pattern.variant().size(),
          "place",
          place(name));
    }
  }

  /** A trim in this variant. */
  public Trim trim(SourceText name) {
    return pattern
        .fastened()
        .trim(name.text())
        .orElseThrow(
            () ->
                missing(
                    Ref.Kind.TRIM,
                    FigureCode.FIGURE_TRIM_UNKNOWN,
                    name,
                    pattern.fastened().trims().stream().map(Trim::name).toList()));
  }

  /** Where it is stated what a trim is made of. */
  public SourceText thing(Trim trim) {
    return pattern.source().fastenings().trim(trim.name()).orElseThrow().thing();
  }

  /** An attachment in this variant. */
  public Attached attached(SourceText name) {
    return pattern
        .fastened()
        .attachment(name.text())
        .orElseThrow(
            () ->
                missing(
                    Ref.Kind.ATTACHMENT,
                    FigureCode.FIGURE_ATTACHMENT_UNKNOWN,
                    name,
                    pattern.fastened().attachments().stream().map(Attached::name).toList()));
  }

  /** The material of what is attached: of a piece the first; nothing for hardware. */
  public Optional<String> material(Attached attached) {
    if (attached.piece().isEmpty()) {
      return pattern.source().materials().stream()
          .map(thing -> thing.id().text())
          .filter(attached.thing()::equals)
          .findFirst();
    }
    return pattern.pieces().stream()
        .filter(piece -> piece.number() == attached.piece().getAsInt())
        .flatMap(piece -> piece.cuts().stream())
        .map(Cut::material)
        .findFirst();
  }

  /** A property of a material or of hardware, in millimetres. */
  public double property(SourceText id, String property) {
    List<ThingSource> things = new ArrayList<>(pattern.source().hardware());
    things.addAll(pattern.source().materials());
    for (ThingSource thing : things) {
      if (thing.id().text().equals(id.text()) && thing.properties().containsKey(property)) {
        Formula stated = thing.properties().get(property);
        return stated.amount(pattern.scope(), Dimension.LENGTH);
      }
    }
    if (things.stream().anyMatch(thing -> thing.id().text().equals(id.text()))) {
      throw Faults.of(
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

  /** The panel of a name. */
  public Panel panel(SourceText name) {
    Panel panel = pattern.panels().get(name.text());
    if (panel == null) {
      requireAbsent(Ref.Kind.PANEL, name, name.text());
      throw unknown(FigureCode.FIGURE_PANEL_UNKNOWN, name, pattern.panels().keySet());
    }
    return panel;
  }

  /** The edges that a reference names, which follow one another. */
  public List<String> line(Panel panel, SourceText reference) {
    List<String> edges = edges(panel, reference);
    String name = reference.text().substring(reference.text().indexOf('.') + 1);
    if (!panel.isOneLine(name)) {
      throw new FindingException(
          new Finding(
              PanelCode.EDGE_IN_PARTS, reference.position(), panel.inParts(name).arguments()));
    }
    return edges;
  }

  /** The line of edges that a reference names, which follow one another. */
  public Path path(Panel panel, SourceText reference) {
    Path path = null;
    for (String name : line(panel, reference)) {
      Path next = panel.line(name);
      path = path == null ? next : path.then(next);
    }
    return path;
  }

  /** The line of one edge or chain, where all edges together have no side to be worked from. */
  public Path side(Panel panel, SourceText reference) {
    if (reference.text().equals("all")) {
      throw noEdge(panel, reference, reference.text());
    }
    return path(panel, reference);
  }

  /** The edges that a reference names: one, those of a chain, or all. */
  public List<String> edges(Panel panel, SourceText reference) {
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
    throw noEdge(panel, reference, name);
  }

  private static FindingException noEdge(Panel panel, SourceText reference, String name) {
    Set<String> known = new LinkedHashSet<>();
    panel.edges().forEach(edge -> known.add(edge.name()));
    known.addAll(panel.chains().keySet());
    return Faults.of(
        reference.position(),
        FigureCode.FIGURE_EDGE_UNKNOWN,
        "panel",
        panel.name(),
        "name",
        name,
        "near",
        NearestWord.of(name, known).orElse("none"),
        "known",
        Known.listed(known));
  }

  /** What tells findings apart that say the same of several places. */
  public static String place(SourceText name) {
    Position place = name.position();
    return place.file() + ':' + place.line() + ':' + place.column();
  }

  private FindingException missing(
      Ref.Kind kind, FigureCode code, SourceText name, Collection<String> known) {
    requireAbsent(kind, name, name.text());
    return unknown(code, name, known);
  }

  /** A name that stands for nothing. */
  public FindingException unknown(FigureCode code, SourceText word, Collection<String> known) {
    return Faults.of(
        word.position(),
        code,
        "name",
        word.text(),
        "near",
        NearestWord.of(word.text(), known).orElse("none"),
        "known",
        Known.listed(known));
  }
}
