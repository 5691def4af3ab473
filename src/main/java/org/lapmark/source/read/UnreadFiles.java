package org.lapmark.source.read;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.lapmark.finding.Position;
import org.lapmark.source.SourceCode;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.key.Reading;

/**
 * Reports what was evidently meant to be read and isn't: a text under another ending or one folder
 * too deep, a folder whose name is mistyped. Makers would miss it, and nobody would know. Other
 * files, such as photographs and what editors leave behind, may stand where they like.
 */
final class UnreadFiles {
  private static final String TRANSLATIONS = "translations";
  private static final List<String> OF_TEXTS = List.of("steps", "notes");
  private static final List<String> FOLDERS = List.of("panels", "steps", "notes", TRANSLATIONS);

  /** What people write texts in. */
  private static final Pattern WRITTEN =
      Pattern.compile("(?i).*\\.(md|markdown|mdown|mkd|txt|text|rtf|odt|docx?|html?)");

  private static final Pattern LISTED = Pattern.compile("(?i).*\\.(ya?ml|csv|json)");

  private final Reading reading;
  private final FolderFiles files;
  private final List<String> notes;
  private final Set<String> told = new TreeSet<>();

  /**
   * Prepares the search.
   *
   * @param notes the notes that are read
   */
  UnreadFiles(Reading reading, FolderFiles files, List<String> notes) {
    this.reading = reading;
    this.files = files;
    this.notes = notes;
  }

  void report() {
    for (String path : files.all()) {
      List<String> parts = List.of(path.split("/"));
      if (parts.size() == 1) {
        if (path.endsWith(".md") && notes.contains(path.substring(0, path.length() - 3))) {
          file(path, "note", "notes", "notes/" + path);
        }
      } else if (parts.get(0).equals(TRANSLATIONS)) {
        translation(path, parts);
      } else if (isKnown(parts, 0, FOLDERS) && OF_TEXTS.contains(parts.get(0))) {
        text(path, parts, 0);
      }
    }
  }

  private void translation(String path, List<String> parts) {
    String last = parts.get(parts.size() - 1);
    boolean text = WRITTEN.matcher(last).matches() || LISTED.matcher(last).matches();
    if (parts.size() > 3 && isKnown(parts, 2, OF_TEXTS)) {
      text(path, parts, 2);
    } else if (parts.size() < 4 && text && !(parts.size() == 3 && last.equals("texts.yaml"))) {
      file(path, "translation", TRANSLATIONS, "");
    }
  }

  /** Whether a folder's name is one of some; one that is nearly so is reported. */
  private boolean isKnown(List<String> parts, int at, List<String> known) {
    String name = parts.get(at);
    if (known.contains(name)) {
      return true;
    }
    String nearest = reading.hints().nearest(name, known);
    String folder = String.join("/", parts.subList(0, at + 1));
    if (!nearest.isEmpty() && told.add(folder)) {
      reading
          .findings()
          .add(
              SourceCode.FOLDER_UNREAD,
              Position.ofFile(files.display(folder)),
              "name",
              name,
              "nearest",
              nearest);
    }
    return false;
  }

  /** A file of a folder that texts are read from. */
  private void text(String path, List<String> parts, int at) {
    String last = parts.get(parts.size() - 1);
    if (!WRITTEN.matcher(last).matches()) {
      return;
    }
    String folder = String.join("/", parts.subList(0, at + 1));
    if (parts.size() > at + 2) {
      file(path, "deeper", folder, folder + "/" + last);
    } else if (!last.endsWith(".md")) {
      file(path, "ending", folder, last.substring(0, last.lastIndexOf('.')) + ".md");
    }
  }

  private void file(String path, String reason, String folder, String meant) {
    reading
        .findings()
        .add(
            SourceCode.FILE_UNREAD,
            Position.ofFile(files.display(path)),
            "name",
            path.substring(path.lastIndexOf('/') + 1),
            "reason",
            reason,
            "folder",
            folder,
            "meant",
            meant);
  }
}
