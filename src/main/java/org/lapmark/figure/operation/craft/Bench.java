package org.lapmark.figure.operation.craft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.figure.operation.frame.Cut;
import org.lapmark.figure.operation.frame.Frame;
import org.lapmark.figure.operation.frame.Material;
import org.lapmark.figure.operation.frame.Seen;
import org.lapmark.figure.operation.plan.Plan;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Staging;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Key;

/** Where an operation is worked in one variant: its amounts, its materials and its words. */
public final class Bench {
  private static final double LONGEST = 2_000;

  private final Craft craft;
  private final Stated stated;
  private final Staging staging;
  private final Optional<Given> given;
  private final Map<String, Object> said = new LinkedHashMap<>();

  /**
   * The bench of an operation.
   *
   * @param craft the kind
   * @param stated what is stated of it
   * @param staging the variant
   */
  public Bench(Craft craft, Stated stated, Staging staging) {
    this.craft = craft;
    this.stated = stated;
    this.staging = staging;
    this.given =
        Optional.ofNullable(stated.name()).map(name -> Given.of(craft.named(), name, staging));
  }

  /** Whether something is stated. */
  public boolean has(Key<?> key) {
    return stated.has(key);
  }

  /** What is stated, or something else. */
  public <T> T or(Key<T> key, T otherwise) {
    return stated.has(key) ? stated.get(key) : otherwise;
  }

  /** A length that has to lie within limits. */
  public double length(Key<Formula> key, double least, double most) {
    if (isGiven(key)) {
      double length = given.get().length(key).orElseThrow(() -> lacks(key));
      staging.requireWithin(stated.name().position(), length, least, Math.max(least, most));
      return keep(key, length);
    }
    return keep(key, staging.length(stated.get(key), least, Math.max(least, most)));
  }

  private boolean isGiven(Key<?> key) {
    return given.isPresent() && craft.given().contains(key);
  }

  private FindingException lacks(Key<?> key) {
    return Faults.of(
        stated.name().position(),
        FigureCode.FIGURE_OPERATION_LACKS,
        "name",
        stated.name().text(),
        "key",
        key.name());
  }

  /** A length that has to lie within limits, if it is stated. */
  public double length(Key<Formula> key, double least, double most, double otherwise) {
    return stated.has(key) || isGiven(key) ? length(key, least, most) : keep(key, otherwise);
  }

  /** A length of at least so much. */
  public double length(Key<Formula> key, double least) {
    return length(key, least, LONGEST);
  }

  private double keep(Key<?> key, double length) {
    said.put(key.name(), printed(length));
    return length;
  }

  /** The seam allowance, which the operation needs to be so wide. */
  public double allowance(double least) {
    if (given.isEmpty()) {
      return length(Amounts.ALLOWANCE, least);
    }
    double allowance =
        given.get().length(Amounts.ALLOWANCE).orElseThrow(() -> lacks(Amounts.ALLOWANCE));
    if (allowance < least - 1e-6) {
      throw Faults.of(
          stated.name().position(),
          FigureCode.FIGURE_ALLOWANCE_NARROW,
          "name",
          stated.name().text(),
          "value",
          Staging.hundredth(allowance),
          "least",
          Staging.hundredth(least),
          "size",
          staging.size());
    }
    return keep(Amounts.ALLOWANCE, allowance);
  }

  /** The radius of a curve that bends outward, or inward. */
  public double radius(boolean outward, double least, double otherwise) {
    if (!isGiven(Amounts.RADIUS)) {
      return length(Amounts.RADIUS, least, LONGEST, Math.max(least, otherwise));
    }
    double radius = given.get().length(Amounts.RADIUS).orElseThrow(() -> lacks(Amounts.RADIUS));
    if (radius == 0 || radius > 0 != outward) {
      throw Faults.of(
          stated.name().position(),
          FigureCode.FIGURE_OPERATION_CURVE,
          "name",
          stated.name().text(),
          "bends",
          radius == 0 ? "straight" : radius > 0 ? "outward" : "inward",
          "size",
          staging.size());
    }
    double size = Math.abs(radius);
    staging.requireWithin(stated.name().position(), size, least, Double.MAX_VALUE);
    return keep(Amounts.RADIUS, size);
  }

