package org.lapmark.grade;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Combinations of choices, some of which aren't allowed. The order is fixed: the first choices of
 * all come first, and the last slot's choice changes fastest.
 */
final class Combinations {
  /** How many combinations are tried to bring one pair of choices about. */
  static final int MOST_TRIES = 512;

  /** How many combinations are tried in all. */
  static final int MOST_TRIES_IN_ALL = 20_000;

  private final List<Slot> slots;
  private final Predicate<SortedMap<String, String>> allowed;
  private final boolean[][][][] met;
  private int tries;
  private int triesInAll;

  /**
   * Something to choose.
   *
   * @param name its name
   * @param choices what it is chosen from, the usual choice first
   */
  record Slot(String name, List<String> choices) {
    Slot {
      choices = List.copyOf(choices);
    }
  }

  /**
   * Prepares combinations.
   *
   * @param slots what is chosen
   * @param allowed whether a choice for every slot can be made; asked in a fixed order
   */
  Combinations(List<Slot> slots, Predicate<SortedMap<String, String>> allowed) {
    this.slots = List.copyOf(slots);
    this.allowed = allowed;
    this.met = new boolean[slots.size()][slots.size()][][];
    for (int i = 0; i < slots.size(); i++) {
      for (int j = i + 1; j < slots.size(); j++) {
        met[i][j] = new boolean[choices(i)][choices(j)];
      }
    }
  }

  private int choices(int slot) {
    return slots.get(slot).choices().size();
  }

  /** How many combinations there are, forbidden ones included; a large number for very many. */
  long count() {
    long count = 1;
    for (Slot slot : slots) {
      count = Math.min(1L << 40, count * slot.choices().size());
    }
    return count;
  }

  /** Every combination that is allowed. */
  List<SortedMap<String, String>> all() {
    List<SortedMap<String, String>> all = new ArrayList<>();
    for (long n = 0; n < count(); n++) {
      int[] chosen = new int[slots.size()];
      long rest = n;
      for (int i = chosen.length - 1; i >= 0; i--) {
        chosen[i] = (int) (rest % choices(i));
        rest /= choices(i);
      }
      add(chosen, all);
    }
    return all;
  }

  /**
   * So many combinations that every two choices of different slots that can meet do so in one of
   * them, as far as {@link #MOST_TRIES} combinations of the others show that they can. The usual
   * choices come first where they are allowed.
   */
  List<SortedMap<String, String>> pairs() {
    List<SortedMap<String, String>> some = new ArrayList<>();
    add(new int[slots.size()], some);
    for (int i = 0; i < slots.size(); i++) {
      for (int j = i + 1; j < slots.size(); j++) {
        for (int a = 0; a < choices(i); a++) {
          for (int b = 0; b < choices(j); b++) {
            if (!met[i][j][a][b] && triesInAll < MOST_TRIES_IN_ALL) {
              int[] chosen = new int[slots.size()];
              Arrays.fill(chosen, -1);
              chosen[i] = a;
              chosen[j] = b;
              tries = 0;
              complete(chosen, 0, some);
            }
          }
        }
      }
    }
    return some;
  }

  /** Chooses for the slots that are open, first whatever lets most new pairs meet. */
  private boolean complete(int[] chosen, int from, List<SortedMap<String, String>> some) {
    int slot = from;
    while (slot < chosen.length && chosen[slot] >= 0) {
      slot++;
    }
    if (slot == chosen.length) {
      tries++;
      triesInAll++;
      return add(chosen, some);
    }
    for (int choice : byGain(chosen, slot)) {
      chosen[slot] = choice;
      if (complete(chosen, slot + 1, some)) {
        return true;
      }
      if (tries >= MOST_TRIES) {
        break;
      }
    }
    chosen[slot] = -1;
    return false;
  }

  private List<Integer> byGain(int[] chosen, int slot) {
    int[] gain = new int[choices(slot)];
    List<Integer> order = new ArrayList<>();
    for (int choice = 0; choice < gain.length; choice++) {
      order.add(choice);
      for (int other = 0; other < chosen.length; other++) {
        if (other != slot && chosen[other] >= 0 && !hasMet(slot, choice, other, chosen[other])) {
          gain[choice]++;
        }
      }
    }
    // The sort is stable: of equal gains the usual choice comes first.
    order.sort((one, another) -> Integer.compare(gain[another], gain[one]));
    return order;
  }

  private boolean hasMet(int slot, int choice, int other, int otherChoice) {
    return slot < other
        ? met[slot][other][choice][otherChoice]
        : met[other][slot][otherChoice][choice];
  }

  private boolean add(int[] chosen, List<SortedMap<String, String>> all) {
    SortedMap<String, String> choices = new TreeMap<>();
    for (int i = 0; i < chosen.length; i++) {
      choices.put(slots.get(i).name(), slots.get(i).choices().get(chosen[i]));
    }
    if (!allowed.test(choices)) {
      return false;
    }
    all.add(choices);
    for (int i = 0; i < chosen.length; i++) {
      for (int j = i + 1; j < chosen.length; j++) {
        met[i][j][chosen[i]][chosen[j]] = true;
      }
    }
    return true;
  }
}
