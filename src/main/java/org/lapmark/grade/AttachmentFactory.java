package org.lapmark.grade;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Inside;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.panel.AttachedSize;
import org.lapmark.grade.panel.FastenedThings;
import org.lapmark.grade.panel.PatternEvaluator;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.grade.scope.Presence;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.LineMark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PointMark;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.AttachmentSource.AtCorner;
import org.lapmark.source.fastening.AttachmentSource.AtEdge;
import org.lapmark.source.fastening.AttachmentSource.AtMark;
import org.lapmark.source.fastening.AttachmentSource.HeldBy;

/** Finds the places of what is attached in one variant, and whether it has room there. */
final class AttachmentFactory {
  private final PatternEvaluator evaluator;
  private final PatternScope scope;
  private final FastenedThings fastened;
  private final PatternSource source;
  private final Findings findings;
  private final Map<String, Optional<Attached>> built = new LinkedHashMap<>();

  /**
   * Prepares the work.
   *
   * @param source what the variant has
   */
  AttachmentFactory(PatternEvaluator evaluator, PatternSource source, Findings findings) {
    this.evaluator = evaluator;
    this.scope = evaluator.scope();
    this.fastened = evaluator.fastened();
    this.source = source;
    this.findings = findings;
  }

  /** All attachments that can be placed, in the order stated. */
  List<Attached> all() {
    List<Attached> all = new ArrayList<>();
    source.fastenings().attachments().forEach(one -> attached(one).ifPresent(all::add));
    return all;
  }

  /** An attachment; what is wrong with it is reported once, also where it holds others. */
  private Optional<Attached> attached(AttachmentSource attachment) {
    String name = attachment.name().text();
    if (!built.containsKey(name)) {
      built.put(name, Optional.empty()); // For those that hold each other.
      try {
        built.put(name, Optional.of(attachment.where().read(new Placing(attachment))));
      } catch (FindingException e) {
        findings.add(e.finding());
      } catch (DemandGraph.Unavailable e) {
        // Reported where it went wrong.
      }
    }
    return built.get(name);
  }

  /** One attachment, by how its place is stated. */
  private final class Placing implements AttachmentSource.Reader<Attached> {
    private final AttachmentSource attachment;
    private final AttachedSize extent;

    Placing(AttachmentSource attachment) {
      this.attachment = attachment;
      if (attachment.piece() != null) {
        requirePiece(attachment.piece());
      }
      this.extent = fastened.extent(attachment);
    }

    private void requirePiece(SourceText number) {
      boolean made =
          source.pieces().stream()
              .anyMatch(one -> Integer.toString(one.number()).equals(number.text()));
      Optional<PieceSource> stated = fastened.piece(number.text());
      if (!made && stated.isPresent()) {
        fastened.require(stated.get(), number);
        // Its condition holds, and nothing is cut of it.
        throw new FindingException(
            Presence.absent(number.position(), "piece " + number.text(), "", scope.size()));
      }
    }

    @Override
    public Attached atEdge(AtEdge place) {
      Panel panel = evaluator.marks().panel(place.panel());
      Path line = PatternScope.edge(panel, place.edge());
      double at = along(place.at(), line);
      String of = place.panel().text() + '.' + place.edge().text();
      checkWide(of, line, at, place.at() == null ? place.edge() : place.at().text());
      Point inward = line.tangentAtLength(at).quarterTurn();
      Point point = line.atLength(at);
      if (place.inset() == null) {
        return result(place.panel(), edgeAt(panel, place.edge().text(), at), point, inward);
      }
      Point inside = point.plus(inward.times(scope.length(place.inset())));
      checkInside(panel, inside, inward, place.inset().text());
      return result(place.panel(), "", inside, inward);
    }

    @Override
    public Attached atMark(AtMark place) {
      Panel panel = evaluator.marks().panel(place.panel());
      String name = place.mark().text();
      Set<String> known = new LinkedHashSet<>();
      for (LineMark line : panel.marks(LineMark.class)) {
        if (line.isDrawn() && line.name().equals(name)) {
          return onLine(place, panel, line.path());
        }
        if (line.isDrawn()) {
          known.add(line.name());
        }
      }
      for (PointMark mark : panel.marks(PointMark.class)) {
        if (mark.name().equals(name)) {
          Point down = new Point(0, 1);
          checkInside(panel, mark.middle(), down, place.mark());
          return result(place.panel(), "", mark.middle(), down);
        }
        known.add(mark.name());
      }
      throw PatternScope.fault(
          GradeCode.ATTACHMENT_MARK_UNKNOWN,
          place.mark().position(),
          name,
          known,
          "name",
          name,
          "panel",
          place.panel().text(),
          "size",
          scope.size());
    }

