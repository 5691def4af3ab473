package org.lapmark.source;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/**
 * How a panel is derived from another. Each kind states its keys, reads itself, and says which
 * names its result can have; those follow from the statement alone, so that they are the same in
 * every size.
 */
public sealed interface DerivedSource {
  /** The panel that it is derived from. */
  Key<SourceText> PANEL = Key.required("panel", Forms.NAME);

  /** What the image of an edge, a corner or a chain is called. */
  String MIRRORED = "_mirrored";

  /**
   * A key of a panel by which one is derived.
   *
   * @param key the key
   * @param reader reads what stands under it; null if it can't be read, which is then reported
   */
  record Kind(Key<Stated> key, Reader reader) {
    Kind(Table table, Reader reader) {
      this(Key.of(table.id(), Forms.map(table)), reader);
    }
  }

  /** Reads a derivation. */
  @FunctionalInterface
  interface Reader {
    /**
     * Reads a derivation.
     *
     * @return what is stated, or null if it can't be read, which is then reported
     */
    DerivedSource read(Stated in, Reading reading);
  }

  /** All kinds, in the order in which hints list them. */
  List<Kind> KINDS =
      List.of(
          Beside.INSET,
          Beside.OUTSET,
          Mirrored.MIRROR,
          Unfolded.UNFOLD,
          Folded.FOLD,
          Split.SPLIT,
          Merged.MERGE,
          Facing.FACING,
          Beside.LINING);

  /**
   * The panel that it is derived from.
   *
   * @return its name
   */
  SourceText panel();

  /** The panels that it is derived from. */
  default List<SourceText> originals() {
    return List.of(panel());
  }

  /** The edges that it names of one of its originals. */
  default List<SourceText> usedEdges(SourceText original) {
    return List.of();
  }

  /** The edges or chains that it names. */
  default List<SourceText> usedLines() {
    return List.of();
  }

  /**
   * The edges that the derived panel may have.
   *
   * @param known the edges of its originals
   */
  default Set<String> edges(List<Set<String>> known) {
    return new TreeSet<>(known.get(0));
  }

  /** The chains that the derived panel may have from one of its originals. */
  default Set<String> chains(Set<String> known) {
    return new TreeSet<>(known);
  }

  /**
   * The edge of which another may be a part: a derivation that takes the middle of the edge {@code
   * side} leaves {@code side_1} and {@code side_2}. Whether it does follows from the geometry.
   */
  static String whole(String edge) {
    int end = edge.length();
    while (end > 0 && Character.isDigit(edge.charAt(end - 1))) {
      end--;
    }
    return end < edge.length() && end > 1 && edge.charAt(end - 1) == '_'
        ? edge.substring(0, end - 1)
        : edge;
  }

  /** A new edge's name, or another where none is stated. */
  private static String named(Stated in, Key<SourceText> key, String standard) {
    SourceText name = in.get(key);
    return name == null ? standard : name.text();
  }

  /** The edges of an original and a new one. */
  private static Set<String> and(List<Set<String>> known, String edge) {
    Set<String> edges = new TreeSet<>(known.get(0));
    edges.add(edge);
    return edges;
  }

  /** Why a panel's outline runs beside another's. */
  enum Way {
    /** Smaller, as a stiffener is. */
    INSET,
    /** Larger. */
    OUTSET,
    /**
     * A lining that is basted to the main cloth and sewn as one with it; smaller by turn of cloth.
     */
    MOUNTED,
    /** A lining that is bagged out; smaller by an ease. */
    BAGGED,
    /** A lining that is dropped in; smaller by an ease. */
    DROPPED;

    /**
     * Whether it is a lining.
     *
     * @return true for the ways of making a lining
     */
    public boolean isLining() {
      return this == MOUNTED || this == BAGGED || this == DROPPED;
    }

    private static Map<String, Way> constructions() {
      Map<String, Way> words = new LinkedHashMap<>();
      words.put("mounted", MOUNTED);
      words.put("bagged", BAGGED);
      words.put("dropped", DROPPED);
      return words;
    }
  }

  /**
   * An edge's own distance.
   *
   * @param edge the edge's or chain's name
   * @param distance 0 or more
   */
  record EdgeDistance(SourceText edge, Formula distance) {}

