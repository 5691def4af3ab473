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
          "hardware",
          "measures",
          "finished",
          "seams",
          "making",
          "tools",
          "use")),
  /** What a maker should know before she begins. */
  MAKING(List.of(), List.of("skill", "time", "machine", "needle", "thread", "stitches")),
  /** A tool. */
  TOOL(List.of("name"), List.of("hazards")),
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
          "hazards")),
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
          "hazards")),
  /** A row of the finished measurements. */
  FINISHED(List.of("label", "value"), List.of()),
  /** A panel. */
  PANEL(
      List.of(),
      List.of(
          "drawing",
          "drawings",
          "scale",
          "rectangle",
          "strip",
          "inset",
          "circle",
          "ellipse",
          "ring_sector",
          "cone_band",
          "brim",
          "edges",
          "chains",
          "notches",
          "any_order")),
  /** What a fixed drawing is scaled to. */
  SCALE(List.of(), List.of("width", "height", "edge", "length")),
  /** A stated rectangle. */
  RECTANGLE(List.of("width", "height"), List.of()),
  /** A stated strip. */
  STRIP(List.of("length", "width"), List.of("bias")),
  /** A stated circle. */
  CIRCLE(List.of(), List.of("diameter", "radius")),
  /** A stated ellipse. */
  ELLIPSE(List.of(), List.of("width", "height", "perimeter", "ratio")),
  /** A stated part of a ring. */
  RING_SECTOR(List.of("angle"), List.of("inner_radius", "inner_length", "outer_radius", "width")),
  /** A band that tapers between two lengths. */
  CONE_BAND(List.of("lower", "upper"), List.of("height", "slant", "share")),
  /** A brim that slopes down from the head. */
  BRIM(List.of("head", "width", "droop"), List.of("share")),
  /** A panel derived from another. */
  INSET(List.of("panel", "distance"), List.of()),
  /** A notch. */
  NOTCH(List.of("edge", "at"), List.of("count")),
  /** A piece. */
  PIECE(List.of("number", "name", "panel", "cut"), List.of("allowance", "edge_allowances")),
  /** How many of a piece are cut from one material. */
  CUT(List.of("material", "count"), List.of("reversed")),
  /** A seam. */
  SEAM(List.of("sides"), List.of("ease", "tolerance")),
  /** A step's front matter. */
  STEP(List.of("id", "title", "stage"), List.of("uses"));

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
