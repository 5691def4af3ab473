package org.lapmark.figure.operation.craft;

import java.util.List;
import java.util.Optional;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Piece;
import org.lapmark.panel.Panel;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/**
 * What a seam, an edge or a trim says of an operation in one variant.
 *
 * @param cloth the material on the one side
 * @param with that on the other
 * @param allowance the seam allowance in millimetres
 */
record Given(Material cloth, Material with, double allowance) {
  static Given of(Named named, SourceText name, Staging staging) {
    return switch (named) {
      case SEAM -> seam(name, staging);
      case EDGE -> edge(name, staging);
      case TRIM -> trim(name, staging);
      case NOTHING -> throw new IllegalArgumentException();
    };
  }

  private static Given seam(SourceText name, Staging staging) {
    List<WalkedSeam> seams = staging.pattern().seams();
    WalkedSeam seam =
        seams.stream()
            .filter(one -> one.name().equals(name.text()))
            .findFirst()
            .orElseThrow(
                () ->
                    staging
                        .names()
                        .unknown(
                            FigureCode.FIGURE_SEAM_UNKNOWN,
                            name,
                            seams.stream().map(WalkedSeam::name).toList()));
    Material first = material(seam.sides().get(0), name, staging);
    Material second = material(seam.sides().get(1), name, staging);
    List<Double> all = seam.allowances();
    return new Given(first, second, all.isEmpty() ? 0 : all.get(all.size() - 1));
  }

  /** The material of the first part that is cut. */
  private static Material material(SeamSide side, SourceText name, Staging staging) {
    return side.parts().stream()
        .filter(part -> !part.panel().isEmpty())
        .map(SeamPart::panel)
        .findFirst()
        .map(panel -> material(panel, name, staging))
        .orElseGet(
            () -> {
              String tape = staging.words().word("zip.tape");
              return new Material(Optional.empty(), tape, tape);
            });
  }

  private static Material material(String panel, SourceText name, Staging staging) {
    Piece piece =
        staging
            .pattern()
            .pieceOf(panel)
            .filter(one -> !one.cuts().isEmpty())
            .orElseThrow(
                () ->
                    Faults.of(
                        name.position(),
                        FigureCode.FIGURE_OPERATION_UNCUT,
                        "name",
                        name.text(),
                        "panel",
                        panel));
    String id = staging.names().cloth(piece, null);
    String cloth = staging.cloths().name(id);
    return new Material(
        Optional.of(staging.cloths().texture(id)),
        staging
            .words()
            .word("piece", "number", piece.number(), "name", piece.name(), "cloth", cloth),
        staging
            .words()
            .word("alt.piece", "number", piece.number(), "name", piece.name(), "cloth", cloth));
  }

  private static Given edge(SourceText name, Staging staging) {
    int dot = name.text().indexOf('.');
    if (dot <= 0) {
      throw Faults.of(name.position(), FigureCode.FIGURE_OPERATION_NO_EDGE, "name", name.text());
    }
    PatternNames names = staging.names();
    Panel panel = names.panel(name.part(0, dot));
    String edge = names.edges(panel, name.part(dot + 1, name.text().length())).get(0);
    return edge(panel.name(), edge, name, staging);
  }

  private static Given edge(String panel, String edge, SourceText name, Staging staging) {
    Material cloth = material(panel, name, staging);
    double allowance =
        staging
            .pattern()
            .pieceOf(panel)
            .map(piece -> piece.shape().allowances().getOrDefault(edge, 0.0))
            .orElse(0.0);
    return new Given(cloth, cloth, allowance);
  }

  private static Given trim(SourceText name, Staging staging) {
    Trim trim = staging.names().trim(name);
    Given first = line(trim.along().get(0), name, staging);
    if (trim.facing().isEmpty()) {
      return first;
    }
    return new Given(first.cloth, line(trim.facing().get(0), name, staging).cloth, first.allowance);
  }

  /** An edge or a chain as a trim names it. */
  private static Given line(String text, SourceText name, Staging staging) {
    int dot = text.indexOf('.');
    String panel = text.substring(0, dot);
    Panel on = staging.pattern().panels().get(panel);
    List<String> chain = on.chains().get(text.substring(dot + 1));
    return edge(panel, chain == null ? text.substring(dot + 1) : chain.get(0), name, staging);
  }
}
