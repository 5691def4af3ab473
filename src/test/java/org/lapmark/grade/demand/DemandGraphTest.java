package org.lapmark.grade.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph.Unavailable;

class DemandGraphTest {
  private static final Position PLACE =
      SourceText.verbatim(new SourceFile("pattern.yaml", "place"), 0, 5).position();

  private final Findings findings = new Findings();
  private final DemandGraph graph = new DemandGraph(findings);
  private final List<String> computed = new ArrayList<>();

  private record Number(String named) implements Node<Integer> {}

  private record Word(String named) implements Node<String> {}

  private static Fact fact(String row) {
    return new Fact.Cell(row, "M");
  }

  private int number(DemandGraph in, String name, Supplier<Integer> how) {
    return in.demand(
        new Number(name),
        PLACE,
        () -> {
          computed.add(name);
          return how.get();
        });
  }

  private int stated(DemandGraph in, String name, int value) {
    return number(
        in,
        name,
        () -> {
          in.note(fact(name));
          return value;
        });
  }

  private static FindingException fault() {
    return new FindingException(Finding.of(GradeCode.WHEN_ALWAYS, PLACE));
  }

  private static Set<Fact> facts(String... rows) {
    Set<Fact> facts = new LinkedHashSet<>();
    for (String row : rows) {
      facts.add(fact(row));
    }
    return facts;
  }

  @Test
  void computesOnceAndTellsKindsApart() {
    assertEquals(3, stated(graph, "a", 3));
    assertEquals(3, stated(graph, "a", 4));
    assertEquals("three", graph.demand(new Word("a"), PLACE, () -> "three"));
    assertEquals(List.of("a"), computed);
  }

  @Test
  void knowsWhatAValueCameFromThroughOthersAlsoWhereTheyWereKnownBefore() {
    stated(graph, "a", 1);
    number(graph, "c", () -> stated(graph, "a", 1) + number(graph, "b", () -> 1));
    number(graph, "d", () -> number(graph, "c", () -> 0) + stated(graph, "e", 1));
    assertEquals(facts("a"), graph.dependencies(new Number("c")));
    assertEquals(facts("a", "e"), graph.dependencies(new Number("d")));
    assertEquals(Set.of(), graph.dependencies(new Number("b")));
    assertEquals(Set.of(), graph.dependencies(new Number("never asked for")));
  }

  @Test
  void aFailureIsReportedOnceAndWhoDependsOnItKnowsWhy() {
    Supplier<Integer> failing =
        () -> {
          graph.note(fact("a"));
          throw fault();
        };
    for (int i = 0; i < 2; i++) {
      Unavailable above =
          assertThrows(
              Unavailable.class,
              () -> number(graph, "above", () -> number(graph, "failing", failing)));
      assertEquals(List.of(fault().finding()), above.causes());
    }
    assertEquals(List.of(fault().finding()), findings.sorted());
    assertEquals(List.of("above", "failing"), computed);
    assertEquals(facts("a"), graph.dependencies(new Number("above")));
  }

  @Test
  void aCycleIsNamedInFullAndAllInItDependOnAllOfIt() {
    assertThrows(Unavailable.class, () -> number(graph, "outside", this::first));
    assertEquals(1, findings.sorted().size());
    Finding cycle = findings.sorted().get(0);
    assertEquals(GradeCode.VALUE_CYCLE, cycle.code());
    assertEquals("first → second → first", cycle.arguments().get("cycle"));
    assertEquals(facts("x", "y"), Set.copyOf(graph.dependencies(new Number("first"))));
    assertEquals(facts("x", "y"), Set.copyOf(graph.dependencies(new Number("second"))));
    assertThrows(Unavailable.class, this::second);
    assertEquals(1, findings.sorted().size());
  }

  private int first() {
    return number(
        graph,
        "first",
        () -> {
          graph.note(fact("x"));
          return second();
        });
  }

  private int second() {
    return number(
        graph,
        "second",
        () -> {
          graph.note(fact("y"));
          return first();
        });
  }

  @Test
  void aRowOfTooManyEndsBeforeTheStackDoes() {
    assertThrows(Unavailable.class, () -> deep(0));
    assertEquals(GradeCode.VALUE_TOO_DEEP, findings.sorted().get(0).code());
    assertEquals(DemandGraph.MOST_UNDER_WAY, computed.size());
  }

  private int deep(int level) {
    return number(graph, "level " + level, () -> deep(level + 1));
  }

  @Test
  void trialsKeepWhatDoesNotDependOnWhatIsTriedAndWhoAskedForThemDependsOnAll() {
    number(
        graph,
        "sought",
        () -> {
          DemandGraph.Kept kept = new DemandGraph.Kept();
          int sum = 0;
          for (int trial = 0; trial < 3; trial++) {
            sum += tried(graph.trial(new Findings(), kept), trial);
          }
          return sum;
        });
    assertEquals(
        List.of("sought", "tried", "free", "half", "tried", "half", "tried", "half"), computed);
    assertEquals(facts("free", "half"), graph.dependencies(new Number("sought")));
    assertEquals(Set.of(), graph.dependencies(new Number("free")));
  }

  private int tried(DemandGraph trial, int value) {
    return number(
        trial,
        "tried",
        () ->
            stated(trial, "free", 1)
                + number(
                    trial,
                    "half",
                    () -> {
                      trial.touch();
                      trial.note(fact("half"));
                      return value;
                    }));
  }

  @Test
  void aFailureThatDependsOnWhatIsTriedIsNoneInTheNextTrialWhoeverAsks() {
    DemandGraph.Kept kept = new DemandGraph.Kept();
    for (int value = 0; value < 2; value++) {
      DemandGraph trial = graph.trial(new Findings(), kept);
      int tried = value;
      Supplier<Integer> half =
          () -> {
            trial.touch();
            if (tried == 0) {
              throw fault();
            }
            return 7;
          };
      for (String asking : List.of("one", "other")) {
        Supplier<Integer> ask = () -> number(trial, asking, () -> number(trial, "half", half));
        if (tried == 0) {
          assertThrows(Unavailable.class, ask::get);
        } else {
          assertEquals(7, ask.get());
        }
      }
    }
    assertTrue(findings.sorted().isEmpty());
  }
}
