package org.lapmark.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A command in a process of its own, and what it took. */
record ChildProcess(double wall, double processor, int exit, String told) {
  private static final Pattern TIME = Pattern.compile("([0-9]+)m([0-9.]+)s");

  /** The shell knows what its children took, when they have ended. */
  private static final String SCRIPT =
      "log=$1; shift; \"$@\" >\"$log.out\" 2>\"$log\"; code=$?; times; exit $code";

  /**
   * Runs a command.
   *
   * @param command the program and its arguments
   * @param environment what is added to the environment
   */
  static ChildProcess run(List<String> command, Map<String, String> environment)
      throws IOException {
    Path log = Files.createTempFile("lapmark-times", ".log");
    List<String> all = new ArrayList<>(List.of("sh", "-c", SCRIPT, "sh", log.toString()));
    all.addAll(command);
    ProcessBuilder builder = new ProcessBuilder(all).redirectErrorStream(true);
    builder.environment().putAll(environment);
    long begun = System.nanoTime();
    Process process = builder.start();
    process.getOutputStream().close();
    String times = new String(process.getInputStream().readAllBytes());
    int exit;
    try {
      exit = process.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
    double wall = (System.nanoTime() - begun) / 1e9;
    Path output = Path.of(log + ".out");
    String told = Files.readString(output) + Files.readString(log);
    Files.delete(output);
    Files.delete(log);
    return new ChildProcess(wall, children(times), exit, told);
  }

  /** User's and system's time of what the shell started: the second line. */
  private static double children(String times) {
    double seconds = 0;
    Matcher time = TIME.matcher(times.lines().skip(1).findFirst().orElseThrow());
    while (time.find()) {
      seconds += 60 * Integer.parseInt(time.group(1)) + Double.parseDouble(time.group(2));
    }
    return seconds;
  }

  /** Fails unless the command ended well. */
  ChildProcess whole() {
    if (exit != 0) {
      throw new IllegalStateException("ended with " + exit + ":\n" + told);
    }
    return this;
  }
}
