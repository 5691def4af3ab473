package org.lapmark.grade;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.function.Predicate;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class CombinationsTest {
  private static List<Combinations.Slot> slots(List<Integer> sizes) {
    List<Combinations.Slot> slots = new ArrayList<>();
    for (int size : sizes) {
      List<String> choices = new ArrayList<>();
      for (int i = 0; i < size; i++) {
        choices.add("c" + i);
      }
      slots.add(new Combinations.Slot("s" + (char) ('a' + slots.size()), choices));
    }
    return slots;
  }

  @Property(tries = 100)
  void everyTwoChoicesMeet(
      @ForAll @Size(min = 2, max = 7) List<@IntRange(min = 2, max = 5) Integer> sizes) {
    List<Combinations.Slot> slots = slots(sizes);
    meetAllThatCan(slots, one -> true);
  }

  @Property(tries = 100)
  void everyTwoChoicesMeetThatCan(
      @ForAll @Size(min = 3, max = 6) List<@IntRange(min = 2, max = 3) Integer> sizes,
      @ForAll @IntRange(min = 1, max = 1000) int seed) {
    // Forbids about a third of all combinations, always the same ones.
    meetAllThatCan(slots(sizes), one -> Math.floorMod(one.toString().hashCode() * seed, 97) > 32);
  }

  private static void meetAllThatCan(
      List<Combinations.Slot> slots, Predicate<SortedMap<String, String>> allowed) {
    List<SortedMap<String, String>> all = new Combinations(slots, allowed).all();
    List<SortedMap<String, String>> some = new Combinations(slots, allowed).pairs();
    assertTrue(all.containsAll(some));
    for (int i = 0; i < slots.size(); i++) {
      for (int j = i + 1; j < slots.size(); j++) {
        for (String a : slots.get(i).choices()) {
          for (String b : slots.get(j).choices()) {
            String one = slots.get(i).name();
            String other = slots.get(j).name();
            Predicate<SortedMap<String, String>> meets =
                row -> row.get(one).equals(a) && row.get(other).equals(b);
            assertEquals(all.stream().anyMatch(meets), some.stream().anyMatch(meets));
          }
        }
      }
    }
  }

  @Test
  void fewCombinationsAreEnoughForPairs() {
    List<SortedMap<String, String>> some =
        new Combinations(slots(Collections.nCopies(24, 2)), one -> true).pairs();
    assertTrue(some.size() <= 24, some.size() + " combinations");
    assertEquals("c0", some.get(0).get("sa"));
  }

  @Test
  void theUsualComesFirstAndForbiddenOnesNever() {
    Combinations combinations =
        new Combinations(slots(List.of(2, 3)), one -> !one.get("sb").equals("c1"));
    List<SortedMap<String, String>> all = combinations.all();
    assertEquals(4, all.size());
    assertEquals("{sa=c0, sb=c0}", all.get(0).toString());
    assertEquals("{sa=c0, sb=c2}", all.get(1).toString());
    assertFalse(all.stream().anyMatch(one -> one.get("sb").equals("c1")));
  }

  @Test
  void nothingToChooseIsOneCombination() {
    assertEquals(1, new Combinations(List.of(), one -> true).all().size());
  }
}
