package org.lapmark.measure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.NominalPair;
import org.lapmark.measure.Value.Quantity;
import org.lapmark.measure.Value.StockSizes;
import org.lapmark.measure.Value.Truth;

/** A few names of every kind. */
final class ExampleScope implements Scope {
  enum Code implements FindingCode {
    NOT_THERE;

    @Override
    public Severity severity() {
      return Severity.ERROR;
    }
  }

  private final Map<String, Value> values = new TreeMap<>();

  ExampleScope() {
    NominalPair seven = new NominalPair(180, "18 cm", 7 * 25.4, "7 in");
    NominalPair eight = new NominalPair(200, "20 cm", 8 * 25.4, "8 in");
    values.put("seam", Quantity.length(10));
    values.put("cord", Quantity.length(4.5));
    values.put("straps", new Quantity(2, Dimension.COUNT));
    values.put("end_area", new Quantity(15_000, Dimension.AREA));
    values.put("angle", new Quantity(22.5, Dimension.ANGLE));
    values.put("zero", Quantity.plain(0));
    values.put("unitless", Quantity.plain(12));
    values.put("flag", new Truth(true));
    values.put("not_flag", new Truth(false));
    values.put("cloth", new NominalPair(1500, "150 cm", 1524, "60 in"));
    values.put("closure", new Value.Choice("zip", "a zip", List.of("zip", "flap"), false));
    values.put("size", new Value.Choice("M", "M", List.of("S", "M", "2XL", "Extra Large"), true));
    values.put("head", new Value.Choice("56", "56", List.of("54", "56", "58"), true));
    values.put("zip.width", Quantity.length(12));
    values.put("zip.stock", new StockSizes(List.of(eight, seven)));
  }

  ExampleScope with(String name, Value value) {
    ExampleScope changed = new ExampleScope();
    changed.values.putAll(values);
    changed.values.put(name, value);
    return changed;
  }

  @Override
  public Value value(SourceText name) {
    Value value = values.get(name.text());
    if (value == null) {
      throw new FindingException(Finding.of(Code.NOT_THERE, name.position()));
    }
    return value;
  }

  @Override
  public Value geometry(SourceText function, List<SourceText> references) {
    for (SourceText reference : references) {
      if (!reference.text().startsWith("end")) {
        throw new FindingException(Finding.of(Code.NOT_THERE, reference.position()));
      }
    }
    return function.text().equals("area")
        ? new Quantity(15_000, Dimension.AREA)
        : Quantity.length(449.89);
  }

  @Override
  public Optional<String> kind(SourceText name) {
    return Optional.ofNullable(values.get(name.text())).map(Value::kind);
  }

  @Override
  public Optional<Position> withoutUnit(SourceText name) {
    return name.text().equals("unitless") ? Optional.of(name.position()) : Optional.empty();
  }

  static SourceText text(String written) {
    return SourceText.verbatim(new SourceFile("towel/pattern.yaml", written), 0, written.length());
  }
}
