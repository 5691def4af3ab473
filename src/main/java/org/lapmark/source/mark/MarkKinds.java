package org.lapmark.source.mark;

import java.util.List;
import java.util.Optional;
import org.lapmark.source.drawing.Role;

/** All kinds of marks. */
public final class MarkKinds {
  /** In the order in which hints list them. */
  public static final List<MarkKind> ALL =
      List.of(
          new DartKind(),
          new PleatKind(),
          new ButtonholeKind(),
          new DrillKind(),
          new PlacementKind(),
          new FoldKind(),
          new MatchKind());

  private MarkKinds() {}

  /** The kind for which a role stands in drawings. */
  public static Optional<MarkKind> of(Role role) {
    return ALL.stream().filter(kind -> kind.role() == role).findFirst();
  }

  /** What marks of a name may be called in drawings. */
  public static List<String> ids(String name) {
    return ALL.stream().map(kind -> kind.role().id(name)).toList();
  }
}
