package org.lapmark.publish.product;

import java.io.IOException;
import java.util.List;
import org.lapmark.document.Document;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.output.Manifest;
import org.lapmark.publish.output.Purpose;
import org.lapmark.publish.output.Receiver;

/** What jobs that are done together have: a desk, their findings, and where files go. */
public final class Bench {
  private final Desk desk;
  private final Findings findings;
  private final Receiver receiver;
  private final Arrangements arrangements;
  private EvaluatedPattern planned;
  private SheetPlan plan;

  /**
   * A bench.
   *
   * @param desk lays out and writes
   * @param findings where problems go
   * @param receiver takes the files
   * @param arrangements is told how pieces lie
   */
  public Bench(Desk desk, Findings findings, Receiver receiver, Arrangements arrangements) {
    this.desk = desk;
    this.findings = findings;
    this.receiver = receiver;
    this.arrangements = arrangements;
  }

  /** Lays out and writes. */
  public Desk desk() {
    return desk;
  }

  /** Arranges the pieces on a paper, once for all jobs that are done together. */
  public SheetPlan plan(EvaluatedPattern pattern, Paper paper) {
    if (planned != pattern || !plan.paper().equals(paper)) {
      plan = desk.plan(pattern, paper);
      planned = pattern;
      arrangements.add(pattern.variant(), plan);
    }
    return plan;
  }

  /** Sees whether the pieces can be arranged on a paper, unless they have been. */
  void arrange(EvaluatedPattern pattern, Paper paper) {
    if (planned != pattern || !plan.paper().equals(paper)) {
      desk.arrange(pattern, paper);
    }
  }

  void addEmptyStack(Paper paper) {
    arrangements.addEmptyStack(paper);
  }

  /** Makes a file; one with a gap in it is not written. */
  List<Manifest.Entry> file(Product product, Purpose purpose, String name, Document document)
      throws IOException {
    byte[] content = desk.write(document, findings);
    return findings.hasErrors()
        ? List.of()
        : List.of(
            receiver.write(
                name,
                purpose.size().orElse(""),
                purpose.paper().map(Paper::id).orElse(""),
                product.kind(),
                purpose.choices(),
                content));
  }
}
