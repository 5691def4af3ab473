package org.lapmark.print;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lapmark.grade.GradedPattern;
import org.lapmark.packing.Search;
import org.lapmark.print.arrange.SheetLayout;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.paper.Tiling;
import org.lapmark.print.sheet.DraftSheet;
import org.lapmark.print.sheet.OneSize;
import org.lapmark.print.sheet.SheetSubject;
import org.lapmark.print.tile.TilePainter;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long a size on a paper takes in a warm JVM: thirty generated pieces on A4. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class SheetBenchmark {
  private SheetPlanner planner;
  private GradedPattern pattern;
  private SheetLayout layout;

  /** Makes what the stages start from. */
  @Setup(Level.Trial)
  public void make() {
    planner = SamplePatterns.planner();
    pattern = GeneratedPatterns.pattern(22, 30);
    layout = SheetLayout.of(pattern.pieces(), Paper.A4, Tiling.DEFAULT, Search.DEFAULT);
  }

  /** Arranges and draws. */
  @Benchmark
  public Object arrangingAndDrawing() {
    return planner.plan(pattern, Paper.A4);
  }

  /** Draws alone. */
  @Benchmark
  public Object drawing() {
    SheetSubject subject = new OneSize(planner.setting(), pattern);
    return TilePainter.paint(
        DraftSheet.of(
            planner.setting(),
            subject,
            Paper.A4,
            Tiling.DEFAULT,
            subject.drawn(layout, false),
            List.of()));
  }
}
