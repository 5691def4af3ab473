package org.lapmark.publish;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;

/** Threads that work in parallel; results and findings are joined in the order of the tasks. */
final class Crew implements AutoCloseable {
  private final ExecutorService pool;

  Crew(int threads) {
    this.pool = Executors.newFixedThreadPool(threads);
  }

  /** Something to be done, with findings of its own. */
  @FunctionalInterface
  interface Task<T> {
    T run(Findings findings) throws IOException;
  }

  /**
   * Does all tasks and waits for them.
   *
   * @param tasks what is to be done
   * @param findings takes the findings of each, in their order, also when one fails
   * @return what the tasks gave, without those that ended with a finding
   * @throws IOException when a task failed so
   * @throws Failure when one failed otherwise
   */
  <T> List<T> all(List<Task<T>> tasks, Consumer<List<Findings>> findings) throws IOException {
    List<Findings> found = new ArrayList<>();
    List<Callable<Optional<T>>> calls = new ArrayList<>();
    for (Task<T> task : tasks) {
      Findings own = new Findings();
      found.add(own);
      calls.add(
          () -> {
            try {
              return Optional.ofNullable(task.run(own));
            } catch (FindingException e) {
              own.add(e.finding());
              return Optional.empty();
            }
          });
    }
    try {
      return wait(calls);
    } finally {
      findings.accept(found);
    }
  }

  private <T> List<T> wait(List<Callable<Optional<T>>> calls) throws IOException {
    List<T> values = new ArrayList<>();
    Throwable failure = null;
    try {
      for (Future<Optional<T>> future : pool.invokeAll(calls)) {
        try {
          future.get().ifPresent(values::add);
        } catch (ExecutionException e) {
          failure = Objects.requireNonNullElse(failure, e.getCause());
        }
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new InterruptedIOException("interrupted");
    }
    if (failure instanceof IOException io) {
      throw io;
    }
    if (failure != null) {
      throw new Failure(failure);
    }
    return values;
  }

  /** Carries what a task threw over to the thread that waits for it. */
  static final class Failure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Failure(Throwable cause) {
      super(null, cause, false, false);
    }
  }

  @Override
  public void close() {
    pool.shutdownNow();
    boolean interrupted = false;
    while (true) {
      try {
        if (pool.awaitTermination(1, TimeUnit.MINUTES)) {
          break;
        }
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
