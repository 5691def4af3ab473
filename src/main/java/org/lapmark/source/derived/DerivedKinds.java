package org.lapmark.source.derived;

import java.util.List;

/** All kinds of derivations. */
public final class DerivedKinds {
  /** In the order in which hints list them. */
  public static final List<DerivedKind> ALL =
      List.of(
          BesideSource.INSET,
          BesideSource.OUTSET,
          MirrorSource.MIRROR,
          UnfoldSource.UNFOLD,
          FoldSource.FOLD,
          SplitSource.SPLIT,
          MergeSource.MERGE,
          FacingSource.FACING,
          BesideSource.LINING);

  private DerivedKinds() {}
}
