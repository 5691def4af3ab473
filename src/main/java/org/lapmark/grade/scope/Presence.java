package org.lapmark.grade.scope;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.measure.Formula;
import org.lapmark.source.MakingSource;
import org.lapmark.source.MeasureSource;
import org.lapmark.source.NoteSource;
import org.lapmark.source.OptionsSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.fastening.TrimSource;
import org.lapmark.source.key.Passages;
import org.lapmark.source.key.Ref;

/** What of a source belongs to one variant. */
public final class Presence {
  /** What texts and figures name. */
  private static final List<Ref.Kind> NAMED =
      List.of(
          Ref.Kind.THING,
          Ref.Kind.PANEL,
          Ref.Kind.PIECE,
          Ref.Kind.TRIM,
          Ref.Kind.ATTACHMENT,
          Ref.Kind.STEP);

  private final PatternScope scope;
  private final StatementsByName statements;
  private final DemandGraph graph;

  public Presence(PatternScope scope, StatementsByName statements, DemandGraph graph) {
    this.scope = scope;
    this.statements = statements;
    this.graph = graph;
  }

  /** Whether a condition holds, whatever it is the condition of. */
  private record Condition(String when) implements Node<Boolean> {
    @Override
    public String named() {
      return "when " + when;
    }
  }

  /**
   * Whether something belongs to the variant.
   *
   * @param what its identity
   * @return whether its condition holds; true if it has none
   * @throws DemandGraph.Unavailable when the condition can't be computed or couldn't be read, which
   *     is reported
   */
  public boolean holds(Ref what) {
    if (statements.isUnread(what)) {
      throw new DemandGraph.Unavailable();
    }
    Formula when = condition(what);
    return when == null || holds(when);
  }

  private Formula condition(Ref what) {
    Formula when = statements.condition(what);
    if (when != null) {
      graph.note(new Fact.Condition(what));
    }
    return when;
  }

  private boolean holds(Formula when) {
    return graph.demand(
        new Condition(when.text().text()), when.text().position(), () -> when.holds(scope));
  }

  /** Refuses what the variant doesn't have: it can't be asked for there. */
  public void require(Ref what, SourceText name) {
    require(what, name.text(), name.position());
  }

  /** The same for what is called otherwise than where it is named. */
  public void require(Ref what, String name, Position named) {
    if (!holds(what)) {
      throw absent(what, name, named);
    }
  }

  private FindingException absent(Ref what, String name, Position named) {
    Formula when = statements.condition(what);
    return new FindingException(
        absent(named, name, when == null ? "" : when.text().text(), scope.size()));
  }

  /**
   * Says that the variant doesn't have something.
   *
   * @param when its condition as written; empty if it is absent for another reason
   */
  public static Finding absent(Position named, String name, String when, String size) {
    return Finding.of(
        GradeCode.NAME_ABSENT,
        named,
        "name",
        name,
        "conditional",
        when.isEmpty() ? "no" : "yes",
        "when",
        when,
        "size",
        size);
  }

  /** Whether a condition says no; one that can't be computed says nothing. */
  private boolean isAbsent(Ref what) {
    try {
      return !holds(what);
    } catch (DemandGraph.Unavailable e) {
      return false;
    }
  }

  private boolean stands(Ref what) {
    try {
      return holds(what);
    } catch (DemandGraph.Unavailable e) {
      return false;
    }
  }

  private boolean stands(Formula when) {
    try {
      return holds(when);
    } catch (DemandGraph.Unavailable e) {
      return false;
    }
  }

  private <T> List<T> kept(List<T> all, Function<T, Ref> ref) {
    return statements.hasConditions()
        ? all.stream().filter(one -> stands(ref.apply(one))).toList()
        : all;
  }

  /** A panel with the notches of the variant. */
  public PanelSource of(PanelSource panel) {
    return panel.with(
        kept(panel.edges(), edge -> edge.ref(panel.ref())),
        kept(panel.notches(), PanelSource.NotchSource::ref),
        kept(panel.slashes(), slash -> slash.ref(panel.ref())),
        kept(panel.marks(), mark -> mark.ref(panel.ref())));
  }

