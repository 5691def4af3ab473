package org.lapmark.seam;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One side of a seam: parts end to end in the order of sewing, what is caught on it, and the layers
 * basted to it that act with it as one.
 *
 * @param name what the side is called; empty if nothing
 * @param parts the parts, at least one
 * @param tabs what is caught in the seam on this side
 * @param ease how much longer than the seam it is meant to be, in millimetres; below 0 when it is
 *     stretched
 * @param basted further layers; each is meant to be as long as the side
 */
public record SeamSide(
    String name, List<SeamPart> parts, List<Tab> tabs, double ease, List<SeamSide> basted) {
  /** Copies the lists. */
  public SeamSide {
    parts = List.copyOf(parts);
    tabs = List.copyOf(tabs);
    basted = List.copyOf(basted);
  }

  /**
   * Something caught in the seam.
   *
   * @param name as written
   * @param width millimetres
   * @param at where its middle lies, in millimetres from the seam's start
   */
  public record Tab(String name, double width, double at) {}

  /**
   * A side without name, tabs, ease and further layers.
   *
   * @param parts the parts
   * @return the side
   */
  public static SeamSide of(List<SeamPart> parts) {
    return new SeamSide("", parts, List.of(), 0, List.of());
  }

  /**
   * How long it is.
   *
   * @return millimetres along the stitching line
   */
  public double length() {
    double sum = 0;
    for (SeamPart part : parts) {
      sum += part.length();
    }
    return sum;
  }

  /**
   * Its parts as written.
   *
   * @return their names in the order of sewing; a part in which a ring starts is named once, where
   *     the ring starts
   */
  public List<String> members() {
    SeamPart first = parts.get(0);
    SeamPart last = parts.get(parts.size() - 1);
    boolean cut = parts.size() > 1 && last.name().equals(first.name()) && last.continuesInto(first);
    return parts.subList(0, parts.size() - (cut ? 1 : 0)).stream().map(SeamPart::name).toList();
  }

  /**
   * Its seam allowances.
   *
   * @return each once, ascending
   */
  public List<Double> allowances() {
    return parts.stream().flatMap(part -> part.allowances().stream()).distinct().sorted().toList();
  }

  /**
   * The same ring started elsewhere. Places of tabs aren't moved: they count from the seam's start.
   *
   * @param from millimetres from the beginning of the first part; any number, taken round the ring
   * @return the side; a part that was cut stands at both ends
   */
  public SeamSide startingAt(double from) {
    double whole = length();
    if (!(whole > 0)) {
      return this;
    }
    double left = from - whole * Math.floor(from / whole);
    List<SeamPart> ahead = new ArrayList<>();
    List<SeamPart> behind = new ArrayList<>();
    for (SeamPart part : parts) {
      if (left <= 1e-9) {
        ahead.add(part);
      } else if (left >= part.length() - 1e-9) {
        behind.add(part);
      } else {
        behind.add(part.stretch(0, left));
        ahead.add(part.stretch(left, part.length()));
      }
      left = Math.max(0, left - part.length());
    }
    ahead.addAll(behind);
    return new SeamSide(name, ahead, tabs, ease, basted);
  }

  /**
   * The same side sewn from its other end.
   *
   * @return the side
   */
  public SeamSide reversed() {
    double whole = length();
    List<SeamPart> backwards = new ArrayList<>();
    for (int i = parts.size() - 1; i >= 0; i--) {
      // What is stated for the beginning of a part belongs to the join, so it goes with the join.
      int join = i + 1 < parts.size() ? parts.get(i + 1).joinNotches() : parts.get(0).joinNotches();
      SeamPart part = parts.get(i).reversed();
      backwards.add(
          new SeamPart(
              part.panel(),
              part.name(),
              part.path(),
              part.clockwise(),
              part.length(),
              part.allowances(),
              part.notches(),
              join,
              part.folds(),
              part.margins()));
    }
    List<Tab> turned = new ArrayList<>();
    for (int i = tabs.size() - 1; i >= 0; i--) {
      Tab tab = tabs.get(i);
      turned.add(new Tab(tab.name(), tab.width(), whole - tab.at()));
    }
    return new SeamSide(
        name, backwards, turned, ease, basted.stream().map(SeamSide::reversed).toList());
  }

  /**
   * Where it turns sharply within one panel, in the order of sewing. What turns where two panels
   * are joined doesn't count: how it lies there is for the join.
   *
   * @param closed whether the seam is a ring
   * @return the corners
   */
  public List<SeamCorner> corners(boolean closed) {
    List<SeamCorner> corners = new ArrayList<>();
    double at = 0;
    for (int i = 0; i < parts.size(); i++) {
      SeamPart part = parts.get(i);
      SeamPart before = i > 0 ? parts.get(i - 1) : closed ? parts.get(parts.size() - 1) : null;
      if (before != null && before.continuesInto(part)) {
        SeamCorner corner = new SeamCorner(at, before.turnInto(part), part.name());
        if (corner.isSharp()) {
          corners.add(corner);
        }
      }
      for (SeamCorner corner : part.corners()) {
        corners.add(new SeamCorner(at + corner.at(), corner.turn(), corner.name()));
      }
      at += part.length();
    }
    return corners;
  }

  /**
   * The places by which it is matched, in the order of sewing.
   *
   * @param closed whether the seam is a ring; then a place just before its end counts as one just
   *     before its start, below 0
   * @return notches, joins of different parts, closed darts and pleats, tabs, and sharp corners
   */
  public List<SeamMark> marks(boolean closed) {
    List<SeamMark> marks = new ArrayList<>();
    double whole = length();
    double at = 0;
    for (int i = 0; i < parts.size(); i++) {
      SeamPart part = parts.get(i);
      SeamPart before = i > 0 ? parts.get(i - 1) : closed ? parts.get(parts.size() - 1) : null;
      if (before != null && !before.continuesInto(part)) {
        marks.add(new SeamMark(SeamMark.Kind.JOIN, at, part.joinNotches(), part.name()));
      }
      for (SeamPart.Notch notch : part.notches()) {
        double place = at + notch.at();
        boolean first = closed && place > whole - NotchMatching.COINCIDE;
        marks.add(
            new SeamMark(
                SeamMark.Kind.NOTCH, first ? place - whole : place, notch.set(), part.name()));
      }
      for (double closing : part.folds().map(SeamPart.Folds::at).orElse(List.of())) {
        marks.add(new SeamMark(SeamMark.Kind.DART, at + closing, 1, part.name()));
      }
      at += part.length();
    }
    for (SeamCorner corner : corners(closed)) {
      marks.add(new SeamMark(SeamMark.Kind.CORNER, corner.at(), 1, corner.name()));
    }
    for (Tab tab : tabs) {
      marks.add(new SeamMark(SeamMark.Kind.TAB, tab.at(), 1, tab.name()));
    }
    // An edge's last notch and the next edge's first may be one and the same.
    List<SeamMark> distinct = new ArrayList<>();
    marks.sort(Comparator.comparingDouble(SeamMark::at).thenComparing(SeamMark::kind));
    for (SeamMark mark : marks) {
      boolean known =
          distinct.stream()
              .anyMatch(
                  other -> other.kind() == mark.kind() && Math.abs(other.at() - mark.at()) <= 1e-6);
      if (!known) {
        distinct.add(mark);
      }
    }
    return List.copyOf(distinct);
  }
}