    private Attached onLine(AtMark place, Panel panel, Path line) {
      double at = along(place.at(), line);
      SourceText told = place.at() == null ? place.mark() : place.at().text();
      checkWide(place.mark().text(), line, at, told);
      Point inward = line.tangentAtLength(at).quarterTurn();
      checkInside(panel, line.atLength(at), inward, told);
      return result(place.panel(), "", line.atLength(at), inward);
    }

    @Override
    public Attached atCorner(AtCorner place) {
      Panel panel = evaluator.marks().panel(place.panel());
      Point point = PatternScope.corner(panel, place.corner());
      Point inward = new Point(0, 0);
      for (Edge edge : panel.edges()) {
        if (edge.from().equals(place.corner().text())) {
          inward = inward.plus(edge.path().tangentAtLength(0).quarterTurn());
        }
        if (edge.to().equals(place.corner().text())) {
          Point tangent = edge.path().tangentAtLength(edge.path().length());
          inward = inward.plus(tangent.quarterTurn());
        }
      }
      return result(place.panel(), "", point, inward.unit());
    }

    @Override
    public Attached heldBy(HeldBy place) {
      String name = place.holder().text();
      Optional<AttachmentSource> stated = source.fastenings().attachment(name);
      if (stated.isEmpty()) {
        fastened.attachment(name).ifPresent(one -> fastened.require(one, place.holder()));
      }
      Attached holder =
          stated
              .flatMap(AttachmentFactory.this::attached)
              .orElseThrow(DemandGraph.Unavailable::new);
      return new Attached(
          attachment.name().text(),
          attachment.thing() == null ? "" : attachment.thing().text(),
          number(),
          holder.panel(),
          "",
          holder.name(),
          holder.wrongSide() != attachment.wrongSide(),
          holder.end(),
          turned(holder.direction()),
          extent.width(),
          extent.length());
    }

    private OptionalInt number() {
      return attachment.piece() == null
          ? OptionalInt.empty()
          : OptionalInt.of(Integer.parseInt(attachment.piece().text()));
    }

    private Attached result(SourceText panel, String caughtAt, Point point, Point inward) {
      return new Attached(
          attachment.name().text(),
          attachment.thing() == null ? "" : attachment.thing().text(),
          number(),
          panel.text(),
          caughtAt,
          "",
          attachment.wrongSide(),
          point,
          turned(inward),
          extent.width(),
          extent.length());
    }

    private Point turned(Point inward) {
      if (attachment.turn() == null) {
        return inward;
      }
      double degrees = attachment.turn().amount(scope, Dimension.ANGLE);
      return Affine.rotation(degrees).applyVector(inward);
    }

    private double along(Formula at, Path line) {
      return at == null ? line.length() / 2 : scope.along(at, line.length());
    }

    /** What is wider than its line, or hangs over the end of it, can't be sewn there. */
    private void checkWide(String of, Path line, double at, SourceText told) {
      double from = at - extent.width() / 2;
      double to = at + extent.width() / 2;
      boolean round = line.isClosed() && extent.width() <= line.length();
      boolean fits = from >= -Path.JOIN_TOLERANCE && to <= line.length() + Path.JOIN_TOLERANCE;
      if (!(at >= -Path.JOIN_TOLERANCE && at <= line.length() + Path.JOIN_TOLERANCE)
          || !round && !fits) {
        throw scope.fault(
            GradeCode.ATTACHMENT_BEYOND,
            told.position(),
            attachment.name().text(),
            "width",
            Rounded.hundredth(extent.width()),
            "from",
            Rounded.hundredth(from),
            "to",
            Rounded.hundredth(to),
            "line",
            of,
            "length",
            Rounded.hundredth(line.length()));
      }
    }

    /** The whole width of its beginning has to lie on the panel. */
    private void checkInside(Panel panel, Point middle, Point inward, SourceText told) {
      Inside inside = new Inside(panel.outline(), Path.JOIN_TOLERANCE);
      Point aside = turned(inward).quarterTurn().times(extent.width() / 2);
      for (Point end : List.of(middle, middle.plus(aside), middle.minus(aside))) {
        if (!inside.has(end)) {
          throw scope.fault(
              GradeCode.ATTACHMENT_OUTSIDE,
              told.position(),
              attachment.name().text(),
              "panel",
              panel.name(),
              "width",
              Rounded.hundredth(extent.width()));
        }
      }
    }

    /** Which edge of a line a place is on. */
    private String edgeAt(Panel panel, String line, double at) {
      List<String> edges = panel.chains().getOrDefault(line, List.of(line));
      double left = at;
      for (String edge : edges) {
        double length = panel.line(edge).length();
        if (left <= length + Path.JOIN_TOLERANCE) {
          return edge;
        }
        left -= length;
      }
      return edges.get(edges.size() - 1);
    }
  }
}
