package org.lapmark.source.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.key.Reading;

/** The drawings in {@code panels/}, each read once. */
public final class Drawings {
  private static final String FOLDER = "panels/";

  private final Reading reading;
  private final FolderFiles files;
  private final Map<String, PanelDrawing> read = new LinkedHashMap<>();
  private final Set<String> used = new TreeSet<>();

  public Drawings(Reading reading, FolderFiles files) {
    this.reading = reading;
    this.files = files;
  }

  /** A drawing by its name in {@code panels/}, or null if it can't be read, which is reported. */
  public PanelDrawing named(SourceText name) {
    String path = files.resolve(FOLDER, name, ".svg", reading.hints());
    if (path == null) {
      // A drawing whose name is mistyped isn't unused.
      List<String> drawn =
          files.alike(FOLDER, ".svg").stream()
              .map(file -> file.substring(FOLDER.length()))
              .toList();
      NearestWord.of(name.text(), drawn).ifPresent(near -> used.add(FOLDER + near));
      return null;
    }
    used.add(path);
    if (!read.containsKey(path)) {
      SourceFile file = files.text(path);
      if (file != null) {
        reading.switches().askWords(file.content());
      }
      read.put(path, file == null ? null : SvgReader.read(file, reading));
    }
    return read.get(path);
  }

  /** Reports the drawings that no panel has named. */
  public void reportUnused() {
    List<String> unused = new ArrayList<>(files.alike(FOLDER, ".svg"));
    unused.removeAll(used);
    for (String path : unused) {
      reading
          .findings()
          .add(
              DrawingCode.DRAWING_UNUSED,
              Position.ofFile(files.display(path)),
              "name",
              path.substring(FOLDER.length()));
    }
  }
}