  /**
   * With an outline that runs beside the other's.
   *
   * @param panel the other panel's name
   * @param way why
   * @param distance that of edges not stated otherwise; null for none
   * @param edges distances of single edges
   * @param marks whether notches, points and lines follow; null where nothing is said
   */
  record Beside(
      SourceText panel, Way way, Formula distance, List<EdgeDistance> edges, Boolean marks)
      implements DerivedSource {
    private static final Key<Way> CONSTRUCTION =
        Key.required(
            "construction", Forms.words(SourceCode.CONSTRUCTION_WRONG, Way.constructions()));
    private static final Key<Formula> DISTANCE = Key.of("distance", Forms.LENGTH);
    private static final Key<List<Named<Formula>>> EDGES =
        Key.of("edges", Forms.named(Forms.LENGTH, false));
    private static final Key<Boolean> MARKS = Key.of("marks", Forms.TRUTH);

    static final Kind INSET =
        new Kind(
            Table.of("inset", PANEL, DISTANCE, EDGES, MARKS),
            (in, reading) -> read(in, Way.INSET, reading));
    static final Kind OUTSET =
        new Kind(
            Table.of("outset", PANEL, DISTANCE, EDGES, MARKS),
            (in, reading) -> read(in, Way.OUTSET, reading));
    static final Kind LINING =
        new Kind(
            Table.of("lining", PANEL, CONSTRUCTION, DISTANCE, EDGES, MARKS),
            (in, reading) -> read(in, in.get(CONSTRUCTION), reading));

    /** Copies the list. */
    public Beside {
      edges = List.copyOf(edges);
    }

    private static DerivedSource read(Stated in, Way way, Reading reading) {
      boolean whole = in.isSound(PANEL, DISTANCE, MARKS) && way != null;
      List<EdgeDistance> edges = new ArrayList<>();
      for (Named<Formula> edge : in.all(EDGES)) {
        if (edge.value() != null) {
          edges.add(new EdgeDistance(edge.name(), edge.value()));
        }
      }
      if (way != null && way != Way.MOUNTED && !in.has(DISTANCE) && !in.has(EDGES)) {
        reading.findings().add(SourceCode.DISTANCE_MISSING, in.owner());
        whole = false;
      }
      Boolean marks = in.get(MARKS);
      if (marks == null && way != null && way.isLining()) {
        marks = Boolean.TRUE;
      }
      return whole ? new Beside(in.get(PANEL), way, in.get(DISTANCE), edges, marks) : null;
    }

    @Override
    public List<SourceText> usedLines() {
      return edges.stream().map(EdgeDistance::edge).toList();
    }
  }

  /**
   * A mirror image.
   *
   * @param panel the other panel's name
   */
  record Mirrored(SourceText panel) implements DerivedSource {
    static final Kind MIRROR =
        new Kind(
            Table.of("mirror", PANEL),
            (in, reading) -> in.isSound(PANEL) ? new Mirrored(in.get(PANEL)) : null);
  }

  /**
   * The whole of a half.
   *
   * @param panel the half's name
   * @param edge its fold edge
   * @param apart edges that stay apart from their images at the fold
   */
  record Unfolded(SourceText panel, SourceText edge, List<SourceText> apart)
      implements DerivedSource {
    private static final Key<SourceText> EDGE = Key.required("edge", Forms.NAME);
    private static final Key<List<SourceText>> APART = Key.of("apart", Forms.NAMES);

    static final Kind UNFOLD =
        new Kind(
            Table.of("unfold", PANEL, EDGE, APART),
            (in, reading) -> {
              List<SourceText> apart = in.all(APART);
              return in.isSound(PANEL, EDGE)
                  ? new Unfolded(in.get(PANEL), in.get(EDGE), apart)
                  : null;
            });

    /** Copies the list. */
    public Unfolded {
      apart = List.copyOf(apart);
    }

    @Override
    public List<SourceText> usedEdges(SourceText original) {
      List<SourceText> used = new ArrayList<>(apart);
      used.add(edge);
      return used;
    }

    @Override
    public Set<String> edges(List<Set<String>> known) {
      Set<String> edges = new TreeSet<>(known.get(0));
      edges.remove(edge.text());
      List.copyOf(edges).forEach(each -> edges.add(each + MIRRORED));
      return edges;
    }

    @Override
    public Set<String> chains(Set<String> known) {
      Set<String> chains = new TreeSet<>(known);
      known.forEach(chain -> chains.add(chain + MIRRORED));
      return chains;
    }
  }

