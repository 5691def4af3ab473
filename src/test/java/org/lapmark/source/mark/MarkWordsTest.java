package org.lapmark.source.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.lapmark.panel.PanelCode;

/** Names the words and looks that a kind of mark lacks. */
class MarkWordsTest {
  private final List<String> lacking = new ArrayList<>();

  @Test
  void everyKindHasItsWordsAndLooks() throws IOException {
    Properties paper = read("words/paper/en.properties");
    Properties words = read("words/en.properties");
    Properties styles = read("drawing/styles.properties");
    String statement = finding(MarkCode.class, "mark-statement.message");
    String alone = finding(PanelCode.class, "fold-mark-alone.message");
    for (MarkKind kind : MarkKinds.ALL) {
      String word = kind.word();
      key(paper, "mark.count." + word);
      choice(statement, word, "mark-statement");
      choice(alone, word, "fold-mark-alone");
      if (kind instanceof LineKind) {
        key(paper, "mark." + word);
        key(styles, word + "-line.stroke");
        for (String key : List.of("ruled.parallel", "ruled.through")) {
          choice(words.getProperty(key), word.toUpperCase(Locale.ROOT), key);
        }
      }
    }
    assertEquals(List.of(), lacking);
  }

  private void key(Properties words, String key) {
    if (!words.containsKey(key)) {
      lacking.add(key);
    }
  }

  private void choice(String message, String word, String key) {
    if (!Pattern.compile("\\b" + word + " ?\\{").matcher(message).find()) {
      lacking.add(key + " for " + word);
    }
  }

  private static Properties read(String file) throws IOException {
    Properties words = new Properties();
    try (Reader reader = Files.newBufferedReader(Path.of("templates", file))) {
      words.load(reader);
    }
    return words;
  }

  private static String finding(Class<?> owner, String key) throws IOException {
    Properties words = new Properties();
    try (InputStream in = owner.getResourceAsStream("findings.properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    }
    return words.getProperty(key);
  }
}
