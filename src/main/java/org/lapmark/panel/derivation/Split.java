package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.lapmark.finding.Known;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.panel.PanelException;

/**
 * One of the two parts of a panel that is split along one of its style lines or fold lines. The new
 * edge is the line; where it doesn't meet a corner, the new corners are called after it, with
 * {@code _start} and {@code _end}. Edges that it cuts keep their names in both parts. Refused when
 * there is no such line, it doesn't part the panel in two, or what is named lies in neither part
 * alone.
 *
 * @param panel the panel
 * @param line the line's name
 * @param keep a corner, edge or chain that lies in the part, and not in the other
 * @param edge the new edge's name
 */
public record Split(Panel panel, String line, String keep, String edge) implements Derivation {
  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    Splitting.Parts parts = Splitting.split(panel, Splitting.edge(edge, line, styleLine()));
    boolean inFirst = has(parts.first());
    boolean inSecond = has(parts.second());
    if (inFirst == inSecond) {
      throw PanelCode.SPLIT_KEEPS_BOTH.exception(
          "panel",
          panel.name(),
          "line",
          line,
          "keep",
          keep,
          "both",
          inFirst ? "yes" : "no",
          "first",
          names(parts.first(), parts.second()),
          "second",
          names(parts.second(), parts.first()));
    }
    List<Edge> part = inFirst ? parts.first() : parts.second();
    Splitting.checkName(panel, part, edge, notices);
    return Splitting.part(name, panel, part, line, notices);
  }

  private Path styleLine() {
    List<String> known = new ArrayList<>();
    for (LineMark mark : panel.marks(LineMark.class)) {
      if (mark.splits() && mark.name().equals(line)) {
        return mark.path();
      }
      if (mark.splits()) {
        known.add(mark.name());
      }
    }
    throw PanelCode.STYLE_LINE_UNKNOWN.exception(
        "panel", panel.name(), "line", line, "lines", Known.listed(known));
  }

  private boolean has(List<Edge> part) {
    List<String> members = panel.chains().getOrDefault(keep, List.of(keep));
    // The new edge is the last of both parts, and isn't what is meant even if it is called so.
    return part.stream().anyMatch(one -> one.from().equals(keep))
        || part.subList(0, part.size() - 1).stream().anyMatch(one -> members.contains(one.name()));
  }

  /** What a part has and the other hasn't. */
  private String names(List<Edge> part, List<Edge> other) {
    List<String> names = new ArrayList<>();
    for (Edge one : part) {
      for (String name : List.of(one.from(), one.name())) {
        boolean both =
            other.stream().anyMatch(its -> its.from().equals(name) || its.name().equals(name));
        if (!both && !name.equals(edge)) {
          names.add(name);
        }
      }
    }
    return Known.listed(names);
  }
}
