package org.lapmark.source.outside;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.folder.FolderFiles;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** Reads the pictures of the folder {@code art} that something shows, and what is said of films. */
public final class OutsideReader {
  /** Where pictures lie. */
  public static final String FOLDER = "art/";

  /** The most bytes of a photograph. */
  public static final int MOST_BYTES = 24 * 1024 * 1024;

  /** The most bytes of all photographs together. */
  private static final long MOST_TOGETHER = 160L * 1024 * 1024;

  /** A photograph of fewer across and down comes out smaller than 25 mm. */
  private static final int FEWEST_PIXELS = 150;

  private static final String SVG = ".svg";
  private static final Pattern PHOTO = Pattern.compile("(?i).*\\.(jpe?g|png)");

  /** What people call pictures; other files may lie beside them. */
  private static final Pattern PICTURE =
      Pattern.compile("(?i).*\\.(jpe?g|png|svg|gif|webp|tiff?|hei[cf]|avif|bmp)");

  private static final Key<SourceText> ART = Key.required("art", Forms.TEXT);
  private static final Key<TemplateText> ALT = Key.required("alt", Forms.TEMPLATE);
  private static final Table COVER_TABLE = Table.of("cover", ART, ALT);

  /** The picture on the cover. */
  public static final Key<Stated> COVER = Key.of("cover", Forms.map(COVER_TABLE));

  private final Reading reading;
  private final FolderFiles files;
  private long total;

  /** A reader for one folder. */
  public OutsideReader(Reading reading, FolderFiles files) {
    this.reading = reading;
    this.files = files;
  }

  /**
   * Reads all that comes from outside.
   *
   * @param pattern the top of {@code pattern.yaml}
   * @param steps the ids of the steps in their order
   * @param texts the texts that may show pictures
   */
  public Outside read(Stated pattern, List<String> steps, List<SourceText> texts) {
    Outside.CoverSource cover = cover(pattern);
    Map<String, ArtSource> art = new LinkedHashMap<>();
    for (String path : files.all()) {
      if (!path.startsWith(FOLDER)) {
        continue;
      }
      boolean shown =
          cover != null && cover.path().equals(path)
              || texts.stream().anyMatch(text -> text.text().contains(path));
      if (shown) {
        art.put(path, art(path));
      } else if (PICTURE.matcher(path).matches()) {
        report(OutsideCode.ART_UNUSED, path);
        art.put(path, new ArtSource.Unshown());
      }
    }
    return new Outside(art, cover, FilmReader.read(pattern, steps, reading));
  }

  private Outside.CoverSource cover(Stated pattern) {
    Stated in = pattern.get(COVER);
    if (in == null || !in.isComplete() || !in.isSound(ART, ALT)) {
      return null;
    }
    if (in.get(ALT).source().text().isBlank()) {
      reading.findings().add(KeyCode.VALUE_EMPTY, in.position(ALT), "key", ALT.name());
      return null;
    }
    SourceText name = in.get(ART);
    SourceText inFolder =
        name.text().startsWith(FOLDER) ? name.part(FOLDER.length(), name.text().length()) : name;
    String path = files.resolve(FOLDER, inFolder, "", reading.hints());
    return path == null ? null : new Outside.CoverSource(path, in.get(ALT), name);
  }

  private ArtSource art(String path) {
    if (path.regionMatches(true, path.length() - SVG.length(), SVG, 0, SVG.length())) {
      SourceFile file = files.text(path);
      if (file == null) {
        return new ArtSource.Broken();
      }
      try {
        return new LineArtReader(reading).read(file);
      } catch (FindingException e) {
        reading.findings().add(e.finding());
        return new ArtSource.Broken();
      }
    }
    if (!PHOTO.matcher(path).matches()) {
      report(OutsideCode.ART_KIND, path);
      return new ArtSource.Broken();
    }
    byte[] bytes = files.bytes(path, MOST_BYTES);
    if (bytes == null) {
      return new ArtSource.Broken();
    }
    total += bytes.length;
    if (bytes.length > MOST_BYTES) {
      report(OutsideCode.ART_TOO_LARGE, path, "limit", megabytes(MOST_BYTES));
    } else if (total > MOST_TOGETHER) {
      report(OutsideCode.ART_TOO_MUCH, path, "limit", megabytes(MOST_TOGETHER));
    } else {
      return photo(path, new Bytes(bytes));
    }
    return new ArtSource.Broken();
  }

  private static String megabytes(long bytes) {
    return Long.toString(bytes / (1024 * 1024));
  }

  private ArtSource photo(String path, Bytes bytes) {
    PhotoHeader header;
    try {
      header = PhotoHeader.of(bytes);
    } catch (PhotoHeader.Refused e) {
      report(e.code(), path, e.arguments());
      return new ArtSource.Broken();
    }
    if (path.toLowerCase(Locale.ROOT).endsWith(".png") != header.png()) {
      report(OutsideCode.ART_ENDING, path, "kind", header.png() ? "PNG" : "JPEG");
    }
    if ((long) header.width() * header.height() < FEWEST_PIXELS * FEWEST_PIXELS) {
      report(
          OutsideCode.ART_COARSE,
          path,
          "width",
          Integer.toString(header.width()),
          "height",
          Integer.toString(header.height()));
    }
    return new ArtSource.Photo(bytes, header.width(), header.height(), header.turn(), place(path));
  }

  private Position place(String path) {
    return Position.ofFile(files.display(path));
  }

  private void report(OutsideCode code, String path, Object... further) {
    Object[] arguments = new Object[further.length + 2];
    arguments[0] = "name";
    arguments[1] = path;
    System.arraycopy(further, 0, arguments, 2, further.length);
    reading.findings().add(code, place(path), arguments);
  }
}
