package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.Presence;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelCode;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.key.Ref;

/** The panels of one variant with all their marks, each made once. */
public final class PanelMarks {
  /**
   * A notch that is stated so near, in millimetres, to where one is left out takes its place:
   * beside a corner it can stand a few millimetres on.
   */
  private static final double PUT_BACK = 10;

  private final StatementsByName statements;
  private final Presence presence;
  private final DemandGraph graph;
  private final PanelFactory factory;
  private final PanelShapes shapes;
  private final NotchFactory notches;
  private final Findings findings;

  PanelMarks(
      StatementsByName statements,
      Presence presence,
      DemandGraph graph,
      PanelFactory factory,
      PanelShapes shapes,
      FastenedThings fastened,
      PatternScope scope,
      Findings findings) {
    this.statements = statements;
    this.presence = presence;
    this.graph = graph;
    this.factory = factory;
    this.shapes = shapes;
    this.findings = findings;
    this.notches =
        new NotchFactory(
            scope,
            this::seam,
            new SeamAssembler(scope, shapes, fastened, this::plainNotches, SeamAllowances.NONE),
            new SeamAssembler(scope, shapes, fastened, this::notches, SeamAllowances.NONE),
            findings);
  }

  /** A panel with all its marks, or all but those that come from seams. */
  public record Marked(Ref panel, boolean fromSeams) implements Node<Panel> {
    @Override
    public String named() {
      return "the marks of panel " + panel.name() + without(fromSeams);
    }
  }

  /** The marks that a derived panel takes over. */
  private record TakenOver(Ref panel, boolean fromSeams) implements Node<MarksTaken> {
    @Override
    public String named() {
      return "the marks that panel " + panel.name() + " takes over" + without(fromSeams);
    }
  }

  /**
   * The notches of one statement.
   *
   * @param nth their place among the panel's statements, from 1
   */
  private record Notches(Ref ref, String panel, String edge, int nth)
      implements Node<List<Mark.Notch>> {
    @Override
    public String named() {
      return "notches " + nth + " on " + panel + "." + edge;
    }
  }

  private static String without(boolean fromSeams) {
    return fromSeams ? "" : " without those from seams";
  }

  /** Marks that are taken over, and what is to be said of those that aren't. */
  private record MarksTaken(List<Mark> marks, List<DerivedPanels.Notice> notices) {
    MarksTaken {
      marks = List.copyOf(marks);
      notices = List.copyOf(notices);
    }
  }

  /**
   * A panel by its name, with all its marks.
   *
   * @param name where it is named
   * @return the panel
   * @throws FindingException when no panel has the name
   * @throws DemandGraph.Unavailable when it can't be drawn
   */
  public Panel panel(SourceText name) {
    return marked(name, true);
  }

  private Panel marked(SourceText name, boolean fromSeams) {
    PanelSource stated = shapes.stated(name);
    return graph.demand(
        new Marked(stated.ref(), fromSeams),
        name.position(),
        () -> marked(shapes.shape(name), stated, presence.of(stated), fromSeams));
  }

  /**
   * Marks a panel.
   *
   * @param whole all that is stated of it
   * @param source what of that the variant has
   */
  private Panel marked(Panel shape, PanelSource whole, PanelSource source, boolean fromSeams) {
    graph.note(new Fact.Stated(whole.ref()));
    whole.marks().forEach(mark -> graph.note(new Fact.Stated(mark.ref(whole.ref()))));
    MarksTaken taken = taken(shape, fromSeams);
    Panel sofar = new Panel(shape.name(), shape.edges(), shape.chains(), taken.marks());
    List<Mark> marks = new ArrayList<>(factory.placed(sofar, source).marks());
    for (NotchSource notch : source.notches()) {
      graph.note(new Fact.Stated(notch.ref()));
      if (fromSeams || !NotchFactory.isFromSeam(notch)) {
        marks.addAll(stated(shape, notch));
      }
    }
    Panel panel = new Panel(shape.name(), shape.edges(), shape.chains(), marks);
    if (fromSeams) {
      tell(panel, taken);
    }
    return panel;
  }

  /** What the panel's own statements put back isn't left out. */
  private void tell(Panel panel, MarksTaken taken) {
    List<Mark> own = panel.marks().stream().filter(mark -> !taken.marks().contains(mark)).toList();
    for (DerivedPanels.Notice notice : taken.notices()) {
      if (own.stream().noneMatch(mark -> isPutBack(panel, mark, notice))) {
        findings.add(notice.finding());
      }
    }
  }

