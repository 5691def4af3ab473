package org.lapmark.publish.output;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Makes an ordinary end of the program wait for a few file operations that belong together. */
final class EndDelay {
  private static final long MOST_SECONDS = 10;

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook = new Thread(this::await, "lapmark-swap");

  private EndDelay() {}

  static EndDelay begin() {
    EndDelay delay = new EndDelay();
    try {
      Runtime.getRuntime().addShutdownHook(delay.hook);
    } catch (IllegalStateException e) {
      // The end has begun already; the next run repairs what it breaks off.
    }
    return delay;
  }

  private void await() {
    try {
      done.await(MOST_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /** The operations are done. */
  void end() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The end has begun; the hook ends by itself.
    }
  }
}
