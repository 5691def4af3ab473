package org.lapmark.memory;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;

/**
 * Remembers results by keys. A key is a value of a type of its own (a record beside the function
 * that it belongs to) and holds everything that the result depends on, by value; the result is
 * immutable. What hasn't been asked for lately is forgotten where there is no room for all.
 *
 * <p>Safe for use by several threads: what two ask for at a time is computed once. A computation
 * may ask for other results, but never, by whatever way, for itself.
 */
public final class Memory {
  private final AsyncCache<Object, Remembered> cache;

  private record Remembered(Object value, int weight) {}

  /**
   * A memory.
   *
   * @param room how much may be remembered: the sum of the weights of results; 0 for nothing
   */
  public Memory(long room) {
    // What is to be forgotten is forgotten at once, by whoever adds more.
    this.cache =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumWeight(room)
            .weigher((Object key, Remembered one) -> one.weight())
            .buildAsync();
  }

  /** A memory that remembers nothing. */
  public static Memory none() {
    return new Memory(0);
  }

  /**
   * A result, computed unless it is remembered.
   *
   * @param key all that it depends on
   * @param weight how much room a result takes, at least 1; about the hundreds of bytes in it
   * @param compute computes it; must not be null
   * @return the result
   */
  public <T> T of(Object key, ToIntFunction<T> weight, Supplier<T> compute) {
    CompletableFuture<Remembered> mine = new CompletableFuture<>();
    CompletableFuture<Remembered> known = cache.asMap().putIfAbsent(key, mine);
    if (known != null) {
      return value(known);
    }
    try {
      T value = compute.get();
      mine.complete(new Remembered(value, Math.max(1, weight.applyAsInt(value))));
      return value;
    } catch (Throwable e) {
      // Whoever waits fails alike; who asks later tries again.
      cache.asMap().remove(key, mine);
      mine.completeExceptionally(e);
      throw e;
    }
  }

  /**
   * A result that is remembered, or is being computed.
   *
   * @param key all that it depends on
   * @return the result, or nothing if it would have to be computed
   */
  public <T> Optional<T> known(Object key) {
    CompletableFuture<Remembered> known = cache.asMap().get(key);
    return known == null ? Optional.empty() : Optional.of(value(known));
  }

  @SuppressWarnings("unchecked")
  private static <T> T value(CompletableFuture<Remembered> known) {
    try {
      return (T) known.join().value();
    } catch (CompletionException e) {
      if (e.getCause() instanceof RuntimeException problem) {
        throw problem;
      }
      if (e.getCause() instanceof Error problem) {
        throw problem;
      }
      throw e;
    }
  }

  /** How many results are remembered. */
  public long size() {
    return cache.synchronous().estimatedSize();
  }
}
