package org.lapmark.document.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.lapmark.document.manual.AgeWords;
import org.lapmark.document.manual.ComputedValues;
import org.lapmark.document.manual.Hazards;
import org.lapmark.document.manual.Manual;
import org.lapmark.finding.Findings;
import org.lapmark.grade.PrintedText;
import org.lapmark.grade.piece.Piece;
import org.lapmark.measure.Dimension;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.print.piece.EdgeWords;
import org.lapmark.source.MakingSource;
import org.lapmark.wording.Wording;

/** Works out what to know before beginning. */
public final class BeginPage {
  /**
   * What to know before beginning.
   *
   * @param ages how old those are whom it is for, where not all are grown-ups
   * @param facts texts of the author's by key
   * @param allowances which allowances the pieces have; absent when there is no piece
   * @param stitches stitch lengths
   * @param tools what steps use
   * @param abbreviations those that steps use
   */
  record Begin(
      Optional<String> ages,
      List<Fact> facts,
      Optional<Allowances> allowances,
      List<Stitch> stitches,
      List<List<Object>> tools,
      List<Abbreviation> abbreviations) {}

  /** A text of the author's. */
  record Fact(String key, List<Object> text) {}

  /**
   * Which allowances are included.
   *
   * @param usual the most frequent one; absent when most edges, or all, have none
   * @param exceptions other allowances with the pieces or edges that have them
   * @param without the pieces that have none
   */
  record Allowances(Optional<String> usual, List<Exception> exceptions, List<String> without) {}

  /** Edges or whole pieces with another allowance than most. */
  record Exception(String where, String allowance) {}

  /** A kind of stitch and its length. */
  record Stitch(String name, String length) {}

  /** An abbreviation and what it stands for. */
  record Abbreviation(String shortForm, String meaning) {}

  private static final List<String> FACTS = List.of("skill", "time", "machine", "needle", "thread");
  private static final String ABBREVIATION = "abbreviation.";
  private static final String STITCH = "stitch.";
  private static final double SAME = 0.005;
  private static final double INCH = 25.4;

  private final Manual manual;
  private final Wording wording;
  private final ComputedValues computed;

  BeginPage(Manual manual, Wording wording) {
    this.manual = manual;
    this.wording = wording;
    this.computed = new ComputedValues(manual.pattern(), manual.form());
  }

  Begin build(Hazards hazards) {
    MakingSource making = manual.pattern().source().making();
    List<Fact> facts = new ArrayList<>();
    for (String key : FACTS) {
      List<Object> text = printed(making.texts().get(key));
      if (!text.isEmpty()) {
        facts.add(new Fact(key, text));
      }
    }
    return new Begin(
        AgeWords.of(manual.sizes(), wording),
        facts,
        allowances(),
        stitches(making),
        hazards.toolsUsed().stream().map(tool -> printed(tool.name())).toList(),
        abbreviations());
  }

  private List<Object> printed(TemplateText text) {
    return text == null
        ? List.of()
        : PrintedText.of(text, manual.pattern(), manual.form(), new Findings())
            .map(PrintedText::parts)
            .orElse(List.of());
  }

