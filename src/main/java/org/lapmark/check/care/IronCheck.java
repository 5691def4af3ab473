package org.lapmark.check.care;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.check.rule.CheckCode;
import org.lapmark.check.rule.DocumentLimits;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Originals;
import org.lapmark.check.rule.Rule;
import org.lapmark.figure.Layers;
import org.lapmark.finding.Findings;
import org.lapmark.finding.SourceText;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.PrintedText;
import org.lapmark.source.MakingSource.ToolSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.StepSource;
import org.lapmark.source.ThingSource;

/**
 * Nothing is fused to cloth that must not be ironed, and no step irons it. Something fusible is for
 * the cloth that its own piece is cut from, or else for that of the panel, or the nearest of those
 * that its panel is derived from, of which a piece is cut from cloth; where some of that may be
 * ironed, it is taken to be for that.
 */
public final class IronCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(
          IronCheck::run,
          CheckCode.FUSIBLE_ON_NO_IRON,
          CheckCode.FUSIBLE_WITHOUT_IRON,
          CheckCode.FUSIBLE_UNSTATED,
          CheckCode.STEP_IRONS);

  private static final String NO_IRON = "no_iron";
  private static final String FUSIBLE = "fusible";

  /** The hazard of whatever is hot and pressed. */
  private static final String IRON = "iron";

  private final EvaluatedPattern pattern;
  private final DocumentLimits reach;
  private final Findings findings;
  private final Map<String, ThingSource> materials = new LinkedHashMap<>();

  private IronCheck(EvaluatedPattern pattern, DocumentLimits reach, Findings findings) {
    this.pattern = pattern;
    this.reach = reach;
    this.findings = findings;
    pattern.source().materials().forEach(thing -> materials.put(thing.id().text(), thing));
  }

  static void run(Evaluated evaluated, Findings findings) {
    EvaluatedPattern pattern = evaluated.pattern();
    IronCheck check = new IronCheck(pattern, evaluated.reach(), findings);
    check.materials.values().forEach(check::name);
    check.materials.values().forEach(check::contradiction);
    pattern.source().pieces().forEach(check::piece);
    pattern.source().steps().forEach(check::step);
  }

  private void contradiction(ThingSource thing) {
    if (pattern.is(thing, FUSIBLE) && pattern.is(thing, NO_IRON)) {
      findings.add(
          CheckCode.FUSIBLE_WITHOUT_IRON,
          thing.properties().get(NO_IRON).text().position(),
          "material",
          thing.id().text());
    }
  }

  private void name(ThingSource thing) {
    if (thing.properties().containsKey(FUSIBLE)) {
      return;
    }
    Optional<String> name =
        PrintedText.of(thing.name(), pattern, new Findings())
            .map(PrintedText::text)
            .map(text -> text.toLowerCase(Locale.ROOT));
    if (name.isPresent()
        && says(name.get(), reach.fusible())
        && !says(name.get(), reach.unless())) {
      findings.add(
          CheckCode.FUSIBLE_UNSTATED, thing.name().source().position(), "name", name.get());
    }
  }

  /** Whether a word begins with one of some. */
  private static boolean says(String name, List<String> words) {
    String spaced = " " + name.replaceAll("[^\\p{L}\\p{M}-]+", " ") + " ";
    return words.stream().anyMatch(word -> spaced.contains(" " + word));
  }

  private boolean isFusible(String material) {
    ThingSource thing = materials.get(material);
    return thing != null && pattern.is(thing, FUSIBLE);
  }

  private boolean isNoIron(String material) {
    ThingSource thing = materials.get(material);
    return thing != null && pattern.is(thing, NO_IRON);
  }

  private void piece(PieceSource piece) {
    for (PieceSource.CutSource cut : piece.cuts()) {
      String fusible = cut.material().text();
      if (!isFusible(fusible)) {
        continue;
      }
      List<String> cloths = cloths(piece);
      if (!cloths.isEmpty() && cloths.stream().allMatch(this::isNoIron)) {
        findings.add(
            CheckCode.FUSIBLE_ON_NO_IRON,
            cut.material().position(),
            "number",
            Integer.toString(piece.number()),
            "fusible",
            fusible,
            "cloth",
            cloths.get(0));
      }
    }
  }

  /** The cloths that something fusible cut as a piece may be for. */
  private List<String> cloths(PieceSource piece) {
    List<String> own = cloths(List.of(piece));
    if (!own.isEmpty()) {
      return own;
    }
    for (List<String> panels : Originals.of(pattern.source(), piece.panel().text())) {
      List<String> theirs =
          cloths(
              pattern.source().pieces().stream()
                  .filter(other -> panels.contains(other.panel().text()))
                  .toList());
      if (!theirs.isEmpty()) {
        return theirs;
      }
    }
    return List.of();
  }

  private List<String> cloths(List<PieceSource> pieces) {
    List<String> cloths = new ArrayList<>();
    for (PieceSource piece : pieces) {
      for (PieceSource.CutSource cut : piece.cuts()) {
        ThingSource thing = materials.get(cut.material().text());
        if (thing != null && !isFusible(thing.id().text()) && !Layers.isStiffening(thing)) {
          cloths.add(thing.id().text());
        }
      }
    }
    return cloths;
  }

  /** A step that names an iron and a cloth irons that cloth, unless it names another as well. */
  private void step(StepSource step) {
    Optional<ToolSource> iron = Optional.empty();
    List<SourceText> cloths = new ArrayList<>();
    for (SourceText use : step.uses()) {
      for (ToolSource tool : pattern.source().making().tools()) {
        if (tool.id().text().equals(use.text()) && tool.care().nature().contains(IRON)) {
          iron = Optional.of(tool);
        }
      }
      if (materials.containsKey(use.text())) {
        cloths.add(use);
      }
    }
    if (iron.isPresent()
        && !cloths.isEmpty()
        && cloths.stream().allMatch(cloth -> isNoIron(cloth.text()))) {
      findings.add(
          CheckCode.STEP_IRONS,
          cloths.get(0).position(),
          "tool",
          iron.get().id().text(),
          "cloth",
          cloths.get(0).text());
    }
  }
}
