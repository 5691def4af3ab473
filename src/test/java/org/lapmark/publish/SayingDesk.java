package org.lapmark.publish;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.Document;
import org.lapmark.document.manual.Look;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.print.NestedPlan;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.publish.product.Desk;

/** A desk whose documents say what they are made of. */
abstract class SayingDesk implements Desk {
  /** What a document says. */
  abstract String said(Document document);

  @Override
  public byte[] write(Document document, Findings findings) {
    return said(document).getBytes(StandardCharsets.UTF_8);
  }

  @Override
  public NestedPlan nested(List<EvaluatedPattern> patterns, Paper paper) {
    SheetPlan none = new SheetPlan(paper, 0, 0, List.of(), List.of());
    return new NestedPlan(none, "", List.of(), List.of(), Map.of());
  }

  @Override
  public Manual manual(EvaluatedPattern pattern, Findings findings) {
    return manual(pattern, Look.STANDARD);
  }

  @Override
  public Manual enlarged(Manual manual, Findings findings) {
    return manual(manual.pattern(), Look.LARGE_PRINT);
  }

  private static Manual manual(EvaluatedPattern pattern, Look look) {
    return new Manual(
        pattern,
        look,
        null,
        null,
        Map.of(),
        null,
        List.of(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of());
  }

  @Override
  public SheetPlanner planner(Look look) {
    return null;
  }
}