  /** The angle inside a corner, in degrees. */
  public double angle() {
    return given.map(Given::angle).orElse(90.0);
  }

  /** The second of two distances: as stated, or what the first leaves of a given allowance. */
  public double second(double first, double least) {
    if (given.isEmpty()) {
      return length(Amounts.SECOND, least);
    }
    return keep(Amounts.SECOND, allowance(first + least) - first);
  }

  /** Lets sentences say something more. */
  public void say(String name, String value) {
    said.put(name, value);
  }

  /** The material that is worked. */
  public Material cloth() {
    return material(Amounts.CLOTH);
  }

  /** The material that it is worked with: the same unless it is stated. */
  public Material with() {
    boolean other =
        isGiven(Amounts.WITH)
            ? given.get().material(Amounts.WITH).isPresent()
            : stated.has(Amounts.WITH);
    return other ? material(Amounts.WITH) : keep(Amounts.WITH, cloth());
  }

  /** A further material. */
  public Material material(Key<SourceText> key) {
    return keep(
        key,
        isGiven(key)
            ? given.get().material(key).orElseThrow(() -> lacks(key))
            : material(stated.get(key)));
  }

  /** A zip’s tape. */
  public Material tape() {
    String tape = label("tape");
    return new Material(Optional.empty(), tape, tape);
  }

  private Material keep(Key<?> key, Material material) {
    said.put(key.name(), material.said());
    return material;
  }

  /** The materials of a stack, from the top down. */
  public List<Material> stack() {
    List<Material> stack = new ArrayList<>();
    stated.get(Amounts.STACK).entries().forEach(id -> stack.add(material(id)));
    said.put("stack", String.join(", ", stack.stream().map(Material::said).toList()));
    return stack;
  }

  private Material material(SourceText id) {
    String material = staging.names().material(id);
    String name = staging.cloths().name(material);
    return new Material(Optional.of(staging.cloths().texture(material)), name, name);
  }

  /** A length as readers see it. */
  public String printed(double length) {
    return staging.printed(length);
  }

  /** A word for a label. */
  public String label(String key, Object... arguments) {
    return staging.words().word("operation.label." + key, arguments);
  }

  /** A moment that is shown in section, and from above where that is asked for. */
  public Frame section(String moment, Cut cut) {
    boolean both = or(Amounts.PLAN, false);
    Frame frame =
        frame(
            moment,
            both ? new Seen(cut.scene()) : cut.scene(),
            Optional.of(staging.words().word("section.note")));
    return both ? frame.with(staging.words().word("operation.plan.said")) : frame;
  }

  /** A moment that is seen from above. */
  public Frame plan(String moment, Plan plan) {
    return frame(moment, plan.scene(), Optional.empty());
  }

  /** The same moments with a caution under them. */
  public List<Frame> heeding(String caution, List<Frame> frames) {
    String words = staging.words().word("operation.caution." + caution);
    List<Frame> all = new ArrayList<>();
    frames.forEach(frame -> all.add(frame.remarked(words)));
    int last = all.size() - 1;
    all.set(last, all.get(last).with(words.replace('\n', ' ')));
    return all;
  }

  private Frame frame(String moment, Scene scene, Optional<String> note) {
    String key = "operation." + craft.word() + "." + moment;
    List<Object> arguments = new ArrayList<>();
    said.forEach(
        (name, value) -> {
          arguments.add(name);
          arguments.add(value);
        });
    String sentence = staging.words().word(key + ".said", arguments.toArray());
    return new Frame(
        staging.words().word(key),
        scene,
        sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1),
        note);
  }
}
