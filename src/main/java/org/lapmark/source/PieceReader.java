package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.TemplateText;

/** Reads the pieces. */
final class PieceReader {
  private static final int HIGHEST_NUMBER = 9999;

  private final Reading reading;

  PieceReader(Reading reading) {
    this.reading = reading;
  }

  List<PieceSource> read(YamlNode node) {
    List<PieceSource> pieces = new ArrayList<>();
    Map<Integer, Position> numbers = new LinkedHashMap<>();
    List<YamlNode> nodes = reading.list(node, "pieces");
    if (nodes.isEmpty() && node instanceof YamlNode.Items) {
      reading.findings().add(SourceCode.LIST_EMPTY, node.position(), "key", "pieces");
    }
    for (YamlNode item : reading.bounded(nodes, "pieces", reading.limits().pieces())) {
      PieceSource piece = piece(item, numbers);
      if (piece != null) {
        pieces.add(piece);
      }
    }
    return pieces;
  }

  private PieceSource piece(YamlNode node, Map<Integer, Position> numbers) {
    Position owner = MastheadReader.firstKey(node);
    Map<String, YamlNode> values = reading.section(node, Section.PIECE, owner, "pieces");
    if (values == null) {
      return null;
    }
    Integer number =
        values.containsKey("number")
            ? reading.number(values.get("number"), "number", 1, HIGHEST_NUMBER)
            : null;
    Position position = values.containsKey("number") ? values.get("number").position() : owner;
    reading.condition(values, position);
    if (number != null) {
      Position first = numbers.putIfAbsent(number, position);
      if (first != null) {
        reading
            .findings()
            .add(
                SourceCode.PIECE_NUMBER_DUPLICATE,
                position,
                "number",
                Integer.toString(number),
                "line",
                Integer.toString(first.line()));
      }
    }
    TemplateText name =
        values.containsKey("name") ? reading.nameTemplate(values.get("name"), "name") : null;
    SourceText panel =
        values.containsKey("panel") ? reading.text(values.get("panel"), "panel") : null;
    Formula allowance =
        values.containsKey("allowance")
            ? reading.formula(values.get("allowance"), "allowance")
            : null;
    List<PieceSource.EdgeAllowance> edges = new ArrayList<>();
    AllowanceReader allowances = new AllowanceReader(reading);
    if (values.containsKey("edge_allowances")) {
      edges.addAll(allowances.edges(values.get("edge_allowances")));
    }
    CornerSources corners = allowances.corners(values);
    List<PieceSource.CutSource> cuts = values.containsKey("cut") ? cuts(values.get("cut")) : null;
    if (number == null || name == null || panel == null || cuts == null) {
      return null;
    }
    return new PieceSource(
        number,
        position,
        name,
        panel,
        allowance,
        edges,
        corners,
        cuts,
        fold(values.get("on_fold")),
        printed(values.get("printed")));
  }

  private PieceSource.Printed printed(YamlNode node) {
    Boolean wanted = node == null ? null : reading.truth(node, "printed");
    return wanted == null ? null : new PieceSource.Printed(wanted, node.position());
  }

  private Optional<PieceSource.FoldSource> fold(YamlNode node) {
    if (node == null) {
      return Optional.empty();
    }
    List<SourceText> ends = new ArrayList<>();
    for (YamlNode end : reading.list(node, "on_fold")) {
      SourceText name = reading.corner(end, "on_fold");
      if (name != null) {
        ends.add(name);
      }
    }
    if (node instanceof YamlNode.Items items && items.items().size() != 2) {
      reading.findings().add(SourceCode.FOLD_ENDS, node.position());
    }
    return ends.size() == 2
        ? Optional.of(new PieceSource.FoldSource(ends.get(0), ends.get(1)))
        : Optional.empty();
  }

  private List<PieceSource.CutSource> cuts(YamlNode node) {
    List<PieceSource.CutSource> cuts = new ArrayList<>();
    List<YamlNode> nodes = reading.list(node, "cut");
    if (nodes.isEmpty() && node instanceof YamlNode.Items) {
      reading.findings().add(SourceCode.LIST_EMPTY, node.position(), "key", "cut");
    }
    for (YamlNode item : reading.bounded(nodes, "cut", reading.limits().entries())) {
      Position owner = MastheadReader.firstKey(item);
      Map<String, YamlNode> values = reading.section(item, Section.CUT, owner, "cut");
      if (values == null) {
        continue;
      }
      SourceText material =
          values.containsKey("material") ? reading.text(values.get("material"), "material") : null;
      Formula count =
          values.containsKey("count") ? reading.formula(values.get("count"), "count") : null;
      Formula reversed =
          values.containsKey("reversed")
              ? reading.formula(values.get("reversed"), "reversed")
              : null;
      if (material != null && count != null) {
        reading.condition(values, material.position());
        cuts.add(new PieceSource.CutSource(material, count, reversed));
      }
    }
    return cuts;
  }
}
