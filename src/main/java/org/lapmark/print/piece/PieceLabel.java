package org.lapmark.print.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.lapmark.grade.Cut;
import org.lapmark.grade.GradedPattern;
import org.lapmark.grade.Piece;
import org.lapmark.measure.NumberWords;
import org.lapmark.measure.Value;
import org.lapmark.panel.cutting.Allowance;
import org.lapmark.wording.Wording;

/**
 * The lettering of a piece, set in more and more modest forms, so that the first that fits can be
 * taken.
 */
public class PieceLabel {
  private static final double[] WIDTHS = {400, 62, 48, 38, 30};
  private static final double[] JOINED_WIDTHS = {240, 180, 130, 95, 70};

  private static final double[] UNBROKEN = {10_000};

  /** Lettering roles from the intended size down to the smallest allowed. */
  private static final List<String> SIZES = List.of("", "-9", "-8", "-7");

  /** Allowances below are none, in millimetres. */
  private static final double SAME = 0.005;

  private final Typesetting setting;
  private final Wording wording;
  private final GradedPattern pattern;

  public PieceLabel(Typesetting setting, GradedPattern pattern) {
    this.setting = setting;
    this.wording = setting.wording();
    this.pattern = pattern;
  }

  /**
   * A form of the lettering.
   *
   * @param block the lines
   * @param turned whether they run up the paper
   */
  public record Form(TextBlock block, boolean turned) {
    public double width() {
      return turned ? block.height() : block.width();
    }

    public double height() {
      return turned ? block.width() : block.height();
    }
  }

  /** All that a piece has to say, in the order of preference; each is measured when asked for. */
  public List<Supplier<Form>> full(Piece piece) {
    String title = title(piece);
    List<String> rest = rest(piece);
    List<String> all = new ArrayList<>();
    all.add(title);
    all.addAll(rest);
    String restInOne = joined(rest);
    String allInOne = joined(all);
    List<Supplier<Form>> forms = new ArrayList<>();
    for (String size : SIZES) {
      List<TextBlock.Text> lines = new ArrayList<>();
      lines.add(new TextBlock.Text(title, "piece-number" + size));
      rest.forEach(text -> lines.add(new TextBlock.Text(text, "piece-label" + size)));
      List<TextBlock.Text> joined =
          List.of(
              new TextBlock.Text(title, "piece-number" + size),
              new TextBlock.Text(restInOne, "piece-label" + size));
      List<TextBlock.Text> single = List.of(new TextBlock.Text(allInOne, "piece-label" + size));
      forms.addAll(forms(lines, WIDTHS));
      forms.addAll(forms(joined, JOINED_WIDTHS));
      forms.addAll(forms(single, UNBROKEN));
    }
    return forms;
  }

  private List<Supplier<Form>> forms(List<TextBlock.Text> texts, double[] widths) {
    List<Supplier<Form>> forms = new ArrayList<>();
    for (boolean turned : new boolean[] {false, true}) {
      for (double width : widths) {
        forms.add(() -> new Form(block(texts, width), turned));
      }
    }
    return forms;
  }

  /** Number, name and size alone: for the further tiles of a piece. */
  public List<Supplier<Form>> brief(Piece piece) {
    String text =
        wording.text(
            "piece.short",
            Map.of(
                "number",
                Integer.toString(piece.number()),
                "name",
                piece.name(),
                "size",
                size(piece)));
    List<Supplier<Form>> forms = new ArrayList<>();
    for (String size : SIZES) {
      forms.addAll(
          forms(List.of(new TextBlock.Text(text, "piece-label" + size)), new double[] {400, 40}));
    }
    return forms;
  }

  /** The number alone, for a piece in which nothing else has room. */
  public List<Supplier<Form>> number(Piece piece) {
    List<Supplier<Form>> forms = new ArrayList<>();
    for (String size : SIZES) {
      String number = Integer.toString(piece.number());
      forms.addAll(forms(List.of(new TextBlock.Text(number, "piece-number" + size)), UNBROKEN));
    }
    return forms;
  }

