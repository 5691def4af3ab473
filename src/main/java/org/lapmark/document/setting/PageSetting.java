package org.lapmark.document.setting;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.document.pdf.PdfBook;
import org.lapmark.document.template.TemplateCode;
import org.lapmark.document.template.TemplateEngine;
import org.lapmark.document.template.TemplateFault;
import org.lapmark.document.template.TemplateFaults;
import org.lapmark.document.template.Templates;
import org.lapmark.drawing.Drawing;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Position;
import org.lapmark.wording.Wording;

/**
 * Sets pages of a template, and says of a mistake in what it made which line of which template made
 * it. The engine keeps no account of that, so the line is looked for that has most in common with
 * the markup at the mistake; if several have as much, none is named.
 */
public class PageSetting {
  private static final Pattern FILLED = Pattern.compile("\\$\\{[^}]*}|</?[#@][^>]*>|\\s{2,}");
  private static final Pattern STYLE_LINE = Pattern.compile("line[: ]+([0-9]+)");
  private static final Pattern STYLE_WORD = Pattern.compile("\\) ([@\\w-]{2,}) (?:is|not)\\b");
  private static final int LEAST_IN_COMMON = 6;
  private static final int MOST_OF_EXCERPT = 80;

  private final TemplateEngine engine;
  private final Templates templates;

  public PageSetting(TemplateEngine engine, Templates templates) {
    this.engine = engine;
    this.templates = templates;
  }

  /**
   * Sets the pages of a template.
   *
   * @throws TemplateFault when it can't be filled, or what it makes can't be set
   */
  public void set(
      PdfBook book,
      String template,
      Map<String, Object> model,
      Wording wording,
      Map<String, Drawing> drawings,
      int pagesInserted)
      throws IOException {
    set(template, model, wording, html -> HtmlPages.render(book, html, drawings, pagesInserted));
  }

  /**
   * Sets the pages of a template to see whether they can be set; the book stays empty.
   *
   * @throws TemplateFault when it can't be filled, or what it makes can't be set
   */
  public void tryOut(
      PdfBook book,
      String template,
      Map<String, Object> model,
      Wording wording,
      Map<String, Drawing> drawings,
      int pagesInserted)
      throws IOException {
    set(template, model, wording, html -> HtmlPages.layOut(book, html, drawings, pagesInserted));
  }

  /**
   * Whether trying out finds as much as setting does: the program's own templates draw nothing that
   * couldn't be drawn where it was laid out. What a user's hold isn't known.
   */
  public boolean canBeTriedOut() {
    return templates.areOwn();
  }

  /** Makes something of markup. */
  @FunctionalInterface
  private interface Rendering {
    void of(String html) throws IOException;
  }

  private void set(String template, Map<String, Object> model, Wording wording, Rendering rendering)
      throws IOException {
    String html = engine.fill(template, model, wording);
    try {
      rendering.of(html);
    } catch (Typesetting.BrokenMarkup e) {
      throw broken(e, template, html);
    } catch (HtmlPages.UnsetPages e) {
      throw new TemplateFault(unset(e.first(), template, html));
    } catch (RuntimeException e) {
      if (templates.areOwn()) {
        throw e;
      }
      String problem = e.getMessage() == null ? e.toString() : e.getMessage();
      throw new TemplateFault(unset(problem, template, html));
    }
  }

  /** Text that has to be well-formed and is written as it is. */
  public String wellFormed(String template, Map<String, Object> model, Wording wording) {
    String html = engine.fill(template, model, wording);
    if (!templates.areOwn()) {
      try {
        Typesetting.parsed(html.replaceFirst("(?is)^\\s*<!doctype[^>]*>", ""));
      } catch (Typesetting.BrokenMarkup e) {
        throw broken(e, template, html);
      }
    }
    return html;
  }

  private TemplateFault broken(Typesetting.BrokenMarkup problem, String template, String html) {
    Optional<UnclosedElement> unclosed = UnclosedElement.before(html, problem.line());
    if (unclosed.isPresent()) {
      return new TemplateFault(
          Finding.of(
              TemplateCode.MARKUP_BROKEN,
              place(line(html, unclosed.get().line()), template, path -> path.endsWith(".ftlh")),
              "problem",
              "the element “" + unclosed.get().name() + "” is opened here and never closed",
              "text",
              "none"));
    }
    String line = line(html, problem.line());
    return new TemplateFault(
        Finding.of(
            TemplateCode.MARKUP_BROKEN,
            place(line, template, path -> path.endsWith(".ftlh")),
            "problem",
            TemplateFaults.brief(problem.getMessage()),
            "text",
            line.isBlank() ? "none" : excerpt(line)));
  }

  private Finding unset(String problem, String template, String html) {
    Matcher line = STYLE_LINE.matcher(problem);
    Position position = Position.ofFile(templates.display(template));
    int style = html.indexOf("<style>");
    if (line.find() && style >= 0) {
      // The renderer counts from 0, beginning in the line of the element.
      int before = (int) html.substring(0, style).lines().count();
      String made = styleLine(html, before + 1 + Integer.parseInt(line.group(1)), problem);
      position = place(made, template, path -> path.endsWith(".ftl"));
    }
    return Finding.of(TemplateCode.PAGES_UNSET, position, "problem", TemplateFaults.brief(problem));
  }

  /** The line that a renderer's remark is about: it may have read a line further, or one less. */
  private static String styleLine(String html, int number, String problem) {
    Matcher word = STYLE_WORD.matcher(problem);
    if (word.find()) {
      for (int near : new int[] {number, number + 1, number - 1}) {
        if (line(html, near).contains(word.group(1))) {
          return line(html, near);
        }
      }
    }
    return line(html, number);
  }

  private static String excerpt(String line) {
    String text = line.strip();
    return text.length() <= MOST_OF_EXCERPT ? text : text.substring(0, MOST_OF_EXCERPT) + "…";
  }

  private static String line(String text, int number) {
    return number < 1 ? "" : text.lines().skip(number - 1L).findFirst().orElse("");
  }

  /** The line of a template that has most in common with a line that was made. */
  private Position place(String made, String template, Predicate<String> candidates) {
    String folder = template.substring(0, template.lastIndexOf('/') + 1);
    Position best = Position.ofFile(templates.display(template));
    int most = LEAST_IN_COMMON - 1;
    boolean several = false;
    for (String path : templates.files().keySet()) {
      if (!path.startsWith(folder) || !candidates.test(path)) {
        continue;
      }
      String[] lines = templates.source(path).content().split("\n", -1);
      for (int i = 0; i < lines.length; i++) {
        int common = common(lines[i], made);
        if (common > most) {
          most = common;
          several = false;
          best = templates.line(path, i + 1);
        } else if (common == most && common >= LEAST_IN_COMMON) {
          several = true;
        }
      }
    }
    return several ? Position.ofFile(templates.display(template)) : best;
  }

  /** How many characters of a template's line stand in the line that was made. */
  private static int common(String line, String made) {
    int common = 0;
    for (String part : FILLED.split(line)) {
      String text = part.strip();
      if (text.length() >= LEAST_IN_COMMON && made.contains(text)) {
        common += text.length();
      }
    }
    return common;
  }
}
