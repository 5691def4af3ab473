package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import org.lapmark.document.template.Templates;
import org.lapmark.memory.Memory;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.publish.request.Request;

/**
 * Publishes pattern folders. What one run computed is remembered for the next of the same
 * publisher, by the values that it depends on: a process that stays keeps its publisher as long as
 * the templates are the same.
 *
 * @param templates the templates
 * @param templateFolder the folder that they are from, if they take the place of the program's own;
 *     what is wrong with them is then told like what is wrong with a pattern folder
 * @param memory what remembers results; of no other templates
 */
public record Publisher(Templates templates, Optional<Path> templateFolder, Memory memory) {
  /** Room for the figures of a hundred steps in a score of variants, some 100 MB. */
  private static final long ROOM = 1_000_000;

  /** Checks the components. */
  public Publisher {
    Objects.requireNonNull(templates);
    Objects.requireNonNull(templateFolder);
    Objects.requireNonNull(memory);
  }

  /**
   * A publisher with a memory of its own.
   *
   * @param templates the templates
   * @param templateFolder the folder that they are from, if they take the place of the program's
   *     own
   */
  public Publisher(Templates templates, Optional<Path> templateFolder) {
    this(templates, templateFolder, newMemory());
  }

  /**
   * A publisher with the program's own templates.
   *
   * @param templates the templates
   */
  public Publisher(Templates templates) {
    this(templates, Optional.empty());
  }

  /**
   * An empty memory.
   *
   * @return a memory with room for what edits of a pattern need
   */
  public static Memory newMemory() {
    return new Memory(ROOM);
  }

  /** The greatest number of threads that work on one folder, whatever the machine has. */
  static final int MOST_THREADS = 4;

  /**
   * Publishes one folder.
   *
   * @param folder the pattern folder
   * @param request what to publish
   * @return files and findings
   * @throws RefusedException when the request doesn't fit the folder, such as an unknown size
   * @throws IOException when a file can't be read or written for reasons outside the folder's
   *     content
   */
  public Result publish(Path folder, Request request) throws IOException {
    return only(publish(List.of(folder), request, new Listener() {}));
  }

  /**
   * Publishes folders one after another. A folder with errors, or one that fails, doesn't keep the
   * others from being published.
   *
   * @param folders the pattern folders
   * @param request what to publish
   * @param listener is told how the work goes on
   * @return what came of each folder, in the order given
   * @throws RefusedException when the request doesn't fit the folders; then nothing was written
   * @throws IOException when the output folder can't be made or is in use
   */
  public List<Outcome> publish(List<Path> folders, Request request, Listener listener)
      throws IOException {
    return pipeline().publish(folders, request, listener);
  }

  /**
   * Reads and evaluates folders in every variant without writing anything.
   *
   * @param folders the pattern folders
   * @param listener is told how the work goes on
   * @return what came of each folder, in the order given, with nothing written
   * @throws RefusedException when two folders have the same name
   */
  public List<Outcome> check(List<Path> folders, Listener listener) {
    return pipeline().check(folders, listener);
  }

  /**
   * Reads and evaluates folders to walk their seams, and writes nothing.
   *
   * @param folders the pattern folders
   * @param sizes the sizes wanted; empty for all
   * @return what came of each folder, in the order given
   * @throws RefusedException when two folders have the same name, or a size is unknown
   */
  public List<EvaluatedFolder> walk(List<Path> folders, List<String> sizes) {
    return pipeline().walk(folders, sizes);
  }

  /**
   * Reads and evaluates folders to compare their sizes, and writes nothing.
   *
   * @param folders the pattern folders
   * @param sizes the sizes wanted; empty for all
   * @param choices what is chosen, by the option's name; all else is as by default
   * @return what came of each folder, in the order given, with one pattern a size
   * @throws RefusedException when two folders have the same name, or a size or a choice is unknown
   *     or forbidden
   */
  public List<EvaluatedFolder> grade(
      List<Path> folders, List<String> sizes, SortedMap<String, String> choices) {
    return pipeline().grade(folders, sizes, choices);
  }

  private Pipeline pipeline() {
    int threads = Math.max(1, Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors()));
    return new Pipeline(new RealStages(templates, templateFolder, memory), threads, stage -> {});
  }

  private static Result only(List<Outcome> outcomes) throws IOException {
    Outcome outcome = outcomes.get(0);
    if (outcome.failure().isPresent()) {
      Throwable failure = outcome.failure().get();
      if (failure instanceof IOException io) {
        throw io;
      }
      if (failure instanceof RuntimeException unexpected) {
        throw unexpected;
      }
      throw (Error) failure;
    }
    return outcome.result();
  }
}
