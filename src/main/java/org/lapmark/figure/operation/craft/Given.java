package org.lapmark.figure.operation.craft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.stage.PatternNames;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Known;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.fastening.Attached;
import org.lapmark.grade.fastening.Trim;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Intake;
import org.lapmark.panel.Panel;
import org.lapmark.seam.SeamPart;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;
import org.lapmark.source.ThingSource;
import org.lapmark.source.key.Key;

/** What a seam, an edge, a trim or the like says of an operation in one variant. */
final class Given {
  private static final double LEAST_ANGLE = 25;
  private static final double GREATEST_ANGLE = 155;

  private final SourceText name;
  private final Staging staging;
  private final Map<String, Material> materials = new LinkedHashMap<>();
  private final Map<String, DoubleSupplier> lengths = new LinkedHashMap<>();
  private double angle = 90;

  private Given(SourceText name, Staging staging) {
    this.name = name;
    this.staging = staging;
  }

  static Given of(Named named, SourceText name, Staging staging) {
    Given given = new Given(name, staging);
    switch (named) {
      case SEAM -> given.seam(false);
      case GATHERED_SEAM -> given.seam(true);
      case EDGE -> given.edge();
      case CURVE -> given.curve();
      case CORNER -> given.corner();
      case DART -> given.dart();
      case TRIM -> given.trim();
      case ATTACHMENT -> given.attachment();
      case NOTHING -> throw new IllegalArgumentException();
    }
    return given;
  }

  /** A material that it says; nothing where it doesn’t. */
  Optional<Material> material(Key<SourceText> key) {
    return Optional.ofNullable(materials.get(key.name()));
  }

  /** A length that it says; nothing where it doesn’t. */
  OptionalDouble length(Key<Formula> key) {
    DoubleSupplier length = lengths.get(key.name());
    return length == null ? OptionalDouble.empty() : OptionalDouble.of(length.getAsDouble());
  }

  /** The angle inside a corner, in degrees. */
  double angle() {
    return angle;
  }

  private void put(Key<SourceText> key, Material material) {
    materials.put(key.name(), material);
  }

  private void put(Key<Formula> key, DoubleSupplier length) {
    lengths.put(key.name(), length);
  }

  /** A seam; its longer side may be asked for first. */
  private void seam(boolean longerFirst) {
    List<WalkedSeam> seams = staging.pattern().seams();
    WalkedSeam seam =
        seams.stream()
            .filter(one -> one.name().equals(name.text()))
            .findFirst()
            .orElseThrow(
                () ->
                    staging
                        .names()
                        .unknown(
                            FigureCode.FIGURE_SEAM_UNKNOWN,
                            name,
                            seams.stream().map(WalkedSeam::name).toList()));
    List<SeamSide> sides = seam.sides();
    int longer = sides.get(1).length() > sides.get(0).length() ? 1 : 0;
    int first = longerFirst ? longer : 0;
    put(Amounts.CLOTH, material(sides.get(first)));
    put(Amounts.WITH, material(sides.get(1 - first)));
    List<Double> all = seam.allowances();
    put(Amounts.ALLOWANCE, () -> all.isEmpty() ? 0 : all.get(all.size() - 1));
    put(Amounts.FULL, () -> sides.get(longer).length());
    put(Amounts.WIDTH, () -> sides.get(1 - longer).length());
  }

  /** The material of the first part that is cut. */
  private Material material(SeamSide side) {
    return side.parts().stream()
        .filter(part -> !part.panel().isEmpty())
        .map(SeamPart::panel)
        .findFirst()
        .map(this::material)
        .orElseGet(
            () -> {
              String tape = staging.words().word("zip.tape");
              return new Material(Optional.empty(), tape, tape);
            });
  }

  private Material material(String panel) {
    Piece piece =
        staging
            .pattern()
            .pieceOf(panel)
            .filter(one -> !one.cuts().isEmpty())
            .orElseThrow(
                () ->
                    Faults.of(
                        name.position(),
                        FigureCode.FIGURE_OPERATION_UNCUT,
                        "name",
                        name.text(),
                        "panel",
                        panel));
    return material(piece);
  }

  private Material material(Piece piece) {
    String id = staging.names().cloth(piece, null);
    String cloth = staging.cloths().name(id);
    return new Material(
        Optional.of(staging.cloths().texture(id)),
        staging
            .words()
            .word("piece", "number", piece.number(), "name", piece.name(), "cloth", cloth),
        staging
            .words()
            .word("alt.piece", "number", piece.number(), "name", piece.name(), "cloth", cloth));
  }

  private Material thing(String id) {
    String cloth = staging.cloths().name(id);
    return new Material(Optional.of(staging.cloths().texture(id)), cloth, cloth);
  }

  private int dot() {
    int dot = name.text().indexOf('.');
    if (dot <= 0) {
      throw Faults.of(name.position(), FigureCode.FIGURE_OPERATION_NO_EDGE, "name", name.text());
    }
    return dot;
  }

  private Panel panel() {
    return staging.names().panel(name.part(0, dot()));
  }

  /** What stands behind the panel’s name. */
  private SourceText part() {
    return name.part(dot() + 1, name.text().length());
  }

  private void edge() {
    Panel panel = panel();
    edge(panel.name(), staging.names().edges(panel, part()).get(0));
  }

  private void edge(String panel, String edge) {
    put(Amounts.CLOTH, material(panel));
    put(Amounts.ALLOWANCE, () -> allowance(panel, edge));
  }

