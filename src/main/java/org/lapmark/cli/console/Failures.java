package org.lapmark.cli.console;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import org.lapmark.publish.request.RefusedException;

/** One line for whatever went wrong outside a folder's content. */
public final class Failures {
  private static final int MOST_FRAMES = 3;

  private Failures() {}

  /** What happened, in one sentence without a full stop. */
  public static String describe(Throwable failure, Console console) {
    if (failure instanceof RefusedException) {
      return failure.getMessage();
    }
    if (failure instanceof UncheckedIOException || failure instanceof DirectoryIteratorException) {
      return describe(failure.getCause(), console);
    }
    if (failure instanceof FileSystemException problem) {
      String reason;
      if (problem instanceof NoSuchFileException) {
        reason = "there is no such file or folder";
      } else if (problem instanceof AccessDeniedException) {
        reason = "access is denied";
      } else if (problem instanceof NotDirectoryException) {
        reason =
            Files.exists(Path.of(problem.getFile()))
                ? "it is a file, not a folder"
                : "there is no such folder";
      } else if (problem instanceof FileAlreadyExistsException) {
        reason = "it is there already";
      } else if (problem instanceof DirectoryNotEmptyException) {
        reason = "the folder isn't empty";
      } else {
        reason = problem.getReason() == null ? "it can't be used" : problem.getReason();
      }
      return problem.getFile() == null
          ? reason
          : console.shown(Path.of(problem.getFile())) + ": " + reason;
    }
    if (failure instanceof InvalidPathException problem) {
      return "this system can't name a file ‘"
          + problem.getInput()
          + "’"
          + (NameCoding.isLimited()
              ? "; set a locale with UTF-8, such as LC_ALL=C.UTF-8, or use plain letters"
              : "");
    }
    if (failure instanceof InterruptedIOException) {
      return "interrupted";
    }
    if (failure instanceof CharacterCodingException) {
      return "a file isn't UTF-8";
    }
    if (failure instanceof IOException) {
      return failure.getMessage() == null ? "reading or writing failed" : failure.getMessage();
    }
    if (failure instanceof OutOfMemoryError) {
      return "the memory given to Java is used up; give it more with -Xmx";
    }
    return "the program failed, please report this: " + failure + where(failure);
  }

  /** The places in the program's own classes nearest to the fault. */
  private static String where(Throwable failure) {
    StringBuilder where = new StringBuilder();
    int frames = 0;
    for (StackTraceElement frame : failure.getStackTrace()) {
      if (frame.getClassName().startsWith("org.lapmark.") && frames++ < MOST_FRAMES) {
        where
            .append(frames == 1 ? " at " : " < ")
            .append(frame.getClassName().substring("org.lapmark.".length()))
            .append('.')
            .append(frame.getMethodName())
            .append(':')
            .append(frame.getLineNumber());
      }
    }
    return where.toString();
  }
}
