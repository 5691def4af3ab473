package org.lapmark.source.folder;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can be wrong with the files of a pattern folder as files. */
public enum FolderCode implements FindingCode {
  /** A file is named that doesn't exist. */
  FILE_MISSING,
  /** Something that is there can't be read. */
  FILE_UNREADABLE,
  /** A file has more bytes than are read. */
  FILE_TOO_LARGE,
  /** All files together have more bytes than are read. */
  TOO_MUCH_TEXT,
  /** A line is longer than is read. */
  LINE_TOO_LONG,
  /** A text file isn't UTF-8. */
  NOT_UTF_8,
  /** A text has a character that nobody sees and that changes what is read or found. */
  CONTROL_CHARACTER,
  /** A file's name has a character that nobody sees. */
  FILE_NAME_CONTROL,
  /** Two files' names differ only in how accents are coded. */
  FILE_NAME_TWICE,
  /** A symbolic link stands in the folder. */
  SYMBOLIC_LINK,
  /** Something that is neither a plain file nor a folder stands in the folder. */
  SPECIAL_FILE,
  /** A reference leads out of its folder. */
  PATH_OUTSIDE,
  /** The folder holds more files than are read. */
  TOO_MANY_FILES,
  /** Folders stand too deep in each other. */
  FOLDER_TOO_DEEP;

  private final Severity severity;

  FolderCode() {
    this(Severity.ERROR);
  }

  FolderCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }
}
