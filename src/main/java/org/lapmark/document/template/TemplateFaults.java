package org.lapmark.document.template;

import freemarker.core.InvalidReferenceException;
import freemarker.core.ParseException;
import freemarker.template.TemplateException;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.Position;
import org.lapmark.wording.WordingException;

/** Says of a failure where in the templates its cause lies. */
public final class TemplateFaults {
  private static final int MOST_OF_PROBLEM = 160;
  private static final int MOST_CAUSES = 20;

  private TemplateFaults() {}

  /**
   * What is wrong with the templates when the making of a document has failed.
   *
   * @param failure the failure
   * @param templates the templates
   * @return the finding; nothing if the templates are the program's own, or have nothing to do with
   *     it
   */
  public static Optional<Finding> of(Throwable failure, Templates templates) {
    if (templates.areOwn()) {
      return Optional.empty();
    }
    Throwable cause = failure;
    for (int i = 0; cause != null && i < MOST_CAUSES; i++) {
      if (cause instanceof TemplateFault fault) {
        return Optional.of(fault.finding());
      }
      if (cause instanceof WordingException word) {
        return Optional.of(word(word, templates));
      }
      cause = cause.getCause();
    }
    return Optional.empty();
  }

  /** A failure of a template itself. */
  static Finding filling(Throwable failure, String template, Templates templates) {
    Throwable parsing = failure;
    for (int i = 0; parsing != null && i < MOST_CAUSES; i++) {
      if (parsing instanceof ParseException parse) {
        return syntax(parse, template, templates);
      }
      parsing = parsing.getCause();
    }
    if (!(failure instanceof TemplateException problem)) {
      return failed(failure, Position.ofFile(templates.display(template)));
    }
    Position position = position(problem, template, templates);
    Throwable cause = problem.getCause();
    for (int i = 0; cause != null && i < MOST_CAUSES; i++) {
      if (cause instanceof WordingException word) {
        return word.isMissing()
            ? Finding.of(TemplateCode.WORD_UNKNOWN, position, "key", word.key())
            : word(word, templates);
      }
      cause = cause.getCause();
    }
    if (problem instanceof InvalidReferenceException
        && problem.getBlamedExpressionString() != null) {
      return Finding.of(
          TemplateCode.TEMPLATE_VALUE, position, "name", problem.getBlamedExpressionString());
    }
    return failed(problem, position);
  }

  private static Finding syntax(ParseException parse, String template, Templates templates) {
    String path = parse.getTemplateName() == null ? template : parse.getTemplateName();
    return Finding.of(
        TemplateCode.TEMPLATE_SYNTAX,
        templates.position(
            path,
            parse.getLineNumber(),
            parse.getColumnNumber(),
            parse.getEndLineNumber() == parse.getLineNumber()
                ? parse.getEndColumnNumber() - parse.getColumnNumber() + 1
                : 1),
        "problem",
        brief(parse.getEditorMessage()));
  }

  private static Finding failed(Throwable problem, Position position) {
    String message =
        problem instanceof TemplateException template
            ? template.getMessageWithoutStackTop()
            : problem.getMessage();
    return Finding.of(
        TemplateCode.TEMPLATE_FAILED,
        position,
        "problem",
        brief(message == null ? problem.getClass().getSimpleName() : message));
  }

  private static Position position(
      TemplateException problem, String template, Templates templates) {
    String path =
        problem.getTemplateSourceName() == null ? template : problem.getTemplateSourceName();
    Integer line = problem.getLineNumber();
    Integer column = problem.getColumnNumber();
    if (line == null || column == null) {
      return Position.ofFile(templates.display(path));
    }
    Integer end = problem.getEndColumnNumber();
    boolean inLine = end != null && line.equals(problem.getEndLineNumber());
    return templates.position(path, line, column, inLine ? end - column + 1 : 1);
  }

  private static Finding word(WordingException word, Templates templates) {
    Position place = Words.place(templates, word.locale(), word.key());
    return word.isMissing()
        ? Finding.of(
            TemplateCode.WORD_LACKING, place, "key", word.key(), "file", "words/en.properties")
        : Finding.of(
            TemplateCode.WORD_FORM, place, "key", word.key(), "problem", brief(word.getMessage()));
  }

  /** The first sentence or so of what a library says. */
  public static String brief(String message) {
    String first = message.strip().lines().findFirst().orElse("").strip();
    int end = first.indexOf(". ");
    first = end > 0 ? first.substring(0, end) : first;
    while (first.endsWith(".") || first.endsWith(":")) {
      first = first.substring(0, first.length() - 1);
    }
    return first.length() <= MOST_OF_PROBLEM ? first : first.substring(0, MOST_OF_PROBLEM) + "…";
  }
}
