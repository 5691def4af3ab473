package org.lapmark.document.template;

import java.util.Objects;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingText;

/**
 * Ends the making of a document because of its templates. Whose fault that is depends on whose
 * templates they are: see {@link TemplateFaults}.
 */
public final class TemplateFault extends IllegalStateException {
  private static final long serialVersionUID = 1L;
  private final transient Finding finding;

  public TemplateFault(Finding finding) {
    super(
        finding.position().file()
            + (finding.position().line() == 0 ? "" : ":" + finding.position().line())
            + ": "
            + FindingText.message(finding));
    this.finding = Objects.requireNonNull(finding);
  }

  /**
   * What is wrong.
   *
   * @return the finding, with its place in the templates
   */
  public Finding finding() {
    return finding;
  }
}
