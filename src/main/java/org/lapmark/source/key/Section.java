package org.lapmark.source.key;

import java.util.ArrayList;
import java.util.List;

/** The keys that each kind of map may have: the one place where they are listed. */
public enum Section {
  /** The top of {@code pattern.yaml}. */
  PATTERN(
      List.of("format", "title", "studio", "language", "edition", "materials", "panels", "pieces"),
      List.of(
          "designer",
          "summary",
          "copyright",
          "units",
          "rounding",
          "joins",
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
  TOOL(List.of("name"), List.of("kind", "hazards", "because", "when")),
  /** How the finished article is used. */
  USE(List.of(), List.of("ages", "load_limit", "hazards", "because", "worn_at")),
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
          "both_sides_alike",
          "fusible",
          "texture",
          "substitute",
          "buying",
          "kind",
          "hazards",
          "because",
          "when")),
  /** A zip, a cord, a ring or the like. */
  HARDWARE(
      List.of("name"),
      List.of(
          "visible_width",
          "tape_width",
          "stock_lengths",
          "inner_width",
          "inner_height",
          "diameter",
          "width",
          "length",
          "thickness",
          "quantity",
          "passes",
          "sewn_into",
          "substitute",
          "buying",
          "kind",
          "hazards",
          "because",
          "when")),
  /** A row of the finished measurements. */
  FINISHED(List.of("label", "value"), List.of("when")),
  /** A panel. */
  PANEL(
      List.of(),
      List.of(
          "drawing",
          "drawings",
          "scale",
          "rectangle",
          "strip",
          "circle",
          "ellipse",
          "ring_sector",
          "cone_band",
          "brim",
          "inset",
          "outset",
          "mirror",
          "unfold",
          "fold",
          "split",
          "merge",
          "facing",
          "lining",
          "style_lines",
          "edges",
          "chains",
          "notches",
          "notch_cut",
          "darts",
          "pleats",
          "buttonholes",
          "drills",
          "placements",
          "folds",
          "matches",
          "slashes",
          "stack_on",
          "any_order",
          "when")),
  /** What a fixed drawing is scaled to. */
  SCALE(List.of(), List.of("width", "height", "stretch", "edge", "length")),
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
  /** A panel smaller than another. */
  INSET(List.of("panel"), List.of("distance", "edges", "marks")),
  /** A panel larger than another. */
  OUTSET(List.of("panel"), List.of("distance", "edges", "marks")),
  /** A mirror image. */
  MIRROR(List.of("panel"), List.of()),
  /** The whole of a half panel. */
  UNFOLD(List.of("panel", "edge"), List.of("apart")),
  /** The half of a whole panel. */
  FOLD(List.of("panel", "from", "to"), List.of("edge")),
  /** A part of a panel. */
  SPLIT(List.of("panel", "along", "keep"), List.of("edge")),
  /** Two panels as one. */
  MERGE(List.of("panel", "edge", "with", "with_edge"), List.of()),
  /** A band along an edge. */
  FACING(List.of("panel", "along", "width"), List.of("edge")),
  /** A lining by its construction. */
  LINING(List.of("panel", "construction"), List.of("distance", "edges", "marks")),
  /** A line along which a panel may be split. */
  STYLE_LINE(List.of("from", "to"), List.of("bow")),
  /** A place on an edge. */
  LINE_PLACE(List.of("edge", "at"), List.of()),
  /** A notch. */
  NOTCH(
      List.of(),
      List.of(
          "edge",
          "at",
          "every",
          "centred",
          "from_seam",
          "corner",
          "drawn",
          "count",
          "set",
          "cut",
          "when")),
  /** A dart. */
  DART(List.of(), List.of("edge", "at", "width", "length", "press", "when")),
  /** A pleat. */
  PLEAT(List.of("take_up"), List.of("edge", "at", "length", "kind", "towards", "when")),
  /** Buttonholes. */
  BUTTONHOLE(
      List.of("length"),
      List.of("edge", "line", "inset", "at", "count", "from", "to", "spacing", "across", "when")),
  /** Drill points. */
  DRILLS(
      List.of(), List.of("edge", "line", "inset", "at", "count", "from", "to", "spacing", "when")),
  /** A placement line. */
  PLACEMENT_LINE(List.of(), List.of("edge", "inset", "from_edge", "from", "to_edge", "to", "when")),
  /** A fold line. */
  FOLD_LINE(List.of(), List.of("edge", "inset", "from_edge", "from", "to_edge", "to", "when")),
  /** A match point. */
  MATCH(List.of(), List.of("corner", "edge", "at", "when")),
  /** A line along which a panel is cut and opened. */
  SLASH(List.of("name", "open"), List.of("from", "to", "hinge", "when")),
  /** Where a slash line ends. */
  SLASH_END(List.of(), List.of("edge", "at", "corner")),
  /** An edge of a panel that only some variants have. */
  EDGE(List.of("corners"), List.of("when")),
  /** A piece. */
  PIECE(
      List.of("number", "name", "panel", "cut"),
      List.of("allowance", "edge_allowances", "corner", "corners", "on_fold", "printed", "when")),
  /** An edge's own allowance with more than its formula: one, or one that changes along it. */
  EDGE_ALLOWANCE(List.of(), List.of("allowance", "start", "end", "when")),
  /** How a corner is cut. */
  CORNER_KIND(List.of(), List.of("mitred", "square_to", "turned_back", "folds")),
  /** How many of a piece are cut from one material. */
  CUT(List.of("material", "count"), List.of("reversed", "when")),
  /** A seam. */
  SEAM(List.of("sides"), List.of("ease", "tolerance", "closed", "match_notches", "when")),
  /** A side of a seam with more to say than its parts. */
  SEAM_SIDE(List.of("edges"), List.of("name", "ease", "reversed", "start", "basted")),
  /** An edge, or a part of one, as part of a side. */
  SEAM_EDGE(List.of("edge"), List.of("from", "to", "reversed", "notch")),
  /** A length that is no panel, as part of a side. */
  SEAM_LENGTH(List.of("length"), List.of("notch")),
  /** Something caught in a seam at a place. */
  SEAM_TAB(List.of("tab", "at"), List.of()),
  /** A step's front matter. */
  STEP(List.of("id", "title", "stage"), List.of("uses", "when")),
  /** A translated step's front matter. */
  TRANSLATED_STEP(List.of("id", "title", "stage", "original"), List.of()),
  /** A translated note's front matter. */
  TRANSLATED_NOTE(List.of("original"), List.of()),
  /** The texts of {@code pattern.yaml} in another language. */
  TRANSLATION(List.of("texts"), List.of()),
  /** A translated text. */
  TRANSLATED_TEXT(List.of("from", "to"), List.of());

  private final List<String> required;
  private final List<String> known;

  Section(List<String> required, List<String> optional) {
    this.required = required;
    List<String> all = new ArrayList<>(required);
    all.addAll(optional);
    this.known = List.copyOf(all);
  }

  /** The keys that have to be there. */
  public List<String> required() {
    return required;
  }

  /** All keys, the required ones first. */
  List<String> known() {
    return known;
  }
}
