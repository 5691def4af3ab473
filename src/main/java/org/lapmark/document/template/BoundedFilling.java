package org.lapmark.document.template;

import freemarker.core.Environment;
import freemarker.core._CoreAPI;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Position;

/**
 * Fills one template that may do anything a template can, and ends it when it has done more than
 * any document needs. The engine asks its thread at each turn of a loop and at each call whether it
 * has been interrupted; the thread counts how often, so that the same template ends at the same
 * place every time. What asks nothing, such as a regular expression, is bounded by time.
 */
final class BoundedFilling {
  private static final int MOST_STEPS = 5_000_000;
  private static final int MOST_CHARACTERS = 1 << 25;
  private static final int MOST_FRAMES = 5_000;
  private static final int STEPS_BETWEEN_FRAMES = 64;
  private static final long STACK_BYTES = 32L << 20;
  private static final long MOST_SECONDS = 60;

  private final Templates templates;
  private final String path;

  BoundedFilling(Templates templates, String path) {
    this.templates = templates;
    this.path = path;
  }

  /** Writes a filled template. */
  interface Filling {
    void to(Writer text) throws TemplateException, IOException;
  }

  /** Ends a template. */
  private static final class Excess extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Finding finding;

    Excess(Finding finding) {
      super(null, null, false, false);
      this.finding = finding;
    }
  }

  /** Text that doesn't grow beyond all bounds. */
  private final class Bounded extends Writer {
    private final StringBuilder text = new StringBuilder();

    @Override
    public void write(char[] characters, int from, int length) {
      if (text.length() + length > MOST_CHARACTERS) {
        throw new Excess(endless("output"));
      }
      text.append(characters, from, length);
    }

    @Override
    public void flush() {}

    @Override
    public void close() {}
  }

  /** The thread that a template is filled in. */
  private final class Filler extends Thread {
    private final Filling filling;
    private final Bounded text = new Bounded();
    private Throwable failure;
    private int steps;

    Filler(Filling filling) {
      super(null, null, "template", STACK_BYTES);
      this.filling = filling;
      setDaemon(true);
    }

    @Override
    public boolean isInterrupted() {
      steps++;
      if (steps > MOST_STEPS) {
        throw new Excess(endless("steps"));
      }
      if (steps % STEPS_BETWEEN_FRAMES == 0
          && StackWalker.getInstance()
              .walk(frames -> frames.skip(MOST_FRAMES).findFirst())
              .isPresent()) {
        throw new Excess(endless("depth"));
      }
      return false;
    }

    @Override
    public void run() {
      try {
        filling.to(text);
      } catch (TemplateException | IOException | RuntimeException | StackOverflowError e) {
        failure = e;
      } catch (OutOfMemoryError e) {
        failure = e;
      }
    }
  }

  /**
   * Fills it.
   *
   * @return the text
   * @throws TemplateFault when it fails or has no end
   */
  String run(Filling filling) {
    Filler filler = new Filler(filling);
    filler.start();
    try {
      filler.join(TimeUnit.SECONDS.toMillis(MOST_SECONDS));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted", e);
    }
    if (filler.isAlive()) {
      throw new TemplateFault(endless("time"));
    }
    if (filler.failure != null) {
      throw new TemplateFault(finding(filler.failure));
    }
    return filler.text.text.toString();
  }

  private Finding finding(Throwable failure) {
    Throwable cause = failure;
    while (cause != null) {
      if (cause instanceof Excess excess) {
        return excess.finding;
      }
      cause = cause.getCause();
    }
    if (failure instanceof StackOverflowError) {
      return Finding.of(
          TemplateCode.TEMPLATE_ENDLESS, Includes.cycle(templates, path), "kind", "depth");
    }
    return failure instanceof OutOfMemoryError
        ? endless("memory")
        : TemplateFaults.filling(failure, path, templates);
  }

  /** Where the template is now, if it is being filled by this thread. */
  private Finding endless(String kind) {
    Position position = Position.ofFile(templates.display(path));
    Environment environment = Environment.getCurrentEnvironment();
    var stack = environment == null ? null : _CoreAPI.getInstructionStackSnapshot(environment);
    if (stack != null && stack.length > 0) {
      int at = kind.equals("depth") ? mostFrequent(stack) : 0;
      var now = stack[at];
      String name = now.getTemplate().getName();
      int column = now.getBeginColumn();
      position = templates.position(name, now.getBeginLine(), column, 1);
      // Of a tag with much in it, its beginning is meant.
      String line = position.lineText();
      int start = Math.max(0, column - 1);
      int end =
          line.startsWith("<", start)
              ? line.indexOf('>', start) + 1
              : now.getEndLine() == now.getBeginLine() ? now.getEndColumn() : line.length();
      position = templates.position(name, now.getBeginLine(), column, end - column + 1);
    }
    return Finding.of(TemplateCode.TEMPLATE_ENDLESS, position, "kind", kind);
  }

  /** What calls itself stands many times in the stack; calls and inclusions tell most. */
  private static int mostFrequent(Object[] stack) {
    Map<Object, Boolean> calls = new LinkedHashMap<>();
    Map<Object, Integer> times = new LinkedHashMap<>();
    int best = 0;
    int most = 1;
    for (int i = 0; i < stack.length; i++) {
      int now = times.merge(stack[i], 1, Integer::sum);
      boolean call = calls.computeIfAbsent(stack[i], BoundedFilling::isCall);
      if (now > most || now > 1 && now == most && call && !calls.get(stack[best])) {
        best = i;
        most = now;
      }
    }
    return best;
  }

  private static boolean isCall(Object element) {
    String text = element.toString();
    return text.startsWith("<@") || text.startsWith("<#include");
  }
}
