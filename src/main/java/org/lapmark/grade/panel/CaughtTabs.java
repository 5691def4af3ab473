package org.lapmark.grade.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Rounded;
import org.lapmark.finding.SourceText;
import org.lapmark.geometry.Path;
import org.lapmark.grade.code.GradeCode;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.grade.scope.PatternScope;
import org.lapmark.panel.ClosedLine;
import org.lapmark.panel.Panel;
import org.lapmark.seam.SeamSide;
import org.lapmark.source.SeamSource;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.AttachmentSource.AtEdge;

/**
 * What is caught in seams, and where: at the place that the seam states, or that the attachment
 * states whose edge is sewn in it.
 */
public final class CaughtTabs {
  /** Two statements of one place that are no farther apart are meant to be the same. */
  private static final double SAME_PLACE = 0.5;

  private final PatternScope scope;
  private final FastenedThings fastened;
  private final SeamAssembler assembler;

  CaughtTabs(PatternScope scope, FastenedThings fastened, SeamAssembler assembler) {
    this.scope = scope;
    this.fastened = fastened;
    this.assembler = assembler;
  }

  /** An edge of a panel and how far along it, clockwise and as drawn, something stands. */
  private record Spot(Panel panel, String edge, double at) {}

  /**
   * Something caught in a side of a seam.
   *
   * @param whole how long the side is
   */
  SeamSide.Tab tab(SeamSource seam, int side, SeamSource.Tab tab, double whole) {
    SourceText text = tab.width().text();
    Optional<AttachmentSource> attachment = fastened.attachment(text.text());
    attachment.ifPresent(one -> fastened.require(one, text));
    double width =
        attachment.isPresent()
            ? fastened.extent(attachment.get()).width()
            : assembler.length(tab.width());
    double at = tab.at() == null ? placed(seam, side, tab) : scope.along(tab.at(), whole);
    if (!(at - width / 2 >= -Path.JOIN_TOLERANCE
        && at + width / 2 <= whole + Path.JOIN_TOLERANCE)) {
      throw new FindingException(
          Finding.of(
              GradeCode.SEAM_TAB_OUTSIDE,
              (tab.at() == null ? text : tab.at().text()).position(),
              "tab",
              text.text(),
              "from",
              Rounded.hundredth(at - width / 2),
              "to",
              Rounded.hundredth(at + width / 2),
              "length",
              Rounded.hundredth(whole),
              "size",
              scope.size()));
    }
    return new SeamSide.Tab(text.text(), width, at);
  }

  /**
   * What contradicts itself: a place on a seam that isn't where the attachment says that it stands.
   * What is attached at an edge that isn't sewn in the seam says nothing of it.
   */
  public List<Finding> contradictions(SeamSource seam, int side) {
    List<Finding> contradictions = new ArrayList<>();
    double whole = whole(seam, side);
    for (SeamSource.Tab tab : seam.sides().get(side).tabs()) {
      if (tab.at() == null) {
        continue;
      }
      double at = scope.along(tab.at(), whole);
      List<Double> places = places(seam, side, tab);
      if (!places.isEmpty()
          && places.stream().noneMatch(place -> Math.abs(place - at) <= SAME_PLACE)) {
        contradictions.add(
            Finding.of(
                GradeCode.SEAM_TAB_ELSEWHERE,
                tab.at().text().position(),
                "tab",
                tab.width().text().text(),
                "at",
                Rounded.hundredth(at),
                "place",
                Rounded.hundredth(places.get(0)),
                "size",
                scope.size()));
      }
    }
    return contradictions;
  }

  private double placed(SeamSource seam, int side, SeamSource.Tab tab) {
    List<Double> places = places(seam, side, tab);
    if (places.size() == 1) {
      return places.get(0);
    }
    SourceText text = tab.width().text();
    boolean attached = fastened.attachment(text.text()).isPresent();
    throw new FindingException(
        Finding.of(
            GradeCode.SEAM_TAB_UNPLACED,
            text.position(),
            "tab",
            text.text(),
            "why",
            !attached ? "unattached" : places.isEmpty() ? "elsewhere" : "several"));
  }

