package org.lapmark.figure.operation;

import java.util.List;
import org.lapmark.figure.operation.closures.LappedZip;
import org.lapmark.figure.operation.closures.ZipBetween;
import org.lapmark.figure.operation.closures.ZipInSeam;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.edges.Binding;
import org.lapmark.figure.operation.edges.Casing;
import org.lapmark.figure.operation.edges.Facing;
import org.lapmark.figure.operation.edges.Hem;
import org.lapmark.figure.operation.edges.PatchPocket;
import org.lapmark.figure.operation.folds.FoldedStrap;
import org.lapmark.figure.operation.folds.Pleat;
import org.lapmark.figure.operation.layers.Quilting;
import org.lapmark.figure.operation.layers.Stack;
import org.lapmark.figure.operation.seams.BoundSeam;
import org.lapmark.figure.operation.seams.FlatFelledSeam;
import org.lapmark.figure.operation.seams.FrenchSeam;
import org.lapmark.figure.operation.seams.GradedSeam;
import org.lapmark.figure.operation.seams.Piping;
import org.lapmark.figure.operation.seams.PlainSeam;
import org.lapmark.figure.operation.seams.Topstitching;

/** All kinds of operation. */
final class Crafts {
  /** In the order in which the reference lists them. */
  static final List<Craft> ALL =
      List.of(
          new PlainSeam(),
          new FrenchSeam(),
          new FlatFelledSeam(),
          new BoundSeam(),
          new GradedSeam(),
          new Topstitching(),
          new Piping(),
          new Hem(),
          new Facing(),
          new Binding(),
          new Casing(),
          new PatchPocket(),
          new ZipInSeam(),
          new LappedZip(),
          new ZipBetween(),
          new Pleat(),
          new FoldedStrap(),
          new Stack(),
          new Quilting());

  private Crafts() {}
}