  /** Hardware with what of the variant goes through it. */
  private ThingSource of(ThingSource hardware) {
    return hardware.with(
        hardware.passes().stream()
            .filter(passing -> stands(Ref.of(Ref.Kind.THING, passing.text().text())))
            .toList());
  }

  /**
   * The source as it stands in the variant.
   *
   * @param source the whole source
   * @param findings where problems go
   * @return the source without what belongs to other variants only
   */
  public PatternSource of(PatternSource source, Findings findings) {
    MakingSource making = source.making();
    return new PatternSource(
        source.folder(),
        source.masthead(),
        source.sizes(),
        kept(source.materials(), ThingSource::ref),
        kept(source.hardware(), ThingSource::ref).stream().map(this::of).toList(),
        kept(source.measures(), MeasureSource::ref),
        source.finished().stream().filter(row -> row.when() == null || stands(row.when())).toList(),
        kept(source.panels(), PanelSource::ref).stream().map(this::of).toList(),
        pieces(source, findings),
        kept(source.seams(), SeamSource::ref),
        new Fastenings(
            kept(source.fastenings().trims(), TrimSource::ref),
            kept(source.fastenings().attachments(), AttachmentSource::ref)),
        source.units(),
        new MakingSource(
            making.texts(),
            making.stitches(),
            kept(making.tools(), MakingSource.ToolSource::ref),
            making.use()),
        steps(source),
        source.notes().stream()
            .map(note -> new NoteSource(note.name(), text(note.body())))
            .toList(),
        source.translations(),
        unknown(source.options()),
        source.outside());
  }

  /** Adds to what couldn't be read all that has a condition which nobody can tell. */
  private OptionsSource unknown(OptionsSource options) {
    Set<Ref> unknown = new LinkedHashSet<>(options.unread());
    for (Ref what : options.conditions().keySet()) {
      if (NAMED.contains(what.kind())) {
        try {
          holds(what);
        } catch (DemandGraph.Unavailable e) {
          unknown.add(what);
        }
      }
    }
    return unknown.size() == options.unread().size()
        ? options
        : new OptionsSource(options.options(), options.forbidden(), options.conditions(), unknown);
  }

  /** Pieces without what isn't cut; a piece whose every cut is of other variants isn't there. */
  private List<PieceSource> pieces(PatternSource source, Findings findings) {
    List<PieceSource> pieces = new ArrayList<>();
    for (PieceSource piece : kept(source.pieces(), PieceSource::ref)) {
      List<PieceSource.CutSource> cuts = kept(piece.cuts(), PieceSource.CutSource::ref);
      if (cuts.isEmpty() && !piece.cuts().isEmpty()) {
        continue;
      }
      for (PieceSource.CutSource cut : cuts) {
        Ref material = Ref.of(Ref.Kind.THING, cut.material().text());
        if (isAbsent(material)) {
          findings.add(
              absent(material, cut.material().text(), cut.material().position()).finding());
        }
      }
      pieces.add(
          new PieceSource(
              piece.number(),
              piece.position(),
              piece.name(),
              piece.panel(),
              piece.allowance(),
              kept(piece.edgeAllowances(), edge -> edge.ref(piece.ref())),
              piece.corners(),
              cuts,
              piece.fold(),
              piece.printed()));
    }
    return pieces;
  }

  private List<StepSource> steps(PatternSource source) {
    return kept(source.steps(), StepSource::ref).stream()
        .map(
            step ->
                new StepSource(
                    step.id(),
                    step.title(),
                    step.stage(),
                    step.uses().stream()
                        .filter(use -> stands(Ref.of(Ref.Kind.THING, use.text())))
                        .filter(use -> stands(Ref.of(Ref.Kind.TRIM, use.text())))
                        .filter(use -> stands(Ref.of(Ref.Kind.ATTACHMENT, use.text())))
                        .toList(),
                    text(step.body())))
        .toList();
  }

  private SourceText text(SourceText body) {
    return Passages.select(body, this::selects);
  }

  private boolean selects(SourceText condition) {
    try {
      return holds(Formula.parse(condition));
    } catch (FindingException | DemandGraph.Unavailable e) {
      return false; // Reported where it was read, or computed.
    }
  }
}