  /** Where an attachment that stands at an edge may lie on a side, from the seam's start. */
  private List<Double> places(SeamSource seam, int side, SeamSource.Tab tab) {
    Optional<Spot> spot = fastened.attachment(tab.width().text().text()).flatMap(this::spot);
    if (spot.isEmpty()) {
      return List.of();
    }
    SeamSource.Side own = seam.sides().get(side);
    List<Double> places =
        distinct(
            Stream.concat(
                on(seam, side, own, assembler.stretches(seam, side), spot.get()).stream(),
                own.basted().stream()
                    .flatMap(
                        layer ->
                            on(seam, side, layer, assembler.layer(seam, side, layer), spot.get())
                                .stream())));
    if (!places.isEmpty()) {
      return places;
    }
    // What is caught between two sides may be stated on either; where one is eased, so is this.
    double whole = whole(seam, side);
    return distinct(
        IntStream.range(0, seam.sides().size())
            .filter(other -> other != side)
            .boxed()
            .flatMap(
                other -> {
                  double ratio = whole / whole(seam, other);
                  return on(
                          seam,
                          other,
                          seam.sides().get(other),
                          assembler.stretches(seam, other),
                          spot.get())
                      .stream()
                      .map(place -> place * ratio);
                }));
  }

  private static List<Double> distinct(Stream<Double> places) {
    List<Double> distinct = new ArrayList<>();
    places.forEach(
        place -> {
          if (distinct.stream().noneMatch(one -> Math.abs(one - place) <= Path.JOIN_TOLERANCE)) {
            distinct.add(place);
          }
        });
    return distinct;
  }

  private double whole(SeamSource seam, int side) {
    return assembler.lengths(seam, side).stream().mapToDouble(Double::doubleValue).sum();
  }

  private List<Double> on(
      SeamSource seam,
      int side,
      SeamSource.Side sewn,
      List<Optional<SeamAssembler.Stretch>> stretches,
      Spot spot) {
    List<Double> lengths = sewn.members().stream().map(assembler::length).toList();
    double whole = lengths.stream().mapToDouble(Double::doubleValue).sum();
    double start = assembler.start(seam, side, whole);
    List<Double> places = new ArrayList<>();
    double before = 0;
    for (int i = 0; i < stretches.size(); i++) {
      if (stretches.get(i).isPresent()) {
        SeamAssembler.Stretch stretch = stretches.get(i).get();
        List<String> edges = stretch.edges();
        if (stretch.panel().name().equals(spot.panel().name()) && edges.contains(spot.edge())) {
          double drawn = SeamAssembler.before(stretch.panel(), edges, spot.edge()) + spot.at();
          double at = ClosedLine.of(stretch.panel(), stretch.line()).closed(drawn);
          if (at >= stretch.from() - Path.JOIN_TOLERANCE
              && at <= stretch.to() + Path.JOIN_TOLERANCE) {
            double place =
                before + (stretch.clockwise() ? at - stretch.from() : stretch.to() - at) - start;
            places.add(start == 0 ? place : place - whole * Math.floor(place / whole));
          }
        }
      }
      before += lengths.get(i);
    }
    return places;
  }

  private Optional<Spot> spot(AttachmentSource attachment) {
    fastened.note(attachment);
    if (!(attachment.where() instanceof AtEdge place)) {
      return Optional.empty();
    }
    Panel panel = assembler.shape(place.panel());
    Path line = PatternScope.edge(panel, place.edge());
    double left = place.at() == null ? line.length() / 2 : scope.along(place.at(), line.length());
    String name = place.edge().text();
    for (String edge : panel.chains().getOrDefault(name, List.of(name))) {
      double length = panel.line(edge).length();
      if (left <= length + Path.JOIN_TOLERANCE) {
        return Optional.of(new Spot(panel, edge, left));
      }
      left -= length;
    }
    // It is told of the attachment that its place isn't on the edge.
    throw new DemandGraph.Unavailable();
  }
}