  /**
   * The half of a whole.
   *
   * @param panel the whole's name
   * @param from where the fold begins: an edge or chain, in its middle, or a corner
   * @param to where it ends
   * @param edge the new edge's name
   */
  record Folded(SourceText panel, SourceText from, SourceText to, String edge)
      implements DerivedSource {
    private static final Key<SourceText> FROM = Key.required("from", Forms.CORNER);
    private static final Key<SourceText> TO = Key.required("to", Forms.CORNER);
    private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME).unless("fold");

    static final Kind FOLD =
        new Kind(
            Table.of("fold", PANEL, FROM, TO, EDGE),
            (in, reading) ->
                in.isSound(PANEL, FROM, TO, EDGE)
                    ? new Folded(
                        in.get(PANEL), in.get(FROM), in.get(TO), named(in, EDGE, EDGE.standard()))
                    : null);

    @Override
    public Set<String> edges(List<Set<String>> known) {
      return and(known, edge);
    }
  }

  /**
   * A part of a panel that is split.
   *
   * @param panel the other panel's name
   * @param along the name of its style line
   * @param keep a corner, edge or chain that lies in this part alone
   * @param edge the new edge's name
   */
  record Split(SourceText panel, SourceText along, SourceText keep, String edge)
      implements DerivedSource {
    private static final Key<SourceText> ALONG = Key.required("along", Forms.NAME);
    private static final Key<SourceText> KEEP = Key.required("keep", Forms.NAME);
    private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME);

    static final Kind SPLIT =
        new Kind(
            Table.of("split", PANEL, ALONG, KEEP, EDGE),
            (in, reading) ->
                in.isSound(PANEL, ALONG, KEEP, EDGE)
                    ? new Split(
                        in.get(PANEL),
                        in.get(ALONG),
                        in.get(KEEP),
                        named(in, EDGE, in.get(ALONG).text()))
                    : null);

    @Override
    public Set<String> edges(List<Set<String>> known) {
      return and(known, edge);
    }
  }

  /**
   * Two panels as one.
   *
   * @param panel the panel that stays where it is
   * @param edge its edge
   * @param with the panel that is laid against it
   * @param withEdge that panel's edge
   */
  record Merged(SourceText panel, SourceText edge, SourceText with, SourceText withEdge)
      implements DerivedSource {
    private static final Key<SourceText> EDGE = Key.required("edge", Forms.NAME);
    private static final Key<SourceText> WITH = Key.required("with", Forms.NAME);
    private static final Key<SourceText> WITH_EDGE = Key.required("with_edge", Forms.NAME);

    static final Kind MERGE =
        new Kind(
            Table.of("merge", PANEL, EDGE, WITH, WITH_EDGE),
            (in, reading) ->
                in.isSound(PANEL, EDGE, WITH, WITH_EDGE)
                    ? new Merged(in.get(PANEL), in.get(EDGE), in.get(WITH), in.get(WITH_EDGE))
                    : null);

    @Override
    public List<SourceText> originals() {
      return List.of(panel, with);
    }

    @Override
    public List<SourceText> usedEdges(SourceText original) {
      return List.of(original == panel ? edge : withEdge);
    }

    @Override
    public Set<String> edges(List<Set<String>> known) {
      Set<String> edges = new TreeSet<>(known.get(0));
      edges.remove(edge.text());
      for (String other : known.get(1)) {
        if (!other.equals(withEdge.text())) {
          edges.add(other);
          edges.add(with.text() + "_" + other);
        }
      }
      return edges;
    }
  }

  /**
   * A band along an edge.
   *
   * @param panel the other panel's name
   * @param along the edge or chain that it follows
   * @param width how wide it is
   * @param edge the new edge's name
   */
  record Facing(SourceText panel, SourceText along, Formula width, String edge)
      implements DerivedSource {
    private static final Key<SourceText> ALONG = Key.required("along", Forms.NAME);
    private static final Key<Formula> WIDTH = Key.required("width", Forms.LENGTH);
    private static final Key<SourceText> EDGE = Key.of("edge", Forms.NEW_NAME).unless("inner");

    static final Kind FACING =
        new Kind(
            Table.of("facing", PANEL, ALONG, WIDTH, EDGE),
            (in, reading) ->
                in.isSound(PANEL, ALONG, WIDTH, EDGE)
                    ? new Facing(
                        in.get(PANEL),
                        in.get(ALONG),
                        in.get(WIDTH),
                        named(in, EDGE, EDGE.standard()))
                    : null);

    @Override
    public List<SourceText> usedLines() {
      return List.of(along);
    }

    @Override
    public Set<String> edges(List<Set<String>> known) {
      return and(known, edge);
    }
  }
}
