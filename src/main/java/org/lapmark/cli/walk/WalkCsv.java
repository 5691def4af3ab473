package org.lapmark.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.cli.console.Csv;
import org.lapmark.cli.console.Millimetres;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.publish.EvaluatedFolder;
import org.lapmark.seam.Clipping;
import org.lapmark.seam.Joint;
import org.lapmark.seam.NotchLine;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/**
 * A walk as one table of comma-separated values (RFC 4180, lines ended by CR LF). The column {@code
 * row} says what a row is about: {@code side}, {@code basted} (a layer on the side), {@code tab},
 * {@code notch}, {@code corner}, {@code allowance} or {@code clip}. Lengths are millimetres, with a
 * decimal point and two decimals. Of a notch, {@code at} is where it lies on the first side, {@code
 * length} where it lies on the other.
 */
public final class WalkCsv {
  private static final List<String> HEAD =
      List.of(
          "pattern",
          "size",
          "choices",
          "seam",
          "row",
          "side",
          "name",
          "parts",
          "at",
          "length",
          "ease",
          "difference",
          "tolerance",
          "verdict");

  private WalkCsv() {}

  public static String of(List<FolderReport> all, List<EvaluatedFolder> walks) {
    StringBuilder text = new StringBuilder();
    Csv.append(text, HEAD);
    for (int i = 0; i < walks.size(); i++) {
      for (EvaluatedPattern pattern : walks.get(i).patterns()) {
        for (WalkedSeam seam : pattern.seams()) {
          List<String> lead =
              List.of(
                  all.get(i).pattern(),
                  pattern.variant().size(),
                  WalkWords.choices(pattern),
                  seam.name());
          rows(seam)
              .forEach(
                  row -> {
                    List<String> cells = new ArrayList<>(lead);
                    cells.addAll(row);
                    Csv.append(text, cells);
                  });
        }
      }
    }
    return text.toString();
  }

  private static List<List<String>> rows(WalkedSeam seam) {
    List<List<String>> rows = new ArrayList<>();
    for (int i = 0; i < seam.sides().size(); i++) {
      SeamSide side = seam.sides().get(i);
      rows.add(length("side", i, side.name(), side, seam.deviation(i), seam.tolerance()));
      for (int layer = 0; layer < side.basted().size(); layer++) {
        rows.add(
            length(
                "basted",
                i,
                "",
                side.basted().get(layer),
                seam.layerDeviation(i, layer),
                seam.tolerance()));
      }
      for (SeamSide.Tab tab : side.tabs()) {
        rows.add(row("tab", i, "", tab.name(), mm(tab.at()), mm(tab.width()), "", "", "", ""));
      }
    }
    for (NotchLine line : seam.notchLines()) {
      rows.add(
          row(
              "notch",
              line.side(),
              line.first().map(WalkWords::mark).orElse(""),
              line.second().map(WalkWords::mark).orElse(""),
              line.first().map(WalkCsv::at).orElse(""),
              line.second().map(WalkCsv::at).orElse(""),
              "",
              line.verdict() == NotchLine.Verdict.ALONE ? "" : mm(line.difference()),
              "",
              WalkWords.word(line.verdict())));
    }
    for (Joint joint : seam.joints()) {
      rows.add(
          row(
              "corner",
              joint.side(),
              "",
              joint.before() + " + " + joint.after(),
              mm(joint.at()),
              "",
              "",
              mm(joint.deviation()),
              mm(Joint.TOLERANCE),
              joint.isTrue() ? "true" : "not true"));
    }
    List<Double> allowances = seam.allowances();
    if (!allowances.isEmpty()) {
      rows.add(
          row(
              "allowance",
              0,
              "",
              allowances.stream().map(WalkCsv::mm).collect(Collectors.joining(" ")),
              "",
              "",
              "",
              mm(allowances.get(allowances.size() - 1) - allowances.get(0)),
              "",
              WalkWords.verdict(allowances.size() == 1)));
    }
    for (Clipping clip : seam.clippings()) {
      rows.add(
          row(
              "clip",
              clip.side(),
              clip.isCorner()
                  ? "1 x " + mm(clip.depth()) + " at a corner"
                  : clip.count() + " x " + mm(clip.depth()) + " every " + mm(clip.spacing()),
              String.join(" + ", clip.parts()),
              mm(clip.from()),
              mm(clip.to() - clip.from()),
              "",
              "",
              "",
              ""));
    }
    return rows;
  }

  private static List<String> length(
      String kind, int side, String name, SeamSide walked, double deviation, double tolerance) {
    return row(
        kind,
        side,
        name,
        WalkWords.parts(walked),
        "",
        mm(walked.length()),
        mm(walked.ease()),
        mm(deviation),
        mm(tolerance),
        WalkWords.verdict(Math.abs(deviation) <= tolerance));
  }

  private static List<String> row(String kind, int side, String... cells) {
    List<String> row = new ArrayList<>(List.of(kind, Integer.toString(side + 1)));
    row.addAll(List.of(cells));
    return row;
  }

  private static String at(SeamMark mark) {
    return mm(mark.at());
  }

  private static String mm(double value) {
    return Millimetres.hundredths(value);
  }
}
