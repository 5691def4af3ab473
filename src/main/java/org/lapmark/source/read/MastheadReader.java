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
import org.lapmark.measure.print.PrintForm;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.JoinStyle;
import org.lapmark.source.Masthead;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads who publishes what, in which words and units. */
final class MastheadReader {
  /** When patterns are published. */
  private static final int FIRST_YEAR = 1900;

  private static final int LAST_YEAR = 2200;

  private static final Pattern BRACES = Pattern.compile("\\{[^{}]*\\}");
  private static final Pattern STEP = Pattern.compile("([0-9]{1,3}(?:\\.[0-9]{1,3})?) ?(mm|cm)");
  private static final List<String> INCH = List.of("1/2", "1/4", "1/8", "1/16", "1/32");

  /** A text that is printed as it stands, with or without braces. */
  private static final Form<SourceText> PLAIN =
      new Form<>(Forms.LABEL.shown(), Forms.LABEL.schema(), List.of(), MastheadReader::plain);

  private static final Key<SourceText> TITLE = Key.required("title", PLAIN);
  private static final Key<SourceText> STUDIO = Key.required("studio", PLAIN);
  private static final Key<Locale> LANGUAGE =
      Key.required(
          "language",
          Forms.special("language tag", Forms.schema("type", "string"), MastheadReader::language));
  private static final Key<SourceText> DESIGNER = Key.of("designer", PLAIN);
  private static final Key<TemplateText> SUMMARY = Key.of("summary", Forms.TEMPLATE);
  private static final Key<TemplateText> COPYRIGHT = Key.of("copyright", Forms.TEMPLATE);
  private static final Key<PrintForm.Units> UNITS =
      Key.of("units", Forms.words(SourceCode.UNITS_WRONG, units())).unless("metric first");
  private static final Key<JoinStyle> JOINS =
      Key.of("joins", Forms.words(SourceCode.JOINS_WRONG, joins())).unless("overlap");

  private static final Key<Double> METRIC =
      Key.of(
              "metric",
              Forms.special(
                  "step in mm or cm", Forms.schema("type", "string"), MastheadReader::metric))
          .unless("1 mm");
  private static final Key<Integer> INCHES =
      Key.of(
              "inch",
              Forms.special(
                  String.join(", ", INCH), Forms.schema("enum", INCH), MastheadReader::inch))
          .unless("1/8");
  private static final Table ROUNDING_TABLE = Table.of("rounding", METRIC, INCHES);
  private static final Key<Stated> ROUNDING = Key.of("rounding", Forms.map(ROUNDING_TABLE));

  private static final Key<SourceText> NAME = Key.required("name", PLAIN);
  private static final Key<LocalDate> DATE =
      Key.required(
          "date",
          Forms.special(
              "date",
              Forms.schema("type", "string", "pattern", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"),
              MastheadReader::date));
  private static final Key<TemplateText> NOTE = Key.of("note", Forms.TEMPLATE);
  private static final Table EDITION_TABLE = Table.of("edition", NAME, DATE, NOTE);
  private static final Key<Stated> EDITION = Key.required("edition", Forms.map(EDITION_TABLE));

  /** The keys of a masthead that have to be there. */
  static final List<Key<?>> NEEDED = List.of(TITLE, STUDIO, LANGUAGE, EDITION);

  /** Its other keys. */
  static final List<Key<?>> FURTHER = List.of(DESIGNER, SUMMARY, COPYRIGHT, UNITS, ROUNDING, JOINS);

  private static Map<String, PrintForm.Units> units() {
    Map<String, PrintForm.Units> units = new LinkedHashMap<>();
    units.put("metric", PrintForm.Units.METRIC);
    units.put("inches", PrintForm.Units.INCHES);
    units.put("metric first", PrintForm.Units.METRIC_FIRST);
    units.put("inches first", PrintForm.Units.INCHES_FIRST);
    return Collections.unmodifiableMap(units);
  }

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

  Masthead read(Stated in) {
    Stated edition = in.or(EDITION, Stated.nothing(reading, EDITION_TABLE));
    SourceText unknown = SourceText.verbatim(file, 0, 0);
    return new Masthead(
        in.or(TITLE, unknown),
        in.or(STUDIO, unknown),
        in.get(DESIGNER),
        in.or(LANGUAGE, Locale.ENGLISH),
        in.get(SUMMARY),
        in.get(COPYRIGHT),
        form(in),
        edition.or(NAME, unknown),
        edition.or(DATE, LocalDate.EPOCH),
        edition.get(NOTE),
        in.or(JOINS, JoinStyle.OVERLAP),
        place(in, LANGUAGE),
        place(edition, DATE));
  }

  private Position place(Stated in, Key<?> key) {
    return in.has(key) ? in.position(key) : file.position(0, 0);
  }

  private PrintForm form(Stated in) {
    Stated rounding = in.or(ROUNDING, Stated.nothing(reading, ROUNDING_TABLE));
    return new PrintForm(
        in.or(UNITS, PrintForm.DEFAULT.units()),
        rounding.or(METRIC, PrintForm.DEFAULT.metricStep()),
        rounding.or(INCHES, PrintForm.DEFAULT.inchDenominator()));
  }

  private static SourceText plain(Reading reading, YamlNode node, String key) {
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

  private static Locale language(Reading reading, YamlNode node, String key) {
    SourceText text = reading.text(node, key);
    if (text == null) {
      return null;
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
    return null;
  }

  private static LocalDate date(Reading reading, YamlNode node, String key) {
    SourceText text = reading.text(node, key);
    if (text == null) {
      return null;
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
    return null;
  }

  private static Double metric(Reading reading, YamlNode node, String key) {
    SourceText step = reading.text(node, key);
    if (step == null) {
      return null;
    }
    Matcher matcher = STEP.matcher(step.text());
    double amount =
        matcher.matches()
            ? Double.parseDouble(matcher.group(1)) * (matcher.group(2).equals("cm") ? 10 : 1)
            : 0;
    return amount > 0 ? amount : rounding(reading, step, key);
  }

  private static Integer inch(Reading reading, YamlNode node, String key) {
    SourceText fraction = reading.text(node, key);
    if (fraction == null) {
      return null;
    }
    return INCH.contains(fraction.text())
        ? Integer.valueOf(fraction.text().substring(2))
        : rounding(reading, fraction, key);
  }

  /** Reports a step to which nothing can be rounded. */
  private static <T> T rounding(Reading reading, SourceText text, String kind) {
    reading
        .findings()
        .add(SourceCode.ROUNDING_WRONG, text.position(), "text", text.text(), "kind", kind);
    return null;
  }
}
