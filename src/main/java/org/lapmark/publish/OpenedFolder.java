package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.publish.request.Presentation;
import org.lapmark.publish.request.RefusedException;
import org.lapmark.source.PatternSource;

/**
 * A folder as read, and everything found in it so far.
 *
 * @param source the pattern; null when nothing could be read
 * @param failure why it couldn't be read for reasons outside its content
 */
record OpenedFolder(
    Path folder, PatternSource source, Findings findings, Optional<Throwable> failure) {
  static OpenedFolder open(Path folder, Stages stages) {
    Findings findings = new Findings();
    PatternSource source = null;
    Throwable failure = null;
    try {
      if (!Files.isDirectory(folder)) {
        throw new NotDirectoryException(folder.toString());
      }
      source = stages.read(folder, findings);
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (IOException | RuntimeException | StackOverflowError e) {
      failure = e;
    }
    return new OpenedFolder(folder, source, findings, Optional.ofNullable(failure));
  }

  /** In the language and units wanted; a pattern without text in the language is refused. */
  OpenedFolder presented(Presentation presentation) {
    return source == null
        ? this
        : new OpenedFolder(folder, presentation.of(source), findings, failure);
  }

  /** The folder's name. */
  String name() {
    return folder.getFileName().toString();
  }

  /** Whether the table of sizes could be read; if not, that has been found. */
  boolean hasSizes() {
    return source != null && source.sizes() != null;
  }

  /** Works on the folder if it could be read, and tells what came of it. */
  Outcome attempt(TemplateTrial trial, Listener listener, Callable<List<Path>> work) {
    List<Path> written = List.of();
    Throwable failed = failure.orElse(null);
    if (failed == null && source != null) {
      try {
        written = work.call();
      } catch (FindingException e) {
        findings.add(e.finding());
      } catch (RefusedException e) {
        throw e;
      } catch (Crew.Failure e) {
        failed = e.getCause();
      } catch (Exception | StackOverflowError | OutOfMemoryError e) {
        failed = e;
      }
    }
    if (trial.takes(failed)) {
      failed = null;
    }
    Outcome outcome = new Outcome(folder, new Result(written, told()), Optional.ofNullable(failed));
    listener.ended(outcome);
    return outcome;
  }

  /** What is wrong in several sizes or places in the same way is told once. */
  Findings told() {
    return hasSizes()
        ? findings.joined("size", source.sizes().sizes()).causes()
        : findings.causes();
  }
}