  private TextBlock block(List<TextBlock.Text> texts, double width) {
    return setting.block(texts, width);
  }

  private String title(Piece piece) {
    return wording.text(
        "piece.title", Map.of("number", Integer.toString(piece.number()), "name", piece.name()));
  }

  /** A line for each cut, then one for the allowances. */
  public List<String> cutsAndAllowance(Piece piece) {
    List<String> lines = new ArrayList<>(cuts(piece));
    lines.add(allowance(piece));
    return lines;
  }

  private List<String> rest(Piece piece) {
    List<String> lines = new ArrayList<>(cuts(piece));
    lines.addAll(paper(piece));
    lines.add(pattern.source().masthead().title().text());
    lines.add(
        wording.text(
            sizeKey(),
            Map.of("size", size(piece), "edition", pattern.source().masthead().edition().text())));
    return lines;
  }

  /** The key of the words that name a piece's size. */
  protected String sizeKey() {
    return "piece.size";
  }

  /** The size of a piece. */
  public String size(Piece piece) {
    return pattern.variant().size();
  }

  /** How many are cut from what. */
  public List<String> cuts(Piece piece) {
    List<String> lines = new ArrayList<>();
    for (Cut cut : piece.cuts()) {
      lines.add(wording.text("piece.cut", cut.words()));
    }
    return lines;
  }

  /** What the paper shows: a half or the whole, with or without allowances. */
  public List<String> paper(Piece piece) {
    List<String> lines = new ArrayList<>();
    if (isHalf(piece)) {
      lines.add(wording.text("piece.fold"));
    }
    lines.add(allowance(piece));
    return lines;
  }

  /** Whether what is shown of a piece is a half. */
  protected boolean isHalf(Piece piece) {
    return piece.isFolded();
  }

  private String allowance(Piece piece) {
    // A fold has no allowance to speak of, unless there is nothing else.
    Map<String, List<String>> edges = new LinkedHashMap<>();
    piece
        .shape()
        .stated()
        .edges()
        .forEach(
            (edge, allowance) -> {
              if (!allowance.fold()) {
                edges.computeIfAbsent(width(allowance), text -> new ArrayList<>()).add(edge);
              }
            });
    String none = wording.text("mark.allowance.none");
    String usual = none;
    for (Map.Entry<String, List<String>> each : edges.entrySet()) {
      if (!edges.containsKey(usual) || each.getValue().size() > edges.get(usual).size()) {
        usual = each.getKey();
      }
    }
    String between = NumberWords.of(wording).between();
    List<String> others = new ArrayList<>();
    edges.remove(usual);
    edges.forEach(
        (text, names) ->
            others.add(
                wording.text(
                    "mark.allowance",
                    Map.of(
                        "edge",
                        String.join(between, EdgeWords.of(names, wording)),
                        "value",
                        text))));
    String all =
        usual.equals(none)
            ? wording.text("piece.allowance.none")
            : wording.text("piece.allowance", Map.of("value", usual));
    for (int i = 0; i < others.size(); i++) {
      all =
          wording.text(
              "piece.allowance.except",
              Map.of("allowance", all, "first", i == 0 ? "yes" : "no", "other", others.get(i)));
    }
    return all;
  }

  private String width(Allowance allowance) {
    if (allowance.widest() <= SAME) {
      return wording.text("mark.allowance.none");
    }
    String from = length(allowance.start());
    String to = length(allowance.end());
    return from.equals(to)
        ? from
        : wording.text("mark.allowance.changing", Map.of("from", from, "to", to));
  }

  private String length(double millimetres) {
    return pattern
        .source()
        .masthead()
        .form()
        .with(NumberWords.of(wording))
        .print(Value.Quantity.length(millimetres));
  }

  private String joined(List<String> texts) {
    String all = texts.get(0);
    for (String text : texts.subList(1, texts.size())) {
      all = wording.text("piece.joined", Map.of("first", all, "second", text));
    }
    return all;
  }
}
