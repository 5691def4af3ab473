package org.lapmark.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.geometry.offset.Offset;
import org.lapmark.geometry.offset.Part;
import org.lapmark.geometry.offset.Side;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
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

/**
 * How long an allowance around a smooth outline takes, beside a buffer of polygons at the same
 * chord error. Each call takes the next of 1,000 outlines, so that the median of a sampled run is
 * that of the outlines.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class OffsetBenchmark {
  /** The tolerance of {@link org.lapmark.geometry.Parallel}. */
  private static final double CHORD = 0.003;

  private static final int COUNT = 1000;

  private final GeometryFactory factory = new GeometryFactory();
  private final List<Path> outlines = new ArrayList<>();
  private final List<Double> distances = new ArrayList<>();
  private int next;

  /** Draws the outlines. */
  @Setup(Level.Trial)
  public void draw() {
    Random random = new Random(1);
    while (outlines.size() < COUNT) {
      Path outline = smooth(random, 5 + random.nextInt(10), 0.1 + 0.6 * random.nextDouble());
      if (outline.selfCrossing().isEmpty()) {
        outlines.add(outline);
        distances.add(5 + 15 * random.nextDouble());
      }
    }
  }

  private static Path smooth(Random random, int count, double roughness) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.5 * random.nextDouble()) / count;
      double radius = 100 * (1 - roughness * random.nextDouble());
      points.add(new Point(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle)));
    }
    List<Curve> curves = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Point before = points.get((i + count - 1) % count);
      Point from = points.get(i);
      Point to = points.get((i + 1) % count);
      Point after = points.get((i + 2) % count);
      Point first = from.plus(to.minus(before).times(1 / 6.0));
      Point second = to.minus(after.minus(from).times(1 / 6.0));
      curves.add(new Cubic(from, first, second, to));
    }
    return new Path(curves);
  }

  /** Curves in, curves out. */
  @Benchmark
  public List<List<Part>> curves() {
    next = (next + 1) % COUNT;
    return Offset.loops(List.of(new Side(outlines.get(next), distances.get(next))));
  }

  /** Chords in, chords out. */
  @Benchmark
  public Geometry buffer() {
    next = (next + 1) % COUNT;
    double distance = distances.get(next);
    Coordinate[] points =
        outlines.get(next).flattened(CHORD).stream()
            .map(point -> new Coordinate(point.x(), point.y()))
            .toArray(Coordinate[]::new);
    // As many chords to a quarter circle as keep the error.
    int chords = (int) Math.ceil(Math.PI / 4 / StrictMath.acos(1 - CHORD / distance));
    BufferParameters parameters = new BufferParameters(chords);
    parameters.setSimplifyFactor(CHORD / distance);
    return BufferOp.bufferOp(factory.createPolygon(points), distance, parameters);
  }
}
