package org.lapmark.publish.output;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.text.Normalizer2;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.lapmark.source.PatternSource;

/**
 * The names of the files of one pattern: {@code <pattern>-<edition>-<size>-<paper>.pdf} and {@code
 * <pattern>-<edition>.html}, with {@code all-sizes} for the size of a document of all; what is
 * chosen other than by default follows the size. Letters of every script stay; whatever a file
 * system or a shell might not bear becomes a hyphen. Two sizes never share a name, even where upper
 * and lower case don't count, and a size has the same name whichever sizes are being published.
 */
public final class FileNames {
  private static final int MOST_BYTES_OF_PATTERN = 100;
  private static final int MOST_BYTES_OF_PART = 40;
  private static final int MOST_BYTES_OF_CHOICES = 60;

  /** Ends the name of a folder of cut files. */
  public static final String CUT_FOLDER = "-cut";

  /** Stands in the place of a size; no size is called so. */
  private static final String ALL_SIZES = "all-sizes";

  /** Begins the names of several sizes, and of no single one. */
  private static final String SIZES = "sizes-";

  private final String stem;
  private final String edition;
  private final Map<String, String> sizes;

  private FileNames(String stem, String edition, Map<String, String> sizes) {
    this.stem = stem;
    this.edition = edition;
    this.sizes = Collections.unmodifiableMap(sizes);
  }

  /**
   * The names of a pattern's files.
   *
   * @param pattern the pattern folder's name, with what tells its presentation from the pattern's
   *     own
   * @param source the pattern as read
   */
  public static FileNames of(String pattern, PatternSource source) {
    String edition = source.masthead().edition() == null ? "" : source.masthead().edition().text();
    return of(pattern, edition, source.sizes().sizes());
  }

  public static FileNames of(String pattern, String edition, List<String> sizes) {
    List<String> stem = new ArrayList<>();
    String first = part(pattern, MOST_BYTES_OF_PATTERN);
    stem.add(isReserved(first) ? "_" + first : first);
    if (!edition.isEmpty()) {
      stem.add(part(edition, MOST_BYTES_OF_PART));
    }
    Map<String, String> parts = new LinkedHashMap<>();
    Set<String> taken = new LinkedHashSet<>();
    taken.add(folded(ALL_SIZES));
    for (String size : sizes) {
      String plain = part(size, MOST_BYTES_OF_PART);
      if (folded(plain).startsWith(SIZES)) {
        plain = "size-" + plain;
      }
      String free = plain;
      for (int i = 2; !taken.add(folded(free)); i++) {
        free = plain + "-" + i;
      }
      parts.put(size, free);
    }
    return new FileNames(String.join("-", stem), edition, parts);
  }

  /**
   * Whether a file is of this edition. Of one written when no edition was noted down, its name
   * tells.
   */
  public boolean isOfThisEdition(Manifest.Entry entry) {
    return entry.edition().isEmpty()
        ? entry.name().startsWith(stem + "-") || entry.name().startsWith(stem + ".")
        : entry.edition().equals(edition);
  }

  /** The edition's name; empty if it has none. */
  public String edition() {
    return edition;
  }

  /**
   * The name of a file.
   *
   * @param purpose what it is for
   * @param ending what follows, with what tells it from others for the same, and what is in it
   */
  public String of(Purpose purpose, String ending) {
    return stem
        + "-"
        + purpose.size().map(sizes::get).orElseGet(() -> ofSizes(purpose.sizes()))
        + chosen(purpose.choices())
        + purpose.paper().map(paper -> "-" + paper.id()).orElse("")
        + ending;
  }

  /** The name of the one file of a kind that the pattern has. */
  public String alone(String ending) {
    return stem + ending;
  }

  /**
   * The name of one of several files for one size, in a folder of its own. The name says the size
   * again: machines show files without their folders.
   *
   * @param purpose what it is for, with its size
   * @param folder how the folder's name ends
   * @param number what tells it from the others
   * @param words what people know it by
   * @param ending what is in it
   */
  public String inFolder(Purpose purpose, String folder, int number, String words, String ending) {
    return String.format(
        Locale.ROOT,
        "%s/%02d-%s-%s%s",
        of(purpose, folder),
        number,
        part(words, MOST_BYTES_OF_PART),
        sizes.get(purpose.size().orElseThrow()),
        ending);
  }

  /**
   * Choices as a manifest and a file name know them: {@code piping-no-closure-flap}. Neither names
   * of options nor of choices have a hyphen.
   */
  public static String choices(Map<String, String> unusual) {
    return unusual.entrySet().stream()
        .map(one -> one.getKey() + "-" + one.getValue())
        .collect(Collectors.joining("-"));
  }

  /** Two hyphens, which no size has, keep a size and its choices apart from any other size. */
  private static String chosen(String choices) {
    return choices.isEmpty() ? "" : "--" + bounded(choices);
  }

  /** A long list is cut short and told from others by its hash. */
  private static String bounded(String list) {
    if (list.length() <= MOST_BYTES_OF_CHOICES) {
      return list;
    }
    String hash = Manifest.hash(list.getBytes(StandardCharsets.UTF_8)).substring(0, 8);
    return part(list, MOST_BYTES_OF_CHOICES - 9) + "-" + hash;
  }

  private String ofSizes(List<String> some) {
    return some.isEmpty()
        ? ALL_SIZES
        : SIZES + bounded(some.stream().map(sizes::get).collect(Collectors.joining("-")));
  }

  private static String folded(String name) {
    return Normalizer2.getNFCInstance().normalize(UCharacter.foldCase(name, true));
  }

  private static String part(String text, int mostBytes) {
    StringBuilder part = new StringBuilder();
    int bytes = 0;
    String composed = Normalizer2.getNFCInstance().normalize(text);
    for (int i = 0; i < composed.length(); ) {
      int c = composed.codePointAt(i);
      i += Character.charCount(c);
      boolean kept = Character.isLetterOrDigit(c) || isMarkOrNumber(c) || "._+".indexOf(c) >= 0;
      String piece = kept ? Character.toString(c) : "-";
      if (!kept && (part.length() == 0 || part.charAt(part.length() - 1) == '-')) {
        continue;
      }
      if (part.length() == 0 && c == '.') {
        continue;
      }
      bytes += piece.getBytes(StandardCharsets.UTF_8).length;
      if (bytes > mostBytes) {
        break;
      }
      part.append(piece);
    }
    while (part.length() > 0 && "-.".indexOf(part.charAt(part.length() - 1)) >= 0) {
      part.setLength(part.length() - 1);
    }
    return part.length() == 0 ? "_" : part.toString();
  }

  private static boolean isMarkOrNumber(int c) {
    return switch (Character.getType(c)) {
      case Character.NON_SPACING_MARK,
          Character.COMBINING_SPACING_MARK,
          Character.LETTER_NUMBER,
          Character.OTHER_NUMBER ->
          true;
      default -> false;
    };
  }

  /** Whether Windows takes a name that begins so for a device. */
  private static boolean isReserved(String name) {
    int dot = name.indexOf('.');
    String base = (dot < 0 ? "" : name.substring(0, dot)).toLowerCase(Locale.ROOT);
    return base.matches("con|prn|aux|nul|com[0-9¹²³]|lpt[0-9¹²³]");
  }
}