  private Optional<Allowances> allowances() {
    List<Piece> pieces = manual.pattern().pieces();
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    // Told apart as they are printed, counted by the edges of pieces that have any.
    Map<String, Integer> edges = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      if (!isWithout(piece)) {
        for (double allowance : piece.shape().allowances().values()) {
          edges.merge(allowance > SAME ? computed.length(allowance) : "", 1, Integer::sum);
        }
      }
    }
    String most = "";
    for (Map.Entry<String, Integer> entry : edges.entrySet()) {
      if (!edges.containsKey(most) || entry.getValue() > edges.get(most)) {
        most = entry.getKey();
      }
    }
    Optional<String> usual = Optional.of(most).filter(text -> !text.isEmpty());
    List<Exception> exceptions = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (Piece piece : pieces) {
      if (isWithout(piece)) {
        without.add(name(piece));
      } else {
        exceptions.addAll(exceptions(piece, most));
      }
    }
    return Optional.of(new Allowances(usual, exceptions, usual.isEmpty() ? List.of() : without));
  }

  private static boolean isWithout(Piece piece) {
    return piece.shape().allowances().values().stream().allMatch(allowance -> allowance <= SAME);
  }

  private String allowance(Allowance allowance) {
    if (allowance.widest() <= SAME) {
      return "";
    }
    String from = computed.length(allowance.start());
    String to = computed.length(allowance.end());
    return from.equals(to)
        ? to
        : wording.text("before.allowance.changing", Map.of("from", from, "to", to));
  }

  /** The edges of a piece that have another allowance, those with the same one together. */
  private List<Exception> exceptions(Piece piece, String usual) {
    Map<String, List<String>> others = new LinkedHashMap<>();
    piece
        .shape()
        .stated()
        .edges()
        .forEach(
            (edge, allowance) -> {
              String text = allowance(allowance);
              if (!text.equals(usual) && !allowance.fold()) {
                others.computeIfAbsent(text, key -> new ArrayList<>()).add(edge);
              }
            });
    List<Exception> exceptions = new ArrayList<>();
    others.forEach(
        (allowance, names) -> {
          boolean whole = names.size() == piece.shape().allowances().size();
          String where =
              whole
                  ? name(piece)
                  : wording.text(
                      "before.allowance.edges",
                      Map.of(
                          "piece", name(piece),
                          "edges",
                              String.join(
                                  wording.text("list.between"), EdgeWords.of(names, wording))));
          exceptions.add(
              new Exception(
                  where,
                  allowance.isEmpty() ? wording.text("before.allowance.nothing") : allowance));
        });
    return exceptions;
  }

  private String name(Piece piece) {
    return wording.text("piece.in-words", Map.of("number", piece.number(), "name", piece.name()));
  }

  private List<Stitch> stitches(MakingSource making) {
    List<Stitch> stitches = new ArrayList<>();
    making
        .stitches()
        .forEach(
            (name, formula) -> {
              if (isUsed(name)) {
                String shown =
                    wording.messages().containsKey(STITCH + name)
                        ? wording.text(STITCH + name)
                        : name.replace('_', ' ');
                computed
                    .amount(formula, Dimension.LENGTH)
                    .ifPresent(length -> stitches.add(stitch(shown, length)));
              }
            });
    return stitches;
  }

  /** Machines state the length in millimetres, older ones count the stitches of an inch. */
  private Stitch stitch(String name, double length) {
    return new Stitch(name, stitchLength(length, wording));
  }

  /** A stitch length in words. */
  public static String stitchLength(double millimetres, Wording wording) {
    return wording.text(
        "before.stitch-length",
        Map.of("length", millimetres, "count", Math.round(INCH / millimetres)));
  }

  /** Whether a step speaks of a stitch; one that there are no words for is taken to be used. */
  private boolean isUsed(String stitch) {
    String sought = wording.messages().get(STITCH + stitch + ".sought");
    if (sought == null) {
      return true;
    }
    List<String> beginnings = List.of(sought.split("\\s*,\\s*"));
    return manual.steps().words().stream()
        .map(word -> word.toLowerCase(Locale.ROOT))
        .anyMatch(word -> beginnings.stream().anyMatch(word::startsWith));
  }

  private List<Abbreviation> abbreviations() {
    List<String> known =
        wording.messages().keySet().stream()
            .filter(key -> key.startsWith(ABBREVIATION))
            .map(key -> key.substring(ABBREVIATION.length()))
            .sorted()
            .toList();
    return manual.steps().abbreviations(known).stream()
        .map(word -> new Abbreviation(word, wording.text(ABBREVIATION + word)))
        .toList();
  }
}
