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
  void whatDiffersInItsSizeAndInNumbersIsToldByTheFirst() {
    Findings findings = new Findings();
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "S", "at", 2.5);
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "M", "at", 3.5);
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "M, lined", "at", 3.5);
    findings.add(Code.FRAYED, PLACE, "edge", "side", "size", "S", "at", 2.5);
    assertEquals(
        List.of(
            Finding.of(Code.FRAYED, PLACE, "edge", "hem", "size", "S and 2 more", "at", 2.5),
            Finding.of(Code.FRAYED, PLACE, "edge", "side", "size", "S", "at", 2.5)),
        findings.joined("size", SIZES).sorted());
  }

  @Test
  void twoPlacesInOneSizeAreToldApart() {
    Findings findings = new Findings();
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "S", "at", 2.5);
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "S", "at", 90);
    findings.add(Code.FRAYED, PLACE, "edge", "hem", "size", "M", "at", 3.5);
    assertEquals(3, findings.joined("size", SIZES).sorted().size());
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
  void severalInEverySizeAreToldOnceEach() {
    Findings findings = new Findings();
    for (String size : SIZES) {
      findings.add(Code.FRAYED, PLACE, "edge", "1" + SIZES.indexOf(size), "size", size);
      findings.add(Code.FRAYED, PLACE, "edge", "2" + SIZES.indexOf(size), "size", size);
    }
    assertEquals(
        List.of("10", "20"),
        findings.joined("size", SIZES).sorted().stream()
            .map(finding -> finding.arguments().get("edge"))
            .sorted()
            .toList());
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
