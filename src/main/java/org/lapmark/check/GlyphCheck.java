package org.lapmark.check;

import java.util.List;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;

/** Every character of the author's texts can be printed. */
final class GlyphCheck {
  private GlyphCheck() {}

  static void run(PatternSource source, Reach reach, Findings findings) {
    for (SourceText text : PrintedTexts.all(source)) {
      List<String> missing = reach.missing().apply(text.text());
      if (!missing.isEmpty()) {
        int at = text.text().length();
        int length = 0;
        for (String character : missing) {
          int first = text.text().indexOf(character);
          if (first >= 0 && first < at) {
            at = first;
            length = character.length();
          }
        }
        findings.add(
            CheckCode.TEXT_GLYPH_MISSING,
            text.position(at, at + length),
            "count",
            missing.size(),
            "characters",
            String.join(" ", missing));
      }
    }
  }
}
