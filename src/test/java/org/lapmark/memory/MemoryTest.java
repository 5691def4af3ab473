package org.lapmark.memory;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class MemoryTest {
  /** A key. */
  private record Square(int of) {}

  private static String square(Memory memory, int of, AtomicInteger computed) {
    return memory.of(
        new Square(of),
        String::length,
        () -> {
          computed.incrementAndGet();
          return Integer.toString(of * of);
        });
  }

  @Test
  void computesOnceWhatIsEqual() {
    Memory memory = new Memory(1000);
    AtomicInteger computed = new AtomicInteger();
    String first = square(memory, 12, computed);
    assertSame(first, square(memory, 12, computed));
    assertEquals(1, computed.get());
    assertEquals(Optional.of("144"), memory.known(new Square(12)));
    assertEquals(Optional.empty(), memory.known(new Square(13)));
  }

  @Test
  void remembersNothingWithoutRoom() {
    AtomicInteger computed = new AtomicInteger();
    Memory memory = Memory.none();
    square(memory, 12, computed);
    square(memory, 12, computed);
    assertEquals(2, computed.get());
  }

  @Property(tries = 50)
  void isBoundedAndNeverWrong(@ForAll @IntRange(min = 1, max = 200) int room, @ForAll long seed) {
    Memory memory = new Memory(room);
    Random random = new Random(seed);
    AtomicInteger computed = new AtomicInteger();
    for (int i = 0; i < 500; i++) {
      int of = random.nextInt(100);
      assertEquals(Integer.toString(of * of), square(memory, of, computed));
      // Each takes at least one part of the room.
      assertTrue(memory.size() <= room, memory.size() + " in " + room);
    }
  }

  @Test
  void aFailureIsForgotten() {
    Memory memory = new Memory(1000);
    assertThrows(
        IllegalStateException.class,
        () ->
            memory.of(
                new Square(1),
                value -> 1,
                () -> {
                  throw new IllegalStateException("once");
                }));
    assertEquals("1", square(memory, 1, new AtomicInteger()));
  }

  @Test
  void whatTwoAskForAtATimeIsComputedOnce() throws Exception {
    Memory memory = new Memory(1000);
    AtomicInteger computed = new AtomicInteger();
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    ExecutorService threads = Executors.newFixedThreadPool(2);
    try {
      Callable<String> slow =
          () ->
              memory.of(
                  new Square(7),
                  String::length,
                  () -> {
                    computed.incrementAndGet();
                    begun.countDown();
                    try {
                      assertTrue(goOn.await(30, TimeUnit.SECONDS));
                    } catch (InterruptedException e) {
                      throw new IllegalStateException(e);
                    }
                    return "49";
                  });
      List<Future<String>> both = new ArrayList<>();
      both.add(threads.submit(slow));
      assertTrue(begun.await(30, TimeUnit.SECONDS));
      both.add(threads.submit(slow));
      goOn.countDown();
      for (Future<String> each : both) {
        assertEquals("49", each.get(30, TimeUnit.SECONDS));
      }
      assertEquals(1, computed.get());
    } finally {
      threads.shutdownNow();
    }
  }
}