  private double allowance(String panel, String edge) {
    return staging
        .pattern()
        .pieceOf(panel)
        .map(piece -> piece.shape().allowances().getOrDefault(edge, 0.0))
        .orElse(0.0);
  }

  private void curve() {
    Panel panel = panel();
    SourceText part = part();
    edge(panel.name(), staging.names().line(panel, part).get(0));
    put(Amounts.RADIUS, () -> Bend.of(panel.line(part.text())).radius());
  }

  private void corner() {
    Panel panel = panel();
    String corner = part().text();
    Optional<Edge> into =
        panel.edges().stream().filter(edge -> edge.to().equals(corner)).findFirst();
    Optional<Edge> out =
        panel.edges().stream().filter(edge -> edge.from().equals(corner)).findFirst();
    if (into.isEmpty() || out.isEmpty()) {
      Set<String> known = new TreeSet<>();
      panel.edges().forEach(edge -> known.add(panel.name() + '.' + edge.from()));
      throw unknown("corner", known);
    }
    put(Amounts.CLOTH, material(panel.name()));
    double first = allowance(panel.name(), into.get().name());
    double second = allowance(panel.name(), out.get().name());
    put(Amounts.ALLOWANCE, () -> Math.min(first, second));
    angle = Bend.angle(into.get().path(), out.get().path());
    if (angle < LEAST_ANGLE || angle > GREATEST_ANGLE) {
      throw Faults.of(
          name.position(),
          FigureCode.FIGURE_OPERATION_ANGLE,
          "name",
          name.text(),
          "value",
          Staging.hundredth(angle),
          "least",
          Staging.hundredth(LEAST_ANGLE),
          "most",
          Staging.hundredth(GREATEST_ANGLE),
          "size",
          staging.size());
    }
  }

  private void dart() {
    Panel panel = panel();
    String wanted = part().text();
    List<Intake.Dart> darts = panel.marks(Intake.Dart.class);
    Intake.Dart dart =
        darts.stream()
            .filter(one -> one.name().equals(wanted))
            .findFirst()
            .orElseThrow(
                () -> {
                  Set<String> known = new TreeSet<>();
                  darts.forEach(one -> known.add(panel.name() + '.' + one.name()));
                  return unknown("dart", known);
                });
    put(Amounts.CLOTH, material(panel.name()));
    put(Amounts.WIDTH, dart::width);
    put(
        Amounts.DEPTH,
        () ->
            dart.apex().distance(panel.line(dart.edge()).atLength((dart.from() + dart.to()) / 2)));
  }

  private FindingException unknown(String what, Set<String> known) {
    return Faults.of(
        name.position(),
        FigureCode.FIGURE_OPERATION_UNKNOWN,
        "name",
        name.text(),
        "what",
        what,
        "known",
        Known.listed(known));
  }

  private void trim() {
    PatternNames names = staging.names();
    Trim trim = names.trim(name);
    String[] first = line(trim.along().get(0).line());
    edge(first[0], first[1]);
    if (!trim.facing().isEmpty()) {
      put(Amounts.WITH, material(line(trim.facing().get(0).line())[0]));
    }
    if (staging.pattern().source().materials().stream()
        .anyMatch(thing -> thing.id().text().equals(trim.thing()))) {
      put(Amounts.STRIP, thing(trim.thing()));
    }
    SourceText thing = names.thing(trim);
    put(
        Amounts.WIDTH,
        () -> trim.visibleWidth().orElseGet(() -> names.property(thing, "visible_width")));
    put(Amounts.TAPE, () -> names.property(thing, "tape_width"));
    put(Amounts.CORD, () -> names.property(thing, "diameter"));
  }

  /** The panel and the first edge of an edge or a chain as a trim names it. */
  private String[] line(String text) {
    int dot = text.indexOf('.');
    String panel = text.substring(0, dot);
    Panel on = staging.pattern().panels().get(panel);
    List<String> chain = on.chains().get(text.substring(dot + 1));
    return new String[] {panel, chain == null ? text.substring(dot + 1) : chain.get(0)};
  }

  private void attachment() {
    PatternNames names = staging.names();
    Attached attached = names.attached(name);
    put(Amounts.CLOTH, material(attached.panel()));
    if (attached.piece().isPresent()) {
      staging.pattern().pieces().stream()
          .filter(piece -> piece.number() == attached.piece().getAsInt())
          .filter(piece -> !piece.cuts().isEmpty())
          .findFirst()
          .ifPresent(piece -> put(Amounts.STRIP, material(piece)));
    } else {
      names.material(attached).ifPresent(id -> put(Amounts.STRIP, thing(id)));
    }
    put(Amounts.WIDTH, () -> attached.width() > 0 ? attached.width() : property(attached, "width"));
    put(Amounts.DIAMETER, () -> property(attached, "diameter"));
    put(Amounts.HOLE, () -> property(attached, "inner_width"));
  }

  private double property(Attached attached, String property) {
    Optional<ThingSource> thing =
        Stream.concat(
                staging.pattern().source().hardware().stream(),
                staging.pattern().source().materials().stream())
            .filter(one -> one.id().text().equals(attached.thing()))
            .filter(one -> one.properties().containsKey(property))
            .findFirst();
    if (thing.isEmpty()) {
      throw Faults.of(
          name.position(),
          FigureCode.FIGURE_PROPERTY_MISSING,
          "name",
          attached.thing().isEmpty() ? attached.name() : attached.thing(),
          "property",
          property);
    }
    return staging.length(thing.get().properties().get(property));
  }
}
