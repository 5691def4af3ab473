package org.lapmark.publish.request;

import java.util.List;
import org.lapmark.print.paper.Paper;

/** The papers that can be asked for. */
public final class Papers {
  /** Every paper that documents are made for, in the order in which they are made. */
  public static final List<Paper> USUAL = Paper.ALL.stream().filter(Paper::usual).toList();

  /**
   * Every paper that can be asked for: beside those, large sheets and the projector, which have
   * pieces alone.
   */
  public static final List<Paper> ALL = Paper.ALL;

  private Papers() {}

  /** Names those that are read, as in ‘a4, letter or shared’. */
  static String readable() {
    List<String> names = ALL.stream().filter(Paper::readable).map(Paper::id).toList();
    int last = names.size() - 1;
    return String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }
}
