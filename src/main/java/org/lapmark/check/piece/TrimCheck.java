package org.lapmark.check.piece;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.PieceCode;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.source.fastening.TrimSource;

/** Compares what is sewn along edges with these edges, and with its stitches and its casing. */
public final class TrimCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(
          TrimCheck::run,
          PieceCode.TRIM_SIDES_DIFFER,
          PieceCode.TRIM_LENGTH_DIFFERS,
          PieceCode.TRIM_ALONG_AGAIN,
          PieceCode.TRIM_STITCHES_MISS,
          PieceCode.CASING_TOO_NARROW);

  /** So much of a line, in millimetres, may be taken by what is sewn to both parts of it. */
  private static final double ROOM = 0.5;

  private final Evaluated evaluated;
  private final PatternScope scope;
  private final Findings findings;

  private TrimCheck(Evaluated evaluated, Findings findings) {
    this.evaluated = evaluated;
    this.scope = new PatternScope(evaluated.pattern().scope(), evaluated.size());
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    TrimCheck check = new TrimCheck(evaluated, findings);
    for (TrimSource source : evaluated.source().fastenings().trims()) {
      evaluated
          .pattern()
          .fastened()
          .trim(source.name().text())
          .ifPresent(trim -> check.check(source, trim));
    }
  }

  private void check(TrimSource source, Trim trim) {
    attempt(() -> lengths(source, trim));
    again(source, trim);
    attempt(() -> stitches(source, trim));
    attempt(() -> casing(source, trim));
  }

  /** What can't be computed is reported once. */
  private void attempt(Runnable check) {
    try {
      check.run();
    } catch (FindingException e) {
      findings.add(e.finding());
    } catch (DemandGraph.Unavailable e) {
      // It was reported where it is stated.
      return;
    }
  }

  private void lengths(TrimSource source, Trim trim) {
    double tolerance = scope.tolerance(source.tolerance(), findings);
    double other = Trim.length(trim.facing());
    if (!trim.facing().isEmpty() && Math.abs(trim.edge() - other) > tolerance) {
      report(
          PieceCode.TRIM_SIDES_DIFFER,
          source.facing().get(0).line().position(),
          source,
          "edge",
          Rounded.hundredth(trim.edge()),
          "other",
          Rounded.hundredth(other),
          "tolerance",
          Rounded.hundredth(tolerance));
    }
    double longer = trim.length() - trim.needed();
    if (source.length() != null
        && (longer > tolerance || longer < -tolerance && !source.centred())) {
      report(
          PieceCode.TRIM_LENGTH_DIFFERS,
          source.length().text().position(),
          source,
          "length",
          Rounded.hundredth(trim.length()),
          "needed",
          Rounded.hundredth(trim.needed()),
          "centred",
          source.centred() ? "yes" : "no",
          "difference",
          Rounded.hundredth(Math.abs(longer)),
          "way",
          longer > 0 ? "longer" : "shorter");
    }
  }

  /** What is sewn twice to one line needs two copies of it, as left and right have. */
  private void again(TrimSource source, Trim trim) {
    List<SourceText> lines = new ArrayList<>();
    source.along().forEach(part -> lines.add(part.line()));
    source.facing().forEach(part -> lines.add(part.line()));
    List<Trim.Stretch> sewn = new ArrayList<>(trim.along());
    sewn.addAll(trim.facing());
    for (int i = 0; i < sewn.size(); i++) {
      Trim.Stretch one = sewn.get(i);
      boolean isTaken =
          IntStream.range(0, i).anyMatch(before -> one.shared(sewn.get(before)) > ROOM);
      if (isTaken && isCutOnce(one.panel())) {
        SourceText line = lines.get(i);
        report(PieceCode.TRIM_ALONG_AGAIN, line.position(), source, "line", line.text());
        return;
      }
    }
  }

  /** Whether a panel is one piece, cut once from one layer of cloth. */
  private boolean isCutOnce(String panel) {
    List<Piece> cut =
        evaluated.pattern().pieces().stream()
            .filter(piece -> piece.shape().panel().name().equals(panel))
            .toList();
    return cut.size() == 1
        && cut.get(0).cuts().stream().mapToInt(Cut::count).sum() == 1
        && !cut.get(0).isFolded();
  }

  /** Stitches that don't go through the trim hold nothing. */
  private void stitches(TrimSource source, Trim trim) {
    if (source.distance() == null) {
      return;
    }
    double distance = scope.length(source.distance());
    if (distance < 0 || trim.width().isPresent() && distance >= trim.width().getAsDouble()) {
      report(
          PieceCode.TRIM_STITCHES_MISS,
          source.distance().text().position(),
          source,
          "distance",
          Rounded.hundredth(distance),
          "width",
          trim.width().isPresent() ? Rounded.hundredth(trim.width().getAsDouble()) : "none");
    }
  }

  private void casing(TrimSource source, Trim trim) {
    if (source.casing() == null) {
      return;
    }
    double casing = scope.positiveLength(source.casing());
    if (trim.width().isPresent() && trim.width().getAsDouble() > casing) {
      report(
          PieceCode.CASING_TOO_NARROW,
          source.casing().text().position(),
          source,
          "casing",
          Rounded.hundredth(casing),
          "width",
          Rounded.hundredth(trim.width().getAsDouble()));
    }
  }

  private void report(PieceCode code, Position place, TrimSource source, Object... arguments) {
    List<Object> all = new ArrayList<>(List.of(arguments));
    all.addAll(List.of("name", source.name().text(), "size", evaluated.size()));
    findings.add(code, place, all.toArray());
  }
}
