package org.lapmark.figure;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.FigureSource.Article;
import org.lapmark.figure.FigureSource.Frame;
import org.lapmark.figure.FigureSource.Layers;
import org.lapmark.figure.FigureSource.LineKind;
import org.lapmark.figure.FigureSource.Pieces;
import org.lapmark.figure.FigureSource.Rings;
import org.lapmark.figure.FigureSource.Section;
import org.lapmark.figure.FigureSource.SectionLayer;
import org.lapmark.figure.FigureSource.SewnLine;
import org.lapmark.figure.FigureSource.Stitch;
import org.lapmark.figure.FigureSource.Thing;
import org.lapmark.figure.FigureSource.View;
import org.lapmark.grade.Piece;

/** Says in words what a figure shows, from the same statements and geometry. */
final class Alternative {
  private final Evaluation evaluation;

  Alternative(Evaluation evaluation) {
    this.evaluation = evaluation;
  }

  String of(FigureSource figure) {
    List<String> sentences = new ArrayList<>();
    for (Frame frame : figure.frames()) {
      if (frame.title() != null) {
        sentences.add(evaluation.word("alt.titled", "title", evaluation.text(frame.title())));
      }
      if (frame instanceof Pieces pieces) {
        pieces.views().forEach(view -> view(view, sentences));
      } else if (frame instanceof Layers layers) {
        layers(layers, sentences);
      } else if (frame instanceof Section section) {
        section(section, sentences);
      } else if (frame instanceof Rings rings) {
        rings(rings, sentences);
      } else {
        article((Article) frame, sentences);
      }
    }
    return String.join(" ", sentences);
  }

  private String named(View view) {
    if (view.zip() != null) {
      return evaluation.word(
          view.side() == FigureSource.Side.RIGHT ? "zip.face.up" : "zip.face.down");
    }
    Piece piece = evaluation.piece(view.piece());
    return evaluation.word(
        "alt.piece",
        "number",
        Integer.toString(piece.number()),
        "name",
        piece.name(),
        "cloth",
        evaluation.clothAndSide(evaluation.cloth(piece, view.cloth()), view.side()));
  }

  private void view(View view, List<String> sentences) {
    sentences.add(evaluation.word("alt.flat", "what", named(view)));
    if (view.shown().contains(FigureSource.Shown.MARKS)) {
      sentences.add(evaluation.word("alt.marks"));
    }
    on(view, sentences);
  }

  private void on(View view, List<String> sentences) {
    for (Thing thing : view.things()) {
      String what;
      if (thing.piece() != null) {
        Piece piece = evaluation.piece(thing.piece());
        what =
            evaluation.word(
                "piece.short", "number", Integer.toString(piece.number()), "name", piece.name());
      } else if (thing.name() != null) {
        what = evaluation.text(thing.name());
      } else {
        continue;
      }
      sentences.add(evaluation.word("alt.thing", "what", what));
    }
    for (SewnLine line : view.lines()) {
      if (line.kind() == LineKind.EDGE) {
        continue;
      }
      Piece piece = evaluation.piece(view.piece());
      String edge = line.edges().get(0).text().replace('_', ' ');
      double allowance =
          piece
              .shape()
              .allowances()
              .getOrDefault(
                  evaluation.edges(piece.shape().panel(), line.edges().get(0)).get(0), 0.0);
      double distance = line.distance() == null ? allowance : evaluation.length(line.distance());
      String kind =
          switch (line.kind()) {
            case SEW -> "alt.sew";
            case BASTE -> "alt.baste";
            default -> "alt.topstitch";
          };
      sentences.add(evaluation.word(kind, "edge", edge, "distance", evaluation.printed(distance)));
    }
  }

  private void layers(Layers layers, List<String> sentences) {
    sentences.add(evaluation.word("alt.layers", "count", layers.views().size()));
    for (int i = 0; i < layers.views().size(); i++) {
      View view = layers.views().get(i);
      sentences.add(evaluation.word("alt.layer", "number", i + 1, "what", named(view)));
    }
    layers.views().stream()
        .filter(view -> view.piece() != null)
        .forEach(view -> on(view, sentences));
  }

  private void section(Section section, List<String> sentences) {
    List<String> names = new ArrayList<>();
    for (SectionLayer layer : section.layers()) {
      names.add(
          layer.name() != null
              ? evaluation.text(layer.name())
              : layer.zip()
                  ? evaluation.word("zip.tape")
                  : evaluation.clothName(layer.cloth().text()));
    }
    sentences.add(evaluation.word("alt.section", "layers", String.join("; ", names)));
    for (Stitch stitch : section.stitches()) {
      if (stitch.text() != null) {
        sentences.add(evaluation.word("alt.stitch", "what", evaluation.text(stitch.text())));
      }
    }
  }

  private void article(Article article, List<String> sentences) {
    double length = evaluation.length(article.length());
    var box = evaluation.panel(article.panel()).outline().bounds();
    sentences.add(
        evaluation.word(
            article.open() ? "alt.ring" : "alt.article",
            "width",
            evaluation.printed(length),
            "height",
            evaluation.printed(box.height()),
            "depth",
            evaluation.printed(box.width())));
    article
        .labels()
        .forEach(
            label ->
                sentences.add(evaluation.word("alt.named", "what", evaluation.text(label.text()))));
  }

  private void rings(Rings rings, List<String> sentences) {
    List<String> rounds = new ArrayList<>();
    rings.hoops().forEach(hoop -> rounds.add(evaluation.printed(evaluation.length(hoop.round()))));
    sentences.add(evaluation.word("alt.rings", "rounds", String.join("; ", rounds)));
    if (rings.cord() != null) {
      sentences.add(evaluation.word("alt.hung-cord"));
    }
    rings
        .labels()
        .forEach(
            label ->
                sentences.add(evaluation.word("alt.named", "what", evaluation.text(label.text()))));
  }
}
