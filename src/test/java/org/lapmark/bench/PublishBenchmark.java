package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.Result;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Papers;
import org.lapmark.publish.request.Request;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;
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

/** How long the stages take on the demo pattern in a warm JVM. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 5, time = 3)
public class PublishBenchmark {
  private static final Path DEMO = Path.of("content", "towpath-handlebar-bag");

  private Path output;
  private PatternSource source;
  private Publisher publisher;

  /** Reads what the stages start from. */
  @Setup(Level.Trial)
  public void read() throws IOException {
    output = Files.createTempDirectory("lapmark-bench");
    source = PatternReader.read(DEMO, new Findings());
    publisher = new Publisher(TemplateFolder.bundled());
  }

  /** Reads the folder. */
  @Benchmark
  public PatternSource reading() throws IOException {
    return PatternReader.read(DEMO, new Findings());
  }

  /** Evaluates one variant. */
  @Benchmark
  public EvaluatedPattern grading() {
    return Grader.grade(source, Variant.ofSize("M"), new Findings());
  }

  /** Publishes one size on one paper. */
  @Benchmark
  public Result oneSizeOnePaper() throws IOException {
    return publisher.publish(DEMO, new Request(List.of("M"), List.of(Papers.USUAL.get(0)), output));
  }

  /** Publishes all sizes on all papers. */
  @Benchmark
  public Result everything() throws IOException {
    return publisher.publish(DEMO, new Request(List.of(), List.of(), output));
  }
}
