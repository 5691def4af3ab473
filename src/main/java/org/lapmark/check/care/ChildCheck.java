package org.lapmark.check.care;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.check.rule.CareCode;
import org.lapmark.check.rule.CareWords;
import org.lapmark.check.rule.Evaluated;
import org.lapmark.check.rule.Phrases;
import org.lapmark.check.rule.PrintedTexts;
import org.lapmark.check.rule.Prose;
import org.lapmark.check.rule.Rule;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;
import org.lapmark.source.CareSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.ThingKind;
import org.lapmark.source.ThingSource;

/** Nothing that is tied or drawn goes round a child's neck. */
public final class ChildCheck {
  public static final Rule<Evaluated> RULE =
      new Rule<>(ChildCheck::run, CareCode.CHILD_NECK_CORD, CareCode.CHILD_CORD_PLACE);

  private static final List<String> AT_NECK = List.of("neck", "hood", "head");
  private static final String CORDS = "cords";

  private final PatternSource source;
  private final String size;
  private final CareWords words;
  private final Findings findings;

  private ChildCheck(Evaluated evaluated, Findings findings) {
    this.source = evaluated.source();
    this.size = evaluated.pattern().variant().size();
    this.words = evaluated.sought();
    this.findings = findings;
  }

  static void run(Evaluated evaluated, Findings findings) {
    new ChildCheck(evaluated, findings).run();
  }

  private void run() {
    if (!source.making().use().agesOf(size).isChild()) {
      return;
    }
    for (ThingSource thing : PrintedTexts.things(source)) {
      String name = thing.name().source().text().replace('_', ' ');
      if (isTied(thing.care(), name)) {
        check(thing.id().text(), name, thing.id().position());
      }
    }
    for (PieceSource piece : source.pieces()) {
      String name = piece.name().source().text();
      if (words.list("child.tie.sought").in(name)) {
        check(Integer.toString(piece.number()), name, piece.name().source().position());
      }
    }
  }

  /** A kind says it; where none is stated, a hazard does, and then the name. */
  private boolean isTied(CareSource care, String name) {
    if (!care.kinds().isEmpty()) {
      return care.kinds().stream().anyMatch(ThingKind::isTied);
    }
    return care.nature().contains(CORDS) || words.list("child.tie.sought").in(name);
  }

  private void check(String what, String name, Position position) {
    String place = source.making().use().placeOf(what);
    boolean atNeck =
        place == null ? words.list("child.neck.sought").in(name) : AT_NECK.contains(place);
    if (atNeck) {
      findings.add(CareCode.CHILD_NECK_CORD, position, "name", name, "size", size);
    } else if (place == null && hasNeck()) {
      findings.add(CareCode.CHILD_CORD_PLACE, position, "name", name, "what", what, "size", size);
    }
  }

  /** Whether anything that is said of the article speaks of a neck or of what is worn on it. */
  private boolean hasNeck() {
    List<String> texts = new ArrayList<>();
    texts.add(source.masthead().title().text());
    if (source.masthead().summary() != null) {
      texts.add(source.masthead().summary().source().text());
    }
    source.pieces().forEach(piece -> texts.add(piece.name().source().text()));
    source
        .panels()
        .forEach(
            panel -> {
              texts.add(panel.name().text());
              panel.edges().forEach(edge -> texts.add(edge.name().text()));
            });
    source.seams().forEach(seam -> texts.add(seam.name().text()));
    for (var step : source.steps()) {
      texts.add(step.title().text());
      texts.add(Prose.of(step.body()));
    }
    Phrases article = words.list("child.article.sought");
    return texts.stream().anyMatch(text -> article.in(text.replace('_', ' ')));
  }
}
