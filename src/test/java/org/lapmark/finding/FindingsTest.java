package org.lapmark.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class FindingsTest {
  private static final List<String> SIZES = List.of("S", "M", "L");
  private static final Position PLACE = new Position("towel/pattern.yaml", 3, 1, 4, "hem: 1");

  private enum Code implements FindingCode {
    FRAYED,
    TORN;

    @Override
    public String id() {
      return name();
    }

    @Override
    public Severity severity() {
      return Severity.ERROR;
    }
  }

  @Test
  void whatDiffersInItsSizeAloneIsToldOnce() {
    Findings findings = new Findings();
    for (String size : List.of("L", "S", "M")) {
      findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", size, "at", 2.5);
    }
    assertEquals(
        List.of(Finding.of(Code.FRAYED, PLACE, "edge", "hem", "size", "S, M, L", "at", 2.5)),
        findings.joined("size", SIZES).sorted());
    assertEquals(3, findings.sorted().size());
  }

  @Test
  void everyOtherDifferenceKeepsFindingsApart() {
    Findings findings = new Findings();
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "S");
    findings.add(Code.FRAYED, PLACE, "edge", "side", "size", "M");
    findings.add(Code.TORN, PLACE, "edge", "hem", "size", "M");
    findings.add(Code.FRAYED, Position.ofFile("towel/sizes.csv"), "edge", "hem", "size", "M");
    findings.add(Code.FRAYED, PLACE, "edge", "hem");
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "XL");
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", 2);
    assertEquals(findings.sorted(), findings.joined("size", SIZES).sorted());
  }

  @Test
  void whatWasLeftOutStaysCounted() {
    Findings findings = new Findings();
    for (int i = 0; i < Findings.LIMIT + 7; i++) {
      findings.add(Code.TORN, PLACE, "at", i);
    }
    assertEquals(7, findings.joined("size", SIZES).leftOut());
  }
}
