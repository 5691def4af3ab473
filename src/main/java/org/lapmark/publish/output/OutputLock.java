package org.lapmark.publish.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Keeps a second publisher out of an output folder while the first works in it. */
public final class OutputLock implements AutoCloseable {
  /** The lock's file; it stays, since whoever deletes it may delete another's lock. */
  static final String NAME = ".lapmark-lock";

  private final Path folder;
  private final FileChannel channel;

  private OutputLock(Path folder, FileChannel channel) {
    this.folder = folder;
    this.channel = channel;
  }

  /**
   * Makes the folder if need be and takes its lock.
   *
   * @throws IOException when the folder can't be made, or another publisher works in it
   */
  public static OutputLock take(Path output) throws IOException {
    Path folder = output.toAbsolutePath().normalize();
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw new FileSystemException(output.toString(), null, "it is a file, not a folder");
    }
    Files.createDirectories(folder);
    Path file = folder.resolve(NAME);
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    FileLock lock = null;
    try {
      lock = channel.tryLock();
    } catch (OverlappingFileLockException e) {
      // Held in this very process: the same as held by another.
    } finally {
      if (lock == null) {
        channel.close();
      }
    }
    if (lock == null) {
      throw new FileSystemException(
          output.toString(),
          null,
          "another Lapmark is publishing there; try again when it is done");
    }
    return new OutputLock(folder, channel);
  }

  /** The output folder, absolute. */
  public Path folder() {
    return folder;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
