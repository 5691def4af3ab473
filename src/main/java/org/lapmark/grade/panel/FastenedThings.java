package org.lapmark.grade.panel;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.demand.Fact;
import org.lapmark.grade.demand.Node;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.Presence;
import org.lapmark.grade.scope.StatementsByName;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Value;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.source.PieceSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.TrimSource;
import org.lapmark.source.key.Ref;

/**
 * How large what is fastened is in one variant: all that seams and formulas ask of trims and
 * attachments before these are measured themselves.
 */
public final class FastenedThings {
  /** What says how wide a thing is, the first that it has. */
  private static final List<String> WIDTHS =
      List.of("tape_width", "width", "usable_width", "diameter");

  private final StatementsByName statements;
  private final Presence presence;
  private final DemandGraph graph;
  private final PatternScope scope;
  private final PanelShapes shapes;

  FastenedThings(
      StatementsByName statements,
      Presence presence,
      DemandGraph graph,
      PatternScope scope,
      PanelShapes shapes) {
    this.statements = statements;
    this.presence = presence;
    this.graph = graph;
    this.scope = scope;
    this.shapes = shapes;
  }

  /** How wide a trim shows. */
  record VisibleWidth(Ref trim) implements Node<Value> {
    @Override
    public String named() {
      return "width(" + trim.name() + ")";
    }
  }

  /** A trim by its name, also one that the variant doesn't have. */
  Optional<TrimSource> trim(String name) {
    return statements.fastenings().trim(name);
  }

  /**
   * Refuses to take a name for anything else that is a trim's or an attachment's which couldn't be
   * read: its reader has said so.
   */
  void requireRead(String name) {
    if (statements.isUnread(Ref.of(Ref.Kind.TRIM, name))
        || statements.isUnread(Ref.of(Ref.Kind.ATTACHMENT, name))) {
      throw new DemandGraph.Unavailable();
    }
  }

  /** What parts of seams and what is caught in them can be, apart from edges, by name. */
  Set<String> sewn() {
    Set<String> names = trimNames();
    statements.fastenings().attachments().forEach(one -> names.add(one.name().text()));
    names.addAll(statements.valueNames());
    return names;
  }

  /** The trims that the pattern states, by name. */
  Set<String> trimNames() {
    Set<String> names = new LinkedHashSet<>();
    statements.fastenings().trims().forEach(trim -> names.add(trim.name().text()));
    return names;
  }

  /** An attachment by its name, also one that the variant doesn't have. */
  public Optional<AttachmentSource> attachment(String name) {
    return statements.fastenings().attachment(name);
  }

  /** A piece by its number, also one that the variant doesn't have. */
  public Optional<PieceSource> piece(String number) {
    return statements.piece(number);
  }

  /** How wide a trim shows, as formulas have it. */
  Value visible(TrimSource trim, SourceText asked) {
    Formula width = visibleWidth(trim, asked);
    return graph.demand(
        new VisibleWidth(trim.ref()), asked.position(), () -> width.evaluate(scope));
  }

  /**
   * What says how wide a trim shows.
   *
   * @param asked where that is asked
   * @throws FindingException when nothing does, or the variant doesn't have the trim
   */
  Formula visibleWidth(TrimSource trim, SourceText asked) {
    presence.require(trim.ref(), asked);
    return stated(trim)
        .orElseThrow(
            () ->
                new FindingException(
                    Finding.of(
                        GradeCode.TRIM_WIDTH_UNKNOWN,
                        asked.position(),
                        "name",
                        trim.name().text(),
                        "thing",
                        trim.thing().text())));
  }

  /** What says how wide a trim shows, if anything does. */
  public Optional<Formula> stated(TrimSource trim) {
    graph.note(new Fact.Stated(trim.ref()));
    if (trim.visibleWidth() != null) {
      return Optional.of(trim.visibleWidth());
    }
    ThingSource thing = thing(trim.thing());
    Formula width = thing.properties().get(TrimSource.VISIBLE_WIDTH);
    if (width != null) {
      graph.note(new Fact.Property(thing.ref(), TrimSource.VISIBLE_WIDTH));
    }
    return Optional.ofNullable(width);
  }

  /** A thing that the variant has. */
  public ThingSource thing(SourceText id) {
    ThingSource thing = statements.thing(id.text());
    if (thing == null) {
      throw new DemandGraph.Unavailable(); // The reader has said so.
    }
    presence.require(thing.ref(), id);
    return thing;
  }

  /** How wide a thing is in millimetres, if it says so. */
  public OptionalDouble width(ThingSource thing) {
    for (String property : WIDTHS) {
      Formula width = thing.properties().get(property);
      if (width != null) {
        graph.note(new Fact.Property(thing.ref(), property));
        return OptionalDouble.of(scope.length(width));
      }
    }
    return OptionalDouble.empty();
  }

  /** Refuses an attachment that the variant doesn't have. */
  public void require(AttachmentSource attachment, SourceText name) {
    presence.require(attachment.ref(), name);
  }

  /** Notes that what is asked for depends on how an attachment is stated. */
  void note(AttachmentSource attachment) {
    graph.note(new Fact.Stated(attachment.ref()));
  }

  /** Refuses a piece that the variant doesn't have. */
  public void require(PieceSource piece, SourceText number) {
    presence.require(piece.ref(), "piece " + number.text(), number.position());
  }

  /**
   * How much room something takes that is attached: what is stated, or else what the piece or the
   * thing says.
   *
   * @throws FindingException when the variant has no such thing or panel
   */
  public AttachedSize extent(AttachmentSource attachment) {
    graph.note(new Fact.Stated(attachment.ref()));
    AttachedSize own = attachment.thing() == null ? ofPiece(attachment) : ofThing(attachment);
    return new AttachedSize(
        attachment.width() == null ? own.width() : scope.positiveLength(attachment.width()),
        attachment.length() == null ? own.length() : scope.positiveLength(attachment.length()));
  }

  private AttachedSize ofThing(AttachmentSource attachment) {
    ThingSource thing = thing(attachment.thing());
    Formula length = thing.properties().get("length");
    if (length != null) {
      graph.note(new Fact.Property(thing.ref(), "length"));
    }
    return new AttachedSize(width(thing).orElse(0), length == null ? 0 : scope.length(length));
  }

  private AttachedSize ofPiece(AttachmentSource attachment) {
    PieceSource piece = piece(attachment.piece().text()).orElseThrow(DemandGraph.Unavailable::new);
    Panel panel = shapes.shape(piece.panel());
    if (attachment.end() == null) {
      Box box = panel.outline().bounds();
      return new AttachedSize(box.width(), box.height());
    }
    Path end = PatternScope.edge(panel, attachment.end());
    Point inward = end.end().minus(end.start()).unit().quarterTurn();
    double far = 0;
    for (Edge edge : panel.edges()) {
      far = Math.max(far, edge.path().start().minus(end.start()).dot(inward));
    }
    return new AttachedSize(end.length(), far);
  }
}
