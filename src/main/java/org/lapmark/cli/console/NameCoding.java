package org.lapmark.cli.console;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;

/**
 * How names of files are coded. On Linux, Java takes that from the locale, once, when it starts; in
 * the locale C or POSIX, which is that of scripts, containers and build servers, it can name no
 * file with a letter beyond ASCII, and doesn't even hand over such arguments. Nothing that a
 * running program does can change it; so the program is started a second time, in the locale
 * C.UTF-8, with the arguments as the system has them.
 */
public final class NameCoding {
  /** The property that hands over the arguments, coded in ASCII. */
  private static final String ARGUMENTS = "lapmark.arguments";

  private static final String LOCALE = "LC_ALL";
  private static final String UTF_8 = "C.UTF-8";
  private static final Path COMMAND = Path.of("/proc/self/cmdline");
  private static final String DEBUGGER = "jdwp";

  private NameCoding() {}

  /** Whether this Java can name files in ASCII only. */
  static boolean isLimited() {
    String name = System.getProperty("sun.jnu.encoding");
    return name != null
        && Charset.isSupported(name)
        && Charset.forName(name).equals(StandardCharsets.US_ASCII);
  }

  /**
   * The arguments of this run.
   *
   * @param given as Java hands them over
   * @return as they were written
   */
  public static String[] arguments(String[] given) {
    String coded = System.getProperty(ARGUMENTS);
    return coded == null ? given : decoded(coded);
  }

  /**
   * Runs the program a second time if it can name ASCII files only.
   *
   * @param given the arguments as Java hands them over
   * @return the second run's exit code, or nothing if there was no need or no way
   */
  public static OptionalInt again(String[] given) {
    boolean first = System.getProperty(ARGUMENTS) == null;
    // Within a build tool there is no command line to begin anew.
    boolean alone = NameCoding.class.getClassLoader() == ClassLoader.getSystemClassLoader();
    if (!first || !alone || !isLimited()) {
      return OptionalInt.empty();
    }
    List<byte[]> command;
    try {
      command = parts(Files.readAllBytes(COMMAND));
    } catch (IOException e) {
      return OptionalInt.empty(); // Not Linux.
    }
    List<String> start = start(command, given);
    return start.isEmpty() ? OptionalInt.empty() : run(start);
  }

  /** The parts of a command line, each ended by a zero. */
  static List<byte[]> parts(byte[] line) {
    List<byte[]> parts = new ArrayList<>();
    int from = 0;
    for (int i = 0; i < line.length; i++) {
      if (line[i] == 0) {
        parts.add(Arrays.copyOfRange(line, from, i));
        from = i + 1;
      }
    }
    return parts;
  }

  /**
   * The command line that starts the program anew: the same up to the arguments, which are handed
   * over in ASCII.
   *
   * @param command the parts of this run's command line
   * @param given the arguments as Java hands them over
   * @return empty if it isn't plain what is what
   */
  static List<String> start(List<byte[]> command, String[] given) {
    int first = command.size() - given.length;
    if (first < 2) {
      return List.of();
    }
    for (int i = 0; i < given.length; i++) {
      if (!given[i].equals(ascii(command.get(first + i)))) {
        return List.of();
      }
    }
    StringBuilder coded = new StringBuilder();
    for (byte[] argument : command.subList(first, command.size())) {
      String text = new String(argument, StandardCharsets.UTF_8);
      coded.append(URLEncoder.encode(text, StandardCharsets.UTF_8)).append('&');
    }
    List<String> start = new ArrayList<>();
    start.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    start.add("-D" + ARGUMENTS + "=" + coded);
    for (byte[] part : command.subList(1, first)) {
      String text = ascii(part);
      // Two programs can't be debugged at one address.
      if (text.indexOf('\ufffd') >= 0 || text.contains(DEBUGGER)) {
        return List.of();
      }
      start.add(text);
    }
    return start;
  }

  private static String ascii(byte[] bytes) {
    return new String(bytes, StandardCharsets.US_ASCII);
  }

  private static String[] decoded(String coded) {
    List<String> arguments = new ArrayList<>();
    int from = 0;
    for (int end = coded.indexOf('&'); end >= 0; end = coded.indexOf('&', from)) {
      arguments.add(URLDecoder.decode(coded.substring(from, end), StandardCharsets.UTF_8));
      from = end + 1;
    }
    return arguments.toArray(new String[0]);
  }

  private static OptionalInt run(List<String> start) {
    ProcessBuilder builder = new ProcessBuilder(start).inheritIO();
    builder.environment().put(LOCALE, UTF_8);
    try {
      Process second = builder.start();
      // Whoever ends this run ends the second, and waits until it has left things in order.
      Thread end = new Thread(() -> end(second));
      Runtime.getRuntime().addShutdownHook(end);
      return OptionalInt.of(second.waitFor());
    } catch (IOException e) {
      return OptionalInt.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return OptionalInt.of(ExitCode.FAILED);
    }
  }

  private static void end(Process second) {
    second.destroy();
    try {
      second.waitFor();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
