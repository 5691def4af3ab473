package org.lapmark.publish.output;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.Position;
import org.lapmark.finding.Severity;
import org.lapmark.source.SourceCode;

class ToldBeforeTest {
  private static final FindingCode CODE = SourceCode.values()[0];

  private static Optional<ToldBefore> again(List<String> lines) {
    Optional<ToldBefore> told = Optional.of(ToldBefore.NOTHING);
    for (String line : lines) {
      told = told.flatMap(before -> before.with(line));
    }
    return told;
  }

  @Property(tries = 200)
  void whatWasWrittenIsRead(
      @ForAll String text,
      @ForAll String name,
      @ForAll int whole,
      @ForAll double real,
      @ForAll @IntRange(min = 0) int line) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    arguments.put("text", text);
    arguments.put(name + "1", whole);
    arguments.put(name + "2", (long) whole << 20);
    arguments.put(name + "3", real);
    Finding finding = new Finding(CODE, new Position(name, line, line, 1, text), arguments);
    ToldBefore told = new ToldBefore(List.of(finding, finding), List.of(text));
    assertTrue(told.isWritable());
    assertTrue(told.lines().stream().noneMatch(each -> each.contains("\n")));
    assertEquals(Optional.of(told), again(told.lines()));
  }

  @Test
  void whatMakesNoSenseIsNotRead() {
    String sound = new ToldBefore(List.of(finding(CODE)), List.of()).lines().get(0);
    assertTrue(again(List.of(sound)).isPresent());
    for (String line :
        List.of(
            "",
            "said\tno walk",
            "omitted\tone\ttwo",
            sound + "\tname",
            sound + "\tname\tFRACTION\t1",
            sound + "\tname\tWHOLE\tmany",
            sound.replace(SourceCode.class.getName(), Severity.class.getName()),
            sound.replace(SourceCode.class.getName(), "java.lang.Runtime"),
            sound.replace(SourceCode.class.getName(), "no.such.Code"),
            sound.replace(((Enum<?>) CODE).name(), "NONE_SUCH"),
            sound.replace("\t3\t", "\t-3\t"))) {
      assertEquals(Optional.empty(), again(List.of(line)), line);
    }
  }

  @Test
  void aCodeThatIsNoConstantIsNotRemembered() {
    FindingCode strange =
        new FindingCode() {
          @Override
          public String name() {
            return "STRANGE";
          }

          @Override
          public Severity severity() {
            return Severity.WARNING;
          }
        };
    assertFalse(new ToldBefore(List.of(finding(strange)), List.of()).isWritable());
  }

  private static Finding finding(FindingCode code) {
    return new Finding(code, new Position("tag/pattern.yaml", 3, 5, 4, "a: b"), Map.of());
  }
}
