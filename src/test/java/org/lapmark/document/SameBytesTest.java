package org.lapmark.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.Locale;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.lapmark.print.paper.Paper;

/** The same pattern gives the same file, wherever and whenever it is written. */
@Isolated
class SameBytesTest {
  @Test
  void sameAgainAndElsewhere() {
    byte[] complete = Documents.complete(Paper.A4, Locale.UK);
    byte[] tiles = Documents.tiles(Paper.A4, Locale.UK);
    assertArrayEquals(complete, Documents.complete(Paper.A4, Locale.UK));
    Locale locale = Locale.getDefault();
    TimeZone zone = TimeZone.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
      assertArrayEquals(complete, Documents.complete(Paper.A4, Locale.UK));
      assertArrayEquals(tiles, Documents.tiles(Paper.A4, Locale.UK));
    } finally {
      Locale.setDefault(locale);
      TimeZone.setDefault(zone);
    }
    assertFalse(Arrays.equals(complete, Documents.complete(Paper.SHARED, Locale.UK)));
  }
}
