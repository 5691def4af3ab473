package org.lapmark.lay;

import java.util.List;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Severity;

/** What can turn out wrong when pieces are laid on cloth. */
public enum LayCode implements FindingCode {
  /** A piece that fits a width of cloth in none of its positions. */
  LAY_PIECE_TOO_WIDE(Severity.ERROR),
  /** A bias strip that has to be joined from shorter lengths. */
  LAY_BIAS_STRIP_JOINED(Severity.NOTE),
  /** A material that is cut and has no usable width. */
  LAY_WIDTH_MISSING(Severity.WARNING),
  /** A width that leaves nothing to lay pieces on. */
  LAY_WIDTH_RANGE(Severity.ERROR),
  /** A property that isn't of the kind it should be. */
  LAY_PROPERTY_KIND(Severity.ERROR),
  /** A margin or a shrinkage that can't be meant. */
  LAY_SHARE_RANGE(Severity.ERROR),
  /** More pieces of one material than are laid out. */
  LAY_TOO_MANY_PIECES(Severity.WARNING);

  private final Severity severity;

  LayCode(Severity severity) {
    this.severity = severity;
  }

  @Override
  public Severity severity() {
    return severity;
  }

  /** A piece that is too wide is so on every cloth and in each width; one says it. */
  @Override
  public List<String> subject() {
    return this == LAY_PIECE_TOO_WIDE ? List.of("width", "number", "piece") : List.of();
  }
}
