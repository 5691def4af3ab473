package org.lapmark.document.manual;

import com.ibm.icu.text.DateFormat;
import com.ibm.icu.util.TimeZone;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.Locale;

/** Dates in words. */
public final class DateWords {
  private DateWords() {}

  /**
   * A date as documents print it.
   *
   * @param date the date
   * @param language the document's language
   * @return the date in words
   */
  public static String inWords(LocalDate date, Locale language) {
    DateFormat format = DateFormat.getDateInstance(DateFormat.LONG, language);
    format.setTimeZone(TimeZone.GMT_ZONE);
    return format.format(Date.from(date.atStartOfDay(ZoneOffset.UTC).toInstant()));
  }
}
