package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.figure.ink.Beside;
import org.lapmark.figure.ink.Canvas;
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
    List<Room> rooms = new ArrayList<>();
    for (PosedBody lying : all) {
      Affine facing = Affine.scaling(scale, scale).after(lying.pose());
      rooms.add(new Room(lying.body().outline().transformed(facing).bounds(), 0, 0));
    }
    return lay(all, rooms, scale);
  }

  /** Where workpieces lie on paper at a scale, with room for what hangs out and stands beside. */
  List<PlacedBody> lay(List<Workpiece> all, Canvas canvas, double scale) {
    List<Room> rooms = new ArrayList<>();
    for (Workpiece one : all) {
      Affine facing = Affine.scaling(scale, scale).after(one.lying().pose());
      rooms.add(
          new Room(
              one.box(facing),
              one.room(this == ROW ? Beside.LEFT : Beside.ABOVE, canvas),
              one.room(this == ROW ? Beside.RIGHT : Beside.BELOW, canvas)));
    }
    return lay(all.stream().map(Workpiece::lying).toList(), rooms, scale);
  }

  /** What something takes up, and how much more before and behind it in the arrangement's way. */
  private record Room(Box box, double before, double behind) {}

  private List<PlacedBody> lay(List<PosedBody> all, List<Room> rooms, double scale) {
    List<PlacedBody> laid = new ArrayList<>();
    double x = 0;
    double y = 0;
    double behind = 0;
    for (int i = 0; i < all.size(); i++) {
      PosedBody lying = all.get(i);
      Room room = rooms.get(i);
      Affine facing = Affine.scaling(scale, scale).after(lying.pose());
      Box shape = lying.body().outline().transformed(facing).bounds();
      Box box = this == JOINED ? shape : room.box;
      if (i > 0) {
        x += Math.max(ROW_GAP, behind + room.before);
        y += this == JOINED ? 0 : Math.max(COLUMN_GAP, behind + room.before);
      }
      behind = room.behind;
      if (this == JOINED) {
        double inset = lying.body().covered() * scale;
        box = new Box(box.minX(), box.minY() + inset, box.maxX(), box.maxY() - inset);
      }
      Point to =
          this == ROW
              ? new Point(x - box.minX(), -shape.centre().y())
              : new Point(-shape.centre().x(), y - box.minY());
      laid.add(new PlacedBody(lying, Affine.translation(to.x(), to.y()).after(facing)));
      x += box.width();
      y += box.height();
    }
    return laid;
  }
}
