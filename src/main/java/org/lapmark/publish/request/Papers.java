package org.lapmark.publish.request;

import java.util.List;
import org.lapmark.print.paper.Paper;

/** The papers that can be asked for. */
public final class Papers {
  /** Every paper that documents are made for, in the order in which they are made. */
  public static final List<Paper> USUAL = List.of(Paper.A4, Paper.LETTER, Paper.SHARED);

  /**
   * Every paper that can be asked for: beside those, large sheets and the projector, which have
   * pieces alone.
   */
  public static final List<Paper> ALL =
      List.of(Paper.A4, Paper.LETTER, Paper.SHARED, Paper.A0, Paper.ROLL36, Paper.PROJECTOR);

  private Papers() {}
}
