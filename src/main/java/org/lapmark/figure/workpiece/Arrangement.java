package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Point;

/** How pieces lie to each other. */
public enum Arrangement {
  ROW,
  COLUMN,
  JOINED;

  private static final double ROW_GAP = 16;
  private static final double COLUMN_GAP = 11;

  /** Whether one lies under those that are joined to it. */
  boolean isUnder(PlacedBody laid) {
    return this == JOINED && laid.lying().body().liesUnder();
  }

  /** Where things lie on paper at a scale. */
  public List<PlacedBody> lay(List<PosedBody> all, double scale) {
    List<PlacedBody> laid = new ArrayList<>();
    double x = 0;
    double y = 0;
    for (PosedBody lying : all) {
      Affine facing = Affine.scaling(scale, scale).after(lying.pose());
      Box box = lying.body().outline().transformed(facing).bounds();
      if (this == JOINED) {
        double inset = lying.body().covered() * scale;
        box = new Box(box.minX(), box.minY() + inset, box.maxX(), box.maxY() - inset);
      }
      Point to =
          this == ROW
              ? new Point(x - box.minX(), -box.centre().y())
              : new Point(-box.centre().x(), y - box.minY());
      laid.add(new PlacedBody(lying, Affine.translation(to.x(), to.y()).after(facing)));
      x += box.width() + ROW_GAP;
      y += box.height() + (this == JOINED ? 0 : COLUMN_GAP);
    }
    return laid;
  }
}
