package org.lapmark.document.setting;

import com.ibm.icu.text.BreakIterator;
import com.openhtmltopdf.extend.FSTextBreaker;
import java.util.Locale;

/**
 * Where lines may break, by Unicode's rules as ICU has them: never inside a fraction such as 7/16,
 * and the same under every Java runtime.
 */
final class LineBreaks implements FSTextBreaker {
  private final BreakIterator breaks;

  LineBreaks(Locale language) {
    this.breaks = BreakIterator.getLineInstance(language);
  }

  @Override
  public int next() {
    return breaks.next();
  }

  @Override
  public void setText(String text) {
    breaks.setText(text);
  }
}
