package org.lapmark.source.derived;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;
import org.lapmark.panel.derivation.Beside;
import org.lapmark.panel.derivation.Beside.Marks;
import org.lapmark.panel.derivation.Derivation;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.variant.VariantValues;

/**
 * With an outline that runs beside the other's.
 *
 * @param panel the other panel's name
 * @param way why
 * @param distance that of edges not stated otherwise; null for none
 * @param edges distances of single edges
 * @param marks whether notches, points and lines follow; null where nothing is said
 */
public record BesideSource(
    SourceText panel, Way way, Formula distance, List<EdgeDistance> edges, Boolean marks)
    implements DerivedSource {
  /** Why a panel's outline runs beside another's. */
  public enum Way {
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
  public record EdgeDistance(SourceText edge, Formula distance) {}

  private static final Key<Way> CONSTRUCTION =
      Key.required(
          "construction", Forms.words(DerivedCode.CONSTRUCTION_WRONG, Way.constructions()));
  private static final Key<Formula> DISTANCE = Key.of("distance", Forms.LENGTH);
  private static final Key<List<Named<Formula>>> EDGES =
      Key.of("edges", Forms.named(Forms.LENGTH, false));
  private static final Key<Boolean> MARKS = Key.of("marks", Forms.TRUTH);

  static final DerivedKind INSET =
      new DerivedKind(
          Table.of("inset", PANEL, DISTANCE, EDGES, MARKS),
          (in, reading) -> read(in, Way.INSET, reading));
  static final DerivedKind OUTSET =
      new DerivedKind(
          Table.of("outset", PANEL, DISTANCE, EDGES, MARKS),
          (in, reading) -> read(in, Way.OUTSET, reading));
  static final DerivedKind LINING =
      new DerivedKind(
          Table.of("lining", PANEL, CONSTRUCTION, DISTANCE, EDGES, MARKS),
          (in, reading) -> read(in, in.get(CONSTRUCTION), reading));

  /** Copies the list. */
  public BesideSource {
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
      reading.findings().add(DerivedCode.DISTANCE_MISSING, in.owner());
      whole = false;
    }
    Boolean marks = in.get(MARKS);
    if (marks == null && way != null && way.isLining()) {
      marks = Boolean.TRUE;
    }
    return whole ? new BesideSource(in.get(PANEL), way, in.get(DISTANCE), edges, marks) : null;
  }

  @Override
  public boolean keepsCorners() {
    return true;
  }

  @Override
  public List<SourceText> usedLines() {
    return edges.stream().map(EdgeDistance::edge).toList();
  }

  @Override
  public boolean runsBeside() {
    return true;
  }

  @Override
  public boolean isMounted() {
    return way == Way.MOUNTED;
  }

  @Override
  public Derivation derivation(Function<SourceText, Panel> originals, VariantValues values) {
    Panel original = originals.apply(panel);
    Marks following = Marks.OF_UNMOVED_EDGES;
    if (marks != null) {
      following = marks ? Marks.ALL : Marks.NONE;
    }
    return new Beside(original, way == Way.OUTSET, distances(original, values), following);
  }

  private Map<String, Double> distances(Panel original, VariantValues values) {
    double general = distance == null ? 0 : distance(distance, values);
    Map<String, Double> distances = new LinkedHashMap<>();
    original.edges().forEach(edge -> distances.put(edge.name(), general));
    for (EdgeDistance stated : edges) {
      double own = distance(stated.distance(), values);
      Ring.members(original, stated.edge().text()).forEach(edge -> distances.put(edge, own));
    }
    return distances;
  }

  private double distance(Formula formula, VariantValues values) {
    double millimetres = values.length(formula);
    if (millimetres < 0) {
      throw new FindingException(
          Finding.of(
              DerivedCode.INSET_NEGATIVE,
              formula.text().position(),
              "value",
              Rounded.hundredth(millimetres),
              "way",
              way == Way.OUTSET ? "larger" : "smaller",
              "size",
              values.size()));
    }
    return millimetres;
  }

  @Override
  public SourceText blamed(PanelException problem) {
    return edges.stream()
        .map(EdgeDistance::edge)
        .filter(edge -> edge.text().equals(problem.arguments().get("edge")))
        .findFirst()
        .orElse(panel);
  }
}
