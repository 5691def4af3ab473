package org.lapmark.panel.derivation;

import org.lapmark.panel.Intake;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.PointMark;

/** What is said of a mark that a derived panel doesn't have. */
final class LeftOut implements Mark.Placing<PanelException> {
  private final Panel panel;
  private final boolean withEdge;

  private LeftOut(Panel panel, boolean withEdge) {
    this.panel = panel;
    this.withEdge = withEdge;
  }

  /**
   * The notice.
   *
   * @param panel the panel that has the mark
   * @param withEdge whether the derived panel doesn't have the mark's edge either
   */
  static PanelException of(Panel panel, Mark mark, boolean withEdge) {
    return mark.place(new LeftOut(panel, withEdge));
  }

  private PanelException leftOut(String kind, String name) {
    return PanelCode.MARK_LEFT_OUT.exception("panel", panel.name(), "kind", kind, "name", name);
  }

  @Override
  public PanelException notch(Mark.Notch notch) {
    return leftOut(notch.kindName(), notch.edge());
  }

  @Override
  public PanelException intake(Intake intake) {
    return PanelCode.INTAKE_LEFT_OUT.exception(
        "panel",
        panel.name(),
        "mark",
        intake.name(),
        "edge",
        intake.edge(),
        "gone",
        withEdge ? "yes" : "no",
        "width",
        intake.width());
  }

  @Override
  public PanelException point(PointMark mark) {
    return leftOut(mark.kindName(), mark.name());
  }

  @Override
  public PanelException line(LineMark line) {
    return leftOut("line", line.name());
  }

  @Override
  public PanelException grainline(Mark.Grainline grain) {
    return leftOut("line", "");
  }
}
