package org.lapmark.grade;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.panel.AllowanceFactory;
import org.lapmark.grade.panel.PanelFactory;
import org.lapmark.grade.panel.PanelMarks;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.piece.Cut;
import org.lapmark.grade.piece.Piece;
import org.lapmark.grade.piece.Ruling;
import org.lapmark.grade.piece.StatedSize;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.cutting.Allowances;
import org.lapmark.panel.cutting.FoldedHalf;
import org.lapmark.panel.cutting.PieceShape;
import org.lapmark.source.CornerSources;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.PieceSource.CutSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.derived.DerivedSource;

/** Builds the pieces of one variant. */
final class PieceFactory {
  /** How many of a piece are cut from a material at most. */
  private static final int MOST_CUT = 10_000;

  /** In millimetres; about twenty tiles in a row. */
  private static final double LONGEST_ON_PAPER = 4000;

  /** In millimetres between its stitching lines; nothing narrower is cut, or seen on paper. */
  private static final double LEAST = 0.1;

  private final PatternScope scope;
  private final StatementsByName statements;
  private final PanelMarks marks;
  private final PanelFactory panels;
  private final Map<String, String> materialNames;
  private final Findings findings;

  PieceFactory(
      PatternEvaluator evaluator,
      PanelFactory panels,
      Map<String, String> materialNames,
      Findings findings) {
    this.findings = findings;
    this.scope = evaluator.scope();
    this.statements = evaluator.statements();
    this.marks = evaluator.marks();
    this.panels = panels;
    this.materialNames = materialNames;
  }

  /**
   * Builds a piece.
   *
   * @param source the piece as stated
   * @param name its name as readers see it
   * @return the piece
   * @throws FindingException when it can't be built
   */
  Piece build(PieceSource source, String name) {
    List<Cut> cuts = new ArrayList<>();
    source.cuts().forEach(cut -> cut(cut).ifPresent(cuts::add));
    Panel panel = marks.panel(source.panel());
    if (!cuts.isEmpty() && cuts.stream().noneMatch(this::hasGrain)) {
      panel = withoutGrainline(panel);
    } else if (cuts.stream()
        .anyMatch(cut -> YesNoProperty.holds(statements.thing(cut.material()), "nap", scope))) {
      panel = ofOneWay(panel);
    }
    Allowances allowances = new AllowanceFactory(scope, statements, findings).of(source, panel);
    PieceShape shape;
    try {
      shape = PieceShape.of(panel, allowances);
    } catch (PanelException e) {
      throw panels.inVariant(e, place(e, source, panel));
    }
    Optional<StatedSize> rectangle =
        isPlain(source, allowances)
            ? rectangle(panel, shape.allowances())
            : Optional.<StatedSize>empty();
    Optional<StatedSize> stated =
        source.isPrinted() || !Ruling.canTell(panel) ? Optional.empty() : rectangle;
    paper(source, panel, rectangle, stated);
    checkNotTiny(source, panel);
    if (stated.isEmpty()) {
      checkExtent(source, shape);
    }
    // What is ruled has no paper that could show a half, but what is stated of it has to be right.
    Optional<FoldedHalf> folded = source.fold().map(fold -> half(shape, fold));
    Optional<FoldedHalf> half = stated.isEmpty() ? folded : Optional.empty();
    return new Piece(source.number(), name, shape, cuts, stated, half, rectangle);
  }

  /** What a piece can't be drawn with: a corner, a notch or a dart that is stated, or its panel. */
  private Position place(PanelException problem, PieceSource source, Panel panel) {
    Map<String, Object> arguments = problem.arguments();
    Position corner = AllowanceFactory.place(source, arguments.get("corner"));
    if (corner != null) {
      return corner;
    }
    PanelCode code = (PanelCode) problem.code();
    if (code == PanelCode.NOTCH_OFF_EDGE || code == PanelCode.NOTCH_WITHOUT_CUTTING_LINE) {
      return marks
          .notchPlace(panel.name(), (String) arguments.get("edge"), (double) arguments.get("at"))
          .orElse(source.panel().position());
    }
    return source.panel().position();
  }

  private FoldedHalf half(PieceShape shape, PieceSource.FoldSource fold) {
    try {
      return FoldedHalf.of(shape, fold.from().text(), fold.to().text());
    } catch (PanelException e) {
      SourceText place =
          fold.to().text().equals(e.arguments().get("place")) ? fold.to() : fold.from();
      throw panels.inVariant(e, place);
    }
  }

  private void checkNotTiny(PieceSource source, Panel panel) {
    Box bounds = panel.outline().bounds();
    if (Math.min(bounds.width(), bounds.height()) < LEAST) {
      throw new FindingException(
          Finding.of(
              GradeCode.PIECE_TOO_SMALL,
              source.panel().position(),
              "width",
              significant(bounds.width()),
              "height",
              significant(bounds.height()),
              "least",
              Rounded.hundredth(LEAST),
              "size",
              scope.size()));
    }
  }