  private static boolean isPutBack(Panel panel, Mark mark, DerivedPanels.Notice notice) {
    if (notice.finding().code() != PanelCode.MARK_LEFT_OUT) {
      return false;
    }
    if (mark instanceof Mark.Notch notch) {
      Point foot = panel.line(notch.edge()).atLength(notch.at());
      return notice.place().isPresent() && foot.distance(notice.place().get()) <= PUT_BACK;
    }
    return !(mark instanceof Mark.OnEdge)
        && notice.place().isEmpty()
        && mark.name().equals(notice.finding().arguments().get("name"));
  }

  /** The marks of a panel's drawing, or those that it takes from the panels it is derived from. */
  private MarksTaken taken(Panel shape, boolean fromSeams) {
    PanelSource source = statements.panel(shape.name());
    if (source.derivation().isEmpty()) {
      return new MarksTaken(shape.marks(), List.of());
    }
    return graph.demand(
        new TakenOver(source.ref(), fromSeams),
        source.name().position(),
        () -> {
          shapes.note(source);
          List<DerivedPanels.Notice> notices = new ArrayList<>();
          Panel built =
              factory.build(presence.of(source), panel -> marked(panel, fromSeams), notices::add);
          return new MarksTaken(built.marks(), notices);
        });
  }

  /** The notches on some edges of a panel, those drawn and those stated. */
  public List<Mark.Notch> notches(Panel shape, List<String> edges) {
    return notches(shape, edges, true);
  }

  /** The same without those that are taken from a seam's partners. */
  private List<Mark.Notch> plainNotches(Panel shape, List<String> edges) {
    return notches(shape, edges, false);
  }

  private List<Mark.Notch> notches(Panel shape, List<String> edges, boolean fromSeams) {
    List<Mark.Notch> found = new ArrayList<>();
    for (Mark mark : taken(shape, fromSeams).marks()) {
      if (mark instanceof Mark.Notch notch) {
        found.add(notch);
      }
    }
    for (NotchSource notch : presence.of(statements.panel(shape.name())).notches()) {
      graph.note(new Fact.Stated(notch.ref()));
      if ((fromSeams || !NotchFactory.isFromSeam(notch))
          && NotchFactory.concerns(shape, notch, edges)) {
        found.addAll(stated(shape, notch));
      }
    }
    found.removeIf(notch -> !edges.contains(notch.edge()));
    return found;
  }

  private List<Mark.Notch> stated(Panel shape, NotchSource notch) {
    // Counted as stated, whatever the variant has of them.
    PanelSource source = statements.panel(shape.name());
    int index = source.notches().indexOf(notch);
    return graph.demand(
        new Notches(notch.ref(), shape.name(), notch.edge().text(), index + 1),
        notch.edge().position(),
        () -> {
          graph.note(new Fact.Stated(notch.ref()));
          return notches.notches(shapes.shape(source.name()), notch);
        });
  }

  /** A seam by its name; nothing where the variant doesn't have it. */
  private Optional<SeamSource> seam(SourceText name) {
    SeamSource seam = statements.seam(name.text());
    if (seam == null) {
      // The reader has said that there is no such seam, or what is wrong with it.
      throw new DemandGraph.Unavailable();
    }
    graph.note(new Fact.Stated(seam.ref()));
    return presence.holds(seam.ref()) ? Optional.of(seam) : Optional.empty();
  }

  /**
   * Where a notch of a panel is stated.
   *
   * @param name the panel's name
   * @param edge the edge's name
   * @param at millimetres from its start, on the stitching line as drawn
   * @return the place of its statement; nothing where it is drawn, or taken from another panel
   */
  public Optional<Position> notchPlace(String name, String edge, double at) {
    PanelSource source = statements.panel(name);
    Panel shape = shapes.shape(source.name());
    for (NotchSource notch : presence.of(source).notches()) {
      if (NotchFactory.concerns(shape, notch, List.of(edge))
          && stated(shape, notch).stream()
              .anyMatch(
                  one ->
                      one.edge().equals(edge) && Math.abs(one.at() - at) <= Path.JOIN_TOLERANCE)) {
        return Optional.of(NotchFactory.place(notch));
      }
    }
    return Optional.empty();
  }
}
