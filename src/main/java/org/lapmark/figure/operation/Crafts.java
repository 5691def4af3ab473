package org.lapmark.figure.operation;

import java.util.List;
import org.lapmark.figure.operation.closures.LappedZip;
import org.lapmark.figure.operation.closures.LetterboxPocket;
import org.lapmark.figure.operation.closures.ZipBetween;
import org.lapmark.figure.operation.closures.ZipInSeam;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.curves.BindingEnds;
import org.lapmark.figure.operation.curves.ClippedCurve;
import org.lapmark.figure.operation.curves.Corner;
import org.lapmark.figure.operation.curves.CurvedHem;
import org.lapmark.figure.operation.curves.MitredBinding;
import org.lapmark.figure.operation.curves.NotchedCurve;
import org.lapmark.figure.operation.curves.TurningGap;
import org.lapmark.figure.operation.edges.Binding;
import org.lapmark.figure.operation.edges.Casing;
import org.lapmark.figure.operation.edges.Facing;
import org.lapmark.figure.operation.edges.Hem;
import org.lapmark.figure.operation.edges.PatchPocket;
import org.lapmark.figure.operation.folds.Dart;
import org.lapmark.figure.operation.folds.FoldedStrap;
import org.lapmark.figure.operation.folds.Gathers;
import org.lapmark.figure.operation.folds.Pleat;
import org.lapmark.figure.operation.layers.Quilting;
import org.lapmark.figure.operation.layers.Stack;
import org.lapmark.figure.operation.metal.EyeletSet;
import org.lapmark.figure.operation.metal.MagneticSnapSet;
import org.lapmark.figure.operation.metal.PressStudSet;
import org.lapmark.figure.operation.metal.RivetSet;
import org.lapmark.figure.operation.seams.BoundSeam;
import org.lapmark.figure.operation.seams.FlatFelledSeam;
import org.lapmark.figure.operation.seams.FrenchSeam;
import org.lapmark.figure.operation.seams.GradedSeam;
import org.lapmark.figure.operation.seams.Piping;
import org.lapmark.figure.operation.seams.PlainSeam;
import org.lapmark.figure.operation.seams.Topstitching;
import org.lapmark.figure.operation.strips.BiasJoin;
import org.lapmark.figure.operation.strips.BoxAndCross;
import org.lapmark.figure.operation.strips.PipingEnds;
import org.lapmark.figure.operation.strips.ZipEndTab;

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
          new Corner(),
          new ClippedCurve(),
          new NotchedCurve(),
          new TurningGap(),
          new Hem(),
          new CurvedHem(),
          new Facing(),
          new Binding(),
          new MitredBinding(),
          new BindingEnds(),
          new BiasJoin(),
          new PipingEnds(),
          new Casing(),
          new PatchPocket(),
          new ZipInSeam(),
          new LappedZip(),
          new ZipBetween(),
          new ZipEndTab(),
          new LetterboxPocket(),
          new Pleat(),
          new Dart(),
          new Gathers(),
          new FoldedStrap(),
          new BoxAndCross(),
          new RivetSet(),
          new PressStudSet(),
          new EyeletSet(),
          new MagneticSnapSet(),
          new Stack(),
          new Quilting());

  private Crafts() {}
}
