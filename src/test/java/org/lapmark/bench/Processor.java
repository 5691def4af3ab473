package org.lapmark.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;

/**
 * The processor time of this process: of all its threads, the compiler's and the collector's too.
 */
final class Processor {
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private Processor() {}

  /** Something that takes time. */
  @FunctionalInterface
  interface Work {
    /** Does it. */
    void run() throws IOException;
  }

  /** How many seconds of processor time something takes. */
  static double seconds(Work work) throws IOException {
    long begun = SYSTEM.getProcessCpuTime();
    work.run();
    return (SYSTEM.getProcessCpuTime() - begun) / 1e9;
  }

  /** The one in the middle. */
  static double median(double... times) {
    double[] sorted = times.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
