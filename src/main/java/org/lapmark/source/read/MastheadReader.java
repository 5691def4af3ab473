package org.lapmark.source.read;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collections;
import java.util.IllformedLocaleException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.PrintForm;
import org.lapmark.source.JoinStyle;
import org.lapmark.source.Masthead;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Section;
import org.lapmark.source.yaml.YamlNode;

/** Reads who publishes what, in which words and units. */
final class MastheadReader {
  /** When patterns are published. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2200;

  private static final Map<String, PrintForm.Units> UNITS = units();
  private static final Pattern BRACES = Pattern.compile("\\{[^{}]*\\}");
  private static final Pattern METRIC = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,3})?) ?(mm|cm)");
  private static final List<String> INCH = List.of("1/2", "1/4", "1/8", "1/16", "1/32");

  private static Map<String, PrintForm.Units> units() {
    Map<String, PrintForm.Units> units = new LinkedHashMap<>();
    units.put("metric", PrintForm.Units.METRIC);
    units.put("inches", PrintForm.Units.INCHES);
    units.put("metric first", PrintForm.Units.METRIC_FIRST);
    units.put("inches first", PrintForm.Units.INCHES_FIRST);
    return Collections.unmodifiableMap(units);
  }

  private static final Map<String, JoinStyle> JOINS = joins();

  private static Map<String, JoinStyle> joins() {
    Map<String, JoinStyle> joins = new LinkedHashMap<>();
    joins.put("overlap", JoinStyle.OVERLAP);
    joins.put("butt", JoinStyle.BUTT);
    joins.put("no trim", JoinStyle.NO_TRIM);
    return Collections.unmodifiableMap(joins);
  }

  private final Reading reading;
  private final SourceFile file;

  MastheadReader(Reading reading, SourceFile file) {
    this.reading = reading;
    this.file = file;
  }

  Masthead read(Map<String, YamlNode> values) {
    Map<String, YamlNode> edition = Map.of();
    if (values.containsKey("edition")) {
      YamlNode node = values.get("edition");
      Map<String, YamlNode> read =
          reading.section(node, Section.EDITION, firstKey(node), "edition");
      edition = read == null ? edition : read;
    }
    return new Masthead(
        required(values, "title"),
        required(values, "studio"),
        values.containsKey("designer") ? plain(values.get("designer"), "designer") : null,
        language(values.get("language")),
        values.containsKey("summary") ? reading.template(values.get("summary"), "summary") : null,
        values.containsKey("copyright")
            ? reading.template(values.get("copyright"), "copyright")
            : null,
        form(values),
        required(edition, "name"),
        date(edition.get("date")),
        edition.containsKey("note") ? reading.template(edition.get("note"), "note") : null,
        joins(values),
        place(values.get("language")),
        place(edition.get("date")));
  }

  private Position place(YamlNode node) {
    return node == null ? file.position(0, 0) : node.position();
  }

  /** Where a map's missing key is reported: at its first key, or where it stands. */
  static Position firstKey(YamlNode node) {
    return node instanceof YamlNode.Entries map && !map.entries().isEmpty()
        ? map.entries().get(0).key().position()
        : node.position();
  }

  private SourceText required(Map<String, YamlNode> values, String key) {
    SourceText text = values.containsKey(key) ? plain(values.get(key), key) : null;
    return text == null ? SourceText.verbatim(file, 0, 0) : text;
  }

  /** A text that is printed as it stands, with or without braces. */
  private SourceText plain(YamlNode node, String key) {
    SourceText text = reading.label(node, key);
    Matcher braces = BRACES.matcher(text == null ? "" : text.text());
    if (braces.find()) {
      reading
          .findings()
          .add(
              SourceCode.LABEL_PLACEHOLDER,
              text.position(braces.start(), braces.end()),
              "key",
              key,
              "text",
              braces.group());
    }
    return text;
  }

  private Locale language(YamlNode node) {
    SourceText text = node == null ? null : reading.text(node, "language");
    if (text == null) {
      return Locale.ENGLISH;
    }
    try {
      Locale locale = new Locale.Builder().setLanguageTag(text.text()).build();
      boolean known =
          Arrays.asList(Locale.getISOLanguages()).contains(locale.getLanguage())
              && (locale.getCountry().isEmpty()
                  || Arrays.asList(Locale.getISOCountries()).contains(locale.getCountry()));
      if (known) {
        return locale;
      }
    } catch (IllformedLocaleException e) {
      // Reported below, like a tag of the right form that names no language.
    }
    reading.findings().add(SourceCode.LANGUAGE_WRONG, text.position(), "text", text.text());
    return Locale.ENGLISH;
  }

  private LocalDate date(YamlNode node) {
    SourceText text = node == null ? null : reading.text(node, "date");
    if (text == null) {
      return LocalDate.EPOCH;
    }
    try {
      if (text.text().matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
        LocalDate date = LocalDate.parse(text.text());
        if (date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR) {
          return date;
        }
      }
    } catch (DateTimeException e) {
      // Reported below, like a date of another age or written in another way.
    }
    reading.findings().add(SourceCode.DATE_WRONG, text.position(), "text", text.text());
    return LocalDate.EPOCH;
  }

  private JoinStyle joins(Map<String, YamlNode> values) {
    SourceText word =
        values.containsKey("joins") ? reading.text(values.get("joins"), "joins") : null;
    if (word == null) {
      return JoinStyle.OVERLAP;
    }
    if (!JOINS.containsKey(word.text())) {
      reading.unknown(SourceCode.JOINS_WRONG, word.position(), word.text(), JOINS.keySet());
    }
    return JOINS.getOrDefault(word.text(), JoinStyle.OVERLAP);
  }

  private PrintForm form(Map<String, YamlNode> values) {
    PrintForm.Units units = PrintForm.DEFAULT.units();
    double metric = PrintForm.DEFAULT.metricStep();
    int inch = PrintForm.DEFAULT.inchDenominator();
    SourceText word =
        values.containsKey("units") ? reading.text(values.get("units"), "units") : null;
    if (word != null) {
      if (UNITS.containsKey(word.text())) {
        units = UNITS.get(word.text());
      } else {
        reading.unknown(SourceCode.UNITS_WRONG, word.position(), word.text(), UNITS.keySet());
      }
    }
    YamlNode node = values.get("rounding");
    Map<String, YamlNode> rounding =
        node == null ? null : reading.section(node, Section.ROUNDING, firstKey(node), "rounding");
    if (rounding != null) {
      SourceText step =
          rounding.containsKey("metric") ? reading.text(rounding.get("metric"), "metric") : null;
      if (step != null) {
        Matcher matcher = METRIC.matcher(step.text());
        double amount =
            matcher.matches()
                ? Double.parseDouble(matcher.group(1)) * (matcher.group(2).equals("cm") ? 10 : 1)
                : 0;
        if (amount > 0) {
          metric = amount;
        } else {
          rounding(step, "metric");
        }
      }
      SourceText fraction =
          rounding.containsKey("inch") ? reading.text(rounding.get("inch"), "inch") : null;
      if (fraction != null) {
        if (INCH.contains(fraction.text())) {
          inch = Integer.parseInt(fraction.text().substring(2));
        } else {
          rounding(fraction, "inch");
        }
      }
    }
    return new PrintForm(units, metric, inch);
  }

  private void rounding(SourceText text, String kind) {
    reading
        .findings()
        .add(SourceCode.ROUNDING_WRONG, text.position(), "text", text.text(), "kind", kind);
  }
}
