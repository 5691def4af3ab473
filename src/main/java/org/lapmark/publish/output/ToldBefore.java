package org.lapmark.publish.output;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Position;

/**
 * What a run had to say beside its files, so that a run that makes nothing says it again.
 *
 * @param findings warnings and notes, in their order
 * @param omitted what was asked for and isn't made, as sentences without a full stop
 */
public record ToldBefore(List<Finding> findings, List<String> omitted) {
  /** Nothing. */
  public static final ToldBefore NOTHING = new ToldBefore(List.of(), List.of());

  private static final String FINDING = "finding";
  private static final String OMITTED = "omitted";

  /** Before the arguments: word, class and constant of the code, position. */
  private static final int FIXED = 8;

  /** Copies the lists. */
  public ToldBefore {
    findings = List.copyOf(findings);
    omitted = List.copyOf(omitted);
  }

  /** Whether it can be written: of a code or an argument of another kind nothing is known. */
  boolean isWritable() {
    return findings.stream()
        .allMatch(
            finding ->
                finding.code() instanceof Enum<?>
                    && finding.arguments().values().stream()
                        .allMatch(value -> Kind.of(value).isPresent()));
  }

  /** Lines of fields parted by tabs. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    findings.forEach(finding -> lines.add(line(finding)));
    omitted.forEach(what -> lines.add(OMITTED + '\t' + escaped(what)));
    return lines;
  }

  private static String line(Finding finding) {
    Enum<?> code = (Enum<?>) finding.code();
    Position position = finding.position();
    List<String> fields = new ArrayList<>();
    fields.add(FINDING);
    fields.add(code.getDeclaringClass().getName());
    fields.add(code.name());
    fields.add(escaped(position.file()));
    fields.add(Integer.toString(position.line()));
    fields.add(Integer.toString(position.column()));
    fields.add(Integer.toString(position.length()));
    fields.add(escaped(position.lineText()));
    finding
        .arguments()
        .forEach(
            (name, value) -> {
              fields.add(escaped(name));
              fields.add(Kind.of(value).orElseThrow().name());
              fields.add(escaped(value.toString()));
            });
    return String.join("\t", fields);
  }

  /**
   * The same with what a line says.
   *
   * @return nothing if the line makes no sense
   */
  Optional<ToldBefore> with(String line) {
    String[] fields = line.split("\t", -1);
    if (fields[0].equals(OMITTED) && fields.length == 2) {
      List<String> more = new ArrayList<>(omitted);
      more.add(plain(fields[1]));
      return Optional.of(new ToldBefore(findings, more));
    }
    if (!fields[0].equals(FINDING) || fields.length < FIXED || (fields.length - FIXED) % 3 != 0) {
      return Optional.empty();
    }
    try {
      List<Finding> more = new ArrayList<>(findings);
      more.add(finding(fields));
      return Optional.of(new ToldBefore(more, omitted));
    } catch (ReflectiveOperationException | IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  private static Finding finding(String[] fields) throws ReflectiveOperationException {
    Position position =
        new Position(
            plain(fields[3]),
            Integer.parseInt(fields[4]),
            Integer.parseInt(fields[5]),
            Integer.parseInt(fields[6]),
            plain(fields[7]));
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = FIXED; i < fields.length; i += 3) {
      arguments.put(plain(fields[i]), Kind.valueOf(fields[i + 1]).read(plain(fields[i + 2])));
    }
    return new Finding(code(fields[1], fields[2]), position, arguments);
  }

  /** A constant of one of the program's own codes; no other class is so much as begun. */
  private static FindingCode code(String owner, String constant)
      throws ReflectiveOperationException {
    Class<?> type = Class.forName(owner, false, ToldBefore.class.getClassLoader());
    if (!type.isEnum() || !FindingCode.class.isAssignableFrom(type)) {
      throw new IllegalArgumentException(owner);
    }
    for (Object code : type.getEnumConstants()) {
      if (((Enum<?>) code).name().equals(constant)) {
        return (FindingCode) code;
      }
    }
    throw new IllegalArgumentException(constant);
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\\\")
        .replace("\t", "\\t")
        .replace("\n", "\\n")
        .replace("\r", "\\r");
  }

  private static String plain(String text) {
    StringBuilder plain = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c != '\\' || i + 1 == text.length()) {
        plain.append(c);
        continue;
      }
      i++;
      char next = text.charAt(i);
      plain.append(next == 't' ? '\t' : next == 'n' ? '\n' : next == 'r' ? '\r' : next);
    }
    return plain.toString();
  }

  /** The kinds of values that findings name. */
  private enum Kind {
    TEXT(String.class) {
      @Override
      Object read(String text) {
        return text;
      }
    },
    WHOLE(Integer.class) {
      @Override
      Object read(String text) {
        return Integer.valueOf(text);
      }
    },
    LONG(Long.class) {
      @Override
      Object read(String text) {
        return Long.valueOf(text);
      }
    },
    REAL(Double.class) {
      @Override
      Object read(String text) {
        return Double.valueOf(text);
      }
    };

    private final Class<?> type;

    Kind(Class<?> type) {
      this.type = type;
    }

    abstract Object read(String text);

    static Optional<Kind> of(Object value) {
      for (Kind kind : values()) {
        if (kind.type.isInstance(value)) {
          return Optional.of(kind);
        }
      }
      return Optional.empty();
    }
  }
}
