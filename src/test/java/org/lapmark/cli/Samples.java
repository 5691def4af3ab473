package org.lapmark.cli;

import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;

/** Findings for the tests of their writers. */
public final class Samples {
  private Samples() {}

  public enum Code implements FindingCode {
    ODD_NAME(Severity.ERROR),
    TOO_LONG(Severity.WARNING),
    UNUSED(Severity.NOTE);

    private final Severity severity;

    Code(Severity severity) {
      this.severity = severity;
    }

    @Override
    public Severity severity() {
      return severity;
    }
  }

  public static Findings findings(Code code) {
    Findings findings = new Findings();
    findings.add(code, new Position("tote/a.yaml", 1, 1, 3, "abc"), "name", "abc", "length", 3);
    return findings;
  }

  /** One of each kind, with everything in it that a terminal or a tool might stumble over. */
  public static Findings all() {
    Findings findings = new Findings();
    findings.add(
        Code.ODD_NAME,
        new Position("tote/pattern.yaml", 7, 4, 5, "\t大\tnam\u001b[31me: 3 mm"),
        "name",
        "nam\u001b[31me");
    findings.add(
        Code.TOO_LONG,
        new Position(
            "tote/panels/ende größe.svg",
            1,
            151,
            9,
            "x".repeat(150) + "too large" + "y".repeat(80)),
        "length",
        2.5);
    findings.add(Code.UNUSED, Position.ofFile("tote/art/odd\u202efig.svg"));
    return findings;
  }
}
