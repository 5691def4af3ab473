package org.lapmark.print.join;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the marks of joins stand that have their places, upright and turned end for end, kept by
 * their places: of a large piece's hundreds of joins only those nearby are compared.
 */
final class TakenPlaces {
  private final Map<Nearby, List<Marks>> taken = new LinkedHashMap<>();

  /** Marks alike in number and outline, whose first places lie in one stretch. */
  private record Nearby(int count, JoinMark.Form form, long first) {}

  /**
   * The marks of one join.
   *
   * @param form their outline
   * @param length the join's length
   * @param places millimetres from its left or upper end, ascending
   */
  record Marks(JoinMark.Form form, double length, double[] places) {
    static Marks of(List<JoinMark> marks) {
      return new Marks(
          marks.get(0).form(),
          marks.get(0).join().length(),
          marks.stream().mapToDouble(JoinMark::along).sorted().toArray());
    }

    /** The same on a page that is turned end for end. */
    Marks turned() {
      double[] put = new double[places.length];
      for (int i = 0; i < put.length; i++) {
        put[i] = length - places[put.length - 1 - i];
      }
      return new Marks(form, length, put);
    }

    /** Whether they seem to belong to others when the pages are put together. */
    boolean meet(Marks other) {
      if (form != other.form
          || places.length != other.places.length
          || Math.abs(length - other.length) >= 2 * JoinMarks.APART) {
        return false;
      }
      for (int i = 0; i < places.length; i++) {
        if (Math.abs(places[i] - other.places[i]) >= JoinMarks.APART) {
          return false;
        }
      }
      return true;
    }

    private Nearby nearby(int beside) {
      return new Nearby(
          places.length, form, (long) Math.floor(places[0] / JoinMarks.APART) + beside);
    }
  }

  void add(Marks marks) {
    for (Marks way : List.of(marks, marks.turned())) {
      taken.computeIfAbsent(way.nearby(0), key -> new ArrayList<>()).add(way);
    }
  }

  /** Whether marks meet any that are there, or themselves when a page is turned. */
  boolean meet(Marks marks) {
    if (marks.meet(marks.turned())) {
      return true;
    }
    for (int beside = -1; beside <= 1; beside++) {
      if (taken.getOrDefault(marks.nearby(beside), List.of()).stream().anyMatch(marks::meet)) {
        return true;
      }
    }
    return false;
  }
}
