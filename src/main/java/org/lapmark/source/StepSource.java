package org.lapmark.source;

import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.source.key.Ref;

/**
 * A step's file.
 *
 * @param id its stated name, for cross-references
 * @param title its heading
 * @param stage the heading of the group it belongs to
 * @param uses the tools, materials, hardware, trims and attachments it uses, by id
 * @param body the Markdown after the front matter
 */
public record StepSource(
    SourceText id, SourceText title, SourceText stage, List<SourceText> uses, SourceText body) {
  /** Stands, among what couldn't be read, for a step of which not even the id could be. */
  public static final Ref UNNAMED = Ref.of(Ref.Kind.STEP, "");

  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.STEP, id.text());
  }

  /** Copies the list. */
  public StepSource {
    uses = List.copyOf(uses);
  }

  /**
   * A step that names nothing it uses.
   *
   * @param id its stated name, for cross-references
   * @param title its heading
   * @param stage the heading of the group it belongs to
   * @param body the Markdown after the front matter
   */
  public StepSource(SourceText id, SourceText title, SourceText stage, SourceText body) {
    this(id, title, stage, List.of(), body);
  }
}