  /** With all the figures that it takes to tell it from 0. */
  private static String significant(double value) {
    return value >= LEAST
        ? Rounded.hundredth(value)
        : BigDecimal.valueOf(value)
            .round(new MathContext(2, RoundingMode.HALF_UP))
            .stripTrailingZeros()
            .toPlainString();
  }

  private void checkExtent(PieceSource source, PieceShape shape) {
    Box bounds = shape.cuttingLine().path().bounds();
    if (bounds.width() > LONGEST_ON_PAPER || bounds.height() > LONGEST_ON_PAPER) {
      throw new FindingException(
          Finding.of(
              GradeCode.PIECE_TOO_LARGE,
              source.panel().position(),
              "width",
              Rounded.hundredth(bounds.width()),
              "height",
              Rounded.hundredth(bounds.height()),
              "limit",
              Rounded.hundredth(LONGEST_ON_PAPER),
              "size",
              scope.size()));
    }
  }

  private Optional<Cut> cut(CutSource source) {
    int count = count(source.count());
    int reversed = source.reversed() == null ? 0 : count(source.reversed());
    if (reversed > count) {
      throw new FindingException(
          Finding.of(
              GradeCode.CUT_REVERSED,
              source.reversed().text().position(),
              "reversed",
              reversed,
              "count",
              count,
              "size",
              scope.size()));
    }
    String material = source.material().text();
    return count == 0
        ? Optional.empty()
        : Optional.of(
            new Cut(material, materialNames.getOrDefault(material, material), count, reversed));
  }

  private int count(Formula formula) {
    Value value = formula.evaluate(scope);
    double count = value.number().orElseThrow(() -> badCount(formula, PatternScope.kind(value)));
    long whole = Math.round(count);
    if (Math.abs(count - whole) < 1e-9 && whole >= 0 && whole <= MOST_CUT) {
      return (int) whole;
    }
    throw badCount(formula, Rounded.hundredth(count));
  }

  private FindingException badCount(Formula formula, String value) {
    return new FindingException(
        Finding.of(
            GradeCode.CUT_COUNT,
            formula.text().position(),
            "value",
            value,
            "most",
            Integer.toString(MOST_CUT),
            "size",
            scope.size()));
  }

  /** Whether a rectangle with these allowances is a rectangle, to be cut by its size alone. */
  private static boolean isPlain(PieceSource source, Allowances allowances) {
    return source.corners().equals(CornerSources.NONE)
        && allowances.edges().values().stream()
            .allMatch(allowance -> !allowance.fold() && allowance.start() == allowance.end());
  }

  /** What has neither a grain nor a direction lies as one likes. */
  private boolean hasGrain(Cut cut) {
    ThingSource material = statements.thing(cut.material());
    return !YesNoProperty.holds(material, "no_grain", scope)
        || YesNoProperty.holds(material, "nap", scope);
  }

  private static Panel withoutGrainline(Panel panel) {
    return marked(
        panel, panel.marks().stream().filter(mark -> !(mark instanceof Mark.Grainline)).toList());
  }

  /** With a grainline that says which end is up. */
  private static Panel ofOneWay(Panel panel) {
    return marked(
        panel,
        panel.marks().stream()
            .map(mark -> mark instanceof Mark.Grainline grain ? grain.ofOneWay() : mark)
            .toList());
  }

  private static Panel marked(Panel panel, List<Mark> marks) {
    return new Panel(panel.name(), panel.edges(), panel.chains(), marks);
  }

  /** Says what an author would not expect of what is printed and what is ruled. */
  private void paper(
      PieceSource source,
      Panel panel,
      Optional<StatedSize> rectangle,
      Optional<StatedSize> stated) {
    if (stated.isEmpty() && source.printed() != null && !source.isPrinted()) {
      findings.add(
          Finding.of(
              GradeCode.PIECE_NEEDS_PAPER,
              source.printed().position(),
              "rectangle",
              rectangle.isPresent() ? "yes" : "no",
              "size",
              scope.size()));
    }
    if (source.printed() == null
        && stated.isPresent()
        && panel.marks().stream()
            .anyMatch(mark -> !(mark instanceof Mark.Notch || mark instanceof Mark.Grainline))) {
      findings.add(
          Finding.of(
              GradeCode.PIECE_RULED_WITH_MARKS,
              source.position(),
              "number",
              source.number(),
              "size",
              scope.size()));
    }
  }

  private Optional<StatedSize> rectangle(Panel panel, Map<String, Double> allowances) {
    PanelSource source = statements.panel(panel.name());
    while (source.derivation().filter(DerivedSource::runsBeside).isPresent()) {
      source = statements.panel(source.derivation().get().panel().text());
    }
    if (!source.shape().isRectangle()
        || panel.marks().stream().anyMatch(Intake.class::isInstance)) {
      return Optional.empty();
    }
    Box box = panel.outline().bounds();
    if (Math.abs(box.width() * box.height() - panel.outline().signedArea()) > 1e-6) {
      return Optional.empty(); // Slashed and spread into another shape.
    }
    return Ruling.of(panel, allowances, source.shape().isOnBias());
  }
}
