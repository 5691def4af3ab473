package org.lapmark.print.nest;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.lapmark.geometry.Path;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.piece.Layering;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.piece.Typesetting;
import org.lapmark.print.sheet.CheckLine;
import org.lapmark.print.sheet.SheetSubject;

/**
 * Writes the sizes' names along their cutting lines, in gaps of the lines or at the end of
 * hairlines across them, and beside marks. Used for one sheet.
 */
final class NestNames {
  private final SheetLayout layout;
  private final int sizes;
  private final NamePlaces places;
  private final GapNames gaps;
  private final HairNames hairs;

  NestNames(
      Typesetting setting,
      List<String> names,
      SheetLayout layout,
      boolean projected,
      Function<List<Integer>, String> phrase,
      BiFunction<List<Integer>, String, Layering> layering) {
    this.layout = layout;
    this.sizes = names.size();
    this.places = new NamePlaces(setting, layout, projected, phrase, layering);
    this.gaps = new GapNames(places, projected);
    this.hairs = new HairNames(places);
  }

  List<SheetSubject.LineName> items() {
    return places.names();
  }

  /** A line without its gaps; dashes begin anew at each name. */
  List<Path> parts(NestedLines.Cutting line) {
    return gaps.parts(line);
  }

  void place(List<NestedLines> pieces, List<CheckLine> checks) {
    places.keepOff(Path.rectangle(layout.square()));
    layout.endSquare().ifPresent(box -> places.keepOff(Path.rectangle(box)));
    checks.forEach(check -> places.keepOff(check.line()));
    List<List<Stretch>> stretches = new ArrayList<>();
    for (NestedLines piece : pieces) {
      stretches.add(stretches(piece));
    }
    for (int i = 0; i < pieces.size(); i++) {
      List<Stretch> left = new ArrayList<>();
      for (Stretch stretch : stretches.get(i)) {
        if (!gaps.write(stretch)) {
          left.add(stretch);
        }
      }
      hairs.write(left, pieces.get(i));
      new MarkNames(places).write(pieces.get(i));
    }
  }

  /** Gets to know a piece's lines, and gives the stretches of them that are to have names. */
  private List<Stretch> stretches(NestedLines piece) {
    for (PieceArt.Stroke stroke : piece.others()) {
      if (stroke.layering().within().isEmpty()) {
        places.keepOff(stroke.path());
      }
    }
    List<Stretch> stretches = new ArrayList<>();
    for (NestedLines.Cutting line : piece.cutting()) {
      places.keepOff(line);
      gaps.add(line);
      hairs.add(line);
      if (line.owners().size() < sizes) {
        stretches.addAll(gaps.stretches(line));
      }
    }
    return stretches;
  }
}
