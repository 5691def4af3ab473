package org.lapmark.document.template;

import com.ibm.icu.text.MessageFormat;
import com.ibm.icu.text.MessagePattern;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.lapmark.drawing.StyleSheet;
import org.lapmark.finding.Findings;
import org.lapmark.finding.InvisibleCharacters;
import org.lapmark.finding.Position;
import org.lapmark.source.folder.Limits;
import org.lapmark.source.folder.TextFile;
import org.lapmark.source.folder.UnseenCharacters;

/**
 * Reads templates that take the place of the program's own, before any document is made of them:
 * what is wrong in a file by itself is found there, whichever document would come upon it.
 */
public final class TemplateCheck {
  private static final List<String> TEXTS =
      List.of(".properties", ".ftl", ".ftlh", ".js", ".css", ".md", ".html", ".xml", ".svg");

  private final Templates templates;
  private final Templates own;
  private final Findings findings;

  private TemplateCheck(Templates templates, Templates own, Findings findings) {
    this.templates = templates;
    this.own = own;
    this.findings = findings;
  }

  /**
   * Checks templates.
   *
   * @param templates the templates
   * @param own the program's own
   * @param findings where problems go
   */
  public static void run(Templates templates, Templates own, Findings findings) {
    TemplateCheck check = new TemplateCheck(templates, own, findings);
    check.files();
    if (!findings.hasErrors()) {
      check.words();
      check.styles();
      check.templates();
    }
  }

  private void files() {
    List<String> lacking = new ArrayList<>(own.files().keySet());
    lacking.removeAll(templates.files().keySet());
    if (!lacking.isEmpty()) {
      findings.add(
          TemplateCode.TEMPLATES_LACKING,
          Position.ofFile(templates.folder()),
          "count",
          lacking.size(),
          "names",
          String.join(", ", lacking));
    }
    for (String path : templates.files().keySet()) {
      if (TEXTS.stream().anyMatch(path::endsWith)) {
        TextFile.read(
            templates.display(path), templates.bytes(path), Limits.STANDARD.lineLength(), findings);
      }
    }
  }

  private void words() {
    Map<String, Set<String>> placeholders = new TreeMap<>();
    Map<String, String> needed = new LinkedHashMap<>();
    for (String path : own.files().keySet()) {
      if (Words.isIn(path)) {
        for (Map.Entry<String, String> word : PropertyFile.read(own.text(path)).entrySet()) {
          placeholders
              .computeIfAbsent(word.getKey(), unused -> new TreeSet<>())
              .addAll(placeholders(word.getValue()));
          if (Words.isBase(path)) {
            needed.put(word.getKey(), path);
          }
        }
      }
    }
    for (String path : templates.files().keySet()) {
      if (Words.isIn(path)) {
        for (PropertyFile.Entry word : PropertyFile.entries(templates.text(path))) {
          word(path, word, placeholders.get(word.key()));
          if (Words.isBase(path)) {
            needed.remove(word.key());
          }
        }
      }
    }
    needed.forEach(
        (key, path) ->
            findings.add(
                TemplateCode.WORD_LACKING,
                Position.ofFile(templates.display(path)),
                "key",
                key,
                "file",
                path));
  }

  /** Checks a word; of one that the program doesn't know, any placeholder may get a value. */
  private void word(String path, PropertyFile.Entry word, Set<String> known) {
    Position position = templates.line(path, word.line());
    if (word.value() == null) {
      findings.add(
          TemplateCode.WORD_FORM,
          position,
          "key",
          word.key(),
          "problem",
          "a backslash and u need four hexadecimal digits behind them");
      return;
    }
    word.value()
        .codePoints()
        .filter(
            point ->
                InvisibleCharacters.of(point).isPresent() && position.lineText().indexOf(point) < 0)
        .findFirst()
        .ifPresent(point -> findings.add(UnseenCharacters.finding(point, position, 0)));
    Set<String> used;
    try {
      new MessageFormat(word.value(), Locale.ENGLISH);
      used = placeholders(word.value());
    } catch (IllegalArgumentException | IndexOutOfBoundsException e) {
      String problem = e.getMessage() == null ? "it isn't a message" : e.getMessage();
      findings.add(
          TemplateCode.WORD_FORM,
          position,
          "key",
          word.key(),
          "problem",
          TemplateFaults.brief(problem));
      return;
    }
    if (known != null) {
      used.removeAll(known);
      for (String name : used) {
        findings.add(
            TemplateCode.WORD_ARGUMENT,
            position,
            "key",
            word.key(),
            "name",
            name,
            "known",
            known.isEmpty() ? "none" : String.join(", ", known));
      }
    }
  }

  private static Set<String> placeholders(String message) {
    Set<String> names = new TreeSet<>();
    MessagePattern pattern = new MessagePattern(message);
    for (int i = 0; i < pattern.countParts(); i++) {
      MessagePattern.Part part = pattern.getPart(i);
      boolean name =
          part.getType() == MessagePattern.Part.Type.ARG_NAME
              || part.getType() == MessagePattern.Part.Type.ARG_NUMBER;
      if (name) {
        names.add(pattern.getSubstring(part));
      }
    }
    return names;
  }

  private void styles() {
    Map<String, String> needed = new LinkedHashMap<>();
    for (String path : own.files().keySet()) {
      if (Styles.isIn(path)) {
        StyleSheet.parse(own.text(path)).styles().keySet().forEach(role -> needed.put(role, path));
      }
    }
    Map<String, String> stated = new LinkedHashMap<>();
    for (String path : templates.files().keySet()) {
      if (Styles.isIn(path)) {
        Set<String> twice = new TreeSet<>();
        for (PropertyFile.Entry entry : PropertyFile.entries(templates.text(path))) {
          style(path, entry, stated, twice);
        }
      }
    }
    needed.keySet().removeAll(stated.keySet());
    needed.forEach(
        (role, path) ->
            findings.add(
                TemplateCode.STYLE_LACKING,
                Position.ofFile(templates.display(path)),
                "role",
                role,
                "file",
                path));
  }

  private void style(
      String path, PropertyFile.Entry entry, Map<String, String> stated, Set<String> twice) {
    Position position = templates.line(path, entry.line());
    String role = entry.key().substring(0, Math.max(0, entry.key().lastIndexOf('.')));
    try {
      if (entry.value() == null) {
        throw new IllegalArgumentException("its value can't be read");
      }
      // Colons and blanks before the value are all the same to a style sheet.
      StyleSheet.parse(entry.key() + " = " + entry.value());
    } catch (IllegalArgumentException e) {
      String problem = e.getCause() == null ? e.getMessage() : e.getCause().getMessage();
      findings.add(
          TemplateCode.STYLE_WRONG,
          position,
          "key",
          entry.key(),
          "problem",
          TemplateFaults.brief(problem));
    }
    String other = stated.putIfAbsent(role, path);
    if (other != null && !other.equals(path) && twice.add(role)) {
      findings.add(TemplateCode.STYLE_TWICE, position, "role", role, "file", other);
    }
  }

  private void templates() {
    TemplateEngine engine = new TemplateEngine(templates);
    for (String path : templates.files().keySet()) {
      if (path.endsWith(".ftl") || path.endsWith(".ftlh")) {
        engine.faultIn(path).ifPresent(findings::add);
      }
    }
  }
}
