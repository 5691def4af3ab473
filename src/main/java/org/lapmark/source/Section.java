package org.lapmark.source;

import java.util.ArrayList;
import java.util.List;

/** The keys that each kind of map may have: the one place where they are listed. */
enum Section {
  /** The top of {@code pattern.yaml}. */
  PATTERN(
      List.of("format", "title", "studio", "language", "edition", "materials", "panels", "pieces"),
      List.of(
          "designer",
          "summary",
          "copyright",
          "units",
          "rounding",
          "options",
          "forbidden",
          "hardware",
          "measures",
          "finished",
          "seams",
          "making",
          "tools",
          "use")),
  /** Something that can be chosen. */
  OPTION(List.of("label", "default"), List.of("choices", "text")),
  /** A combination that can't be made. */
  FORBIDDEN(List.of("when", "reason"), List.of()),
  /** A measure with more than its formula. */
  MEASURE(List.of(), List.of("value", "solve", "from", "to", "tolerance", "when")),
  /** What a maker should know before she begins. */
  MAKING(List.of(), List.of("skill", "time", "machine", "needle", "thread", "stitches")),
  /** A tool. */
  TOOL(List.of("name"), List.of("hazards", "when")),
  /** How the finished article is used. */
  USE(List.of(), List.of("load_limit", "hazards")),
  /** How values are rounded. */
  ROUNDING(List.of(), List.of("metric", "inch")),
  /** A published state. */
  EDITION(List.of("name", "date"), List.of("note")),
  /** A cloth or the like. */
  MATERIAL(
      List.of("name"),
      List.of(
          "usable_width",
          "other_width",
          "selvedge_margin",
          "margin",
          "thickness",
          "shrinkage",
          "repeat",
          "nap",
          "no_grain",
          "no_fray",
          "no_iron",
          "texture",
          "substitute",
          "buying",
          "hazards",
          "when")),
  /** A zip, a cord, a ring or the like. */
  HARDWARE(
      List.of("name"),
      List.of(
          "visible_width",
          "tape_width",
          "stock_lengths",
          "inner_width",
          "diameter",
          "width",
          "length",
          "thickness",
          "quantity",
          "substitute",
          "buying",
          "hazards",
          "when")),
  /** A row of the finished measurements. */
  FINISHED(List.of("label", "value"), List.of("when")),
  /** A panel. */
  PANEL(
      List.of(),
      List.of(
          "drawing", "scale", "rectangle", "strip", "inset", "edges", "chains", "notches", "when")),
  /** What a fixed drawing is scaled to. */
  SCALE(List.of(), List.of("width", "height")),
  /** A stated rectangle. */
  RECTANGLE(List.of("width", "height"), List.of()),
  /** A stated strip. */
  STRIP(List.of("length", "width"), List.of("bias")),
  /** A panel derived from another. */
  INSET(List.of("panel", "distance"), List.of()),
  /** A notch. */
  NOTCH(List.of("edge", "at"), List.of("count", "when")),
  /** A piece. */
  PIECE(List.of("number", "name", "panel", "cut"), List.of("allowance", "edge_allowances", "when")),
  /** An edge's own allowance with more than its formula. */
  EDGE_ALLOWANCE(List.of("allowance"), List.of("when")),
  /** How many of a piece are cut from one material. */
  CUT(List.of("material", "count"), List.of("reversed", "when")),
  /** A seam. */
  SEAM(List.of("sides"), List.of("ease", "tolerance", "when")),
  /** A step's front matter. */
  STEP(List.of("id", "title", "stage"), List.of("uses", "when"));

  private final List<String> required;
  private final List<String> known;

  Section(List<String> required, List<String> optional) {
    this.required = required;
    List<String> all = new ArrayList<>(required);
    all.addAll(optional);
    this.known = List.copyOf(all);
  }

  /** The keys that have to be there. */
  List<String> required() {
    return required;
  }

  /** All keys, the required ones first. */
  List<String> known() {
    return known;
  }
}
