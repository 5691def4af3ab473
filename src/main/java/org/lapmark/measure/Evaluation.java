package org.lapmark.measure;

import static org.lapmark.measure.Dimension.COUNT;
import static org.lapmark.measure.Dimension.PLAIN;
import static org.lapmark.measure.Dimension.ZERO;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.Quantity;

/**
 * What the parts of one formula need while they are computed: the scope, values of the kind that is
 * asked for, and what to say where they aren't.
 *
 * @param formula the formula as written
 * @param scope what its names stand for
 */
record Evaluation(SourceText formula, Scope scope) {
  /** The kind of what holds or doesn't. */
  static final String TRUTH = new Value.Truth(true).kind();

  /** The kind of a list of stock sizes. */
  static final String STOCK = new Value.StockSizes(List.of()).kind();

  /** Whether a kind is that of something without a unit. */
  static boolean isNumber(String kind) {
    return kind.equals(PLAIN.word()) || kind.equals(COUNT.word());
  }

  /** What is known of names without computing them. */
  Kinds kinds() {
    return new Kinds.InScope(formula, scope);
  }

  /** The dimension of two like quantities. */
  Dimension common(Operands sides, Quantity left, Quantity right, String operation) {
    Dimension a = left.dimension();
    Dimension b = right.dimension();
    if (a == b) {
      return a;
    }
    if (a == ZERO) {
      return b;
    }
    if (b == ZERO) {
      return a;
    }
    if (a.isNumber() && b.isNumber()) {
      return COUNT;
    }
    if (a == PLAIN) {
      throw unitMissing(sides.left(), b);
    }
    if (b == PLAIN) {
      throw unitMissing(sides.right(), a);
    }
    throw fault(
        MeasureCode.FORMULA_UNLIKE_DIMENSIONS,
        sides.signStart(),
        sides.signEnd(),
        "left",
        a.word(),
        "right",
        b.word(),
        "operation",
        operation);
  }

  boolean truth(Node node) {
    Value value = node.value(this);
    if (value.kind().equals(TRUTH)) {
      return value.isTrue();
    }
    throw wrongKind(node, value.kind(), TRUTH);
  }

  Quantity quantity(Node node) {
    return quantity(node.value(this), node);
  }

  Quantity quantity(Value value, Node node) {
    return value.quantity().orElseThrow(() -> wrongKind(node, value.kind(), "number"));
  }

  double amount(Node node, Dimension needed) {
    Quantity quantity = quantity(node);
    Dimension found = quantity.dimension();
    if (found.fits(needed) || found.isNumber() && needed.isNumber()) {
      return quantity.amount();
    }
    if (found == PLAIN) {
      throw unitMissing(node, needed);
    }
    throw wrongKind(node, found.word(), needed.word());
  }

  private FindingException unitMissing(Node node, Dimension needed) {
    return statedWithoutUnit(node, needed).orElseGet(() -> unitMissingHere(node, needed));
  }

  /** The fault of a name in a part that comes to a plain number, if one alone can be to blame. */
  Optional<FindingException> statedWithoutUnit(Node node, Dimension needed) {
    Map<Position, SourceText> stated = new LinkedHashMap<>();
    node.names(
        formula,
        name -> scope.withoutUnit(name).ifPresent(place -> stated.putIfAbsent(place, name)));
    if (stated.size() != 1) {
      return Optional.empty();
    }
    Position place = stated.keySet().iterator().next();
    SourceText name = stated.get(place);
    return Optional.of(
        new FindingException(
            Finding.of(
                MeasureCode.MEASURE_UNIT_MISSING,
                place,
                "name",
                name.text(),
                "file",
                name.position().file(),
                "line",
                Integer.toString(name.position().line()),
                "needed",
                needed.word(),
                "stated",
                place.file() + ":" + place.line())));
  }

  FindingException unitMissingHere(Node node, Dimension needed) {
    return fault(
        MeasureCode.FORMULA_UNIT_MISSING,
        node,
        "number",
        written(node),
        "needed",
        needed.word(),
        "alone",
        node.bare().unsigned().bare().isPlainNumber() ? "yes" : "no");
  }

  FindingException wrongKind(Node node, String found, String needed) {
    return fault(
        MeasureCode.FORMULA_WRONG_KIND,
        node,
        "written",
        written(node),
        "found",
        found,
        "needed",
        needed);
  }

  FindingException noSuchDimension(
      Operands sides, Dimension left, Dimension right, String operation) {
    return fault(
        MeasureCode.FORMULA_NO_SUCH_DIMENSION,
        sides.signStart(),
        sides.signEnd(),
        "left",
        left.word(),
        "right",
        right.word(),
        "operation",
        operation);
  }

  String written(Node node) {
    String whole = formula.text().substring(node.start(), node.end());
    return whole.length() <= 60 ? whole : whole.substring(0, whole.offsetByCodePoints(0, 40)) + "…";
  }

  public FindingException fault(MeasureCode code, Node node, Object... arguments) {
    return fault(code, node.start(), node.end(), arguments);
  }

  public FindingException fault(MeasureCode code, int start, int end, Object... arguments) {
    return new FindingException(Finding.of(code, formula.position(start, end), arguments));
  }
}
