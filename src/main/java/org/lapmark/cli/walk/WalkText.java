package org.lapmark.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.lapmark.cli.console.Columns;
import org.lapmark.cli.console.Millimetres;
import org.lapmark.cli.console.Visible;
import org.lapmark.cli.report.FolderReport;
import org.lapmark.cli.report.TextReport;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.publish.EvaluatedFolder;
import org.lapmark.seam.Clipping;
import org.lapmark.seam.Joint;
import org.lapmark.seam.NotchLine;
import org.lapmark.seam.SeamMark;
import org.lapmark.seam.SeamSide;
import org.lapmark.seam.WalkedSeam;

/** A walk as tables for people. */
public final class WalkText {
  private static final String INDENT = "    ";

  private WalkText() {}

  public static String of(List<FolderReport> all, List<EvaluatedFolder> walks) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < walks.size(); i++) {
      for (EvaluatedPattern pattern : walks.get(i).patterns()) {
        text.append(text.isEmpty() ? "" : "\n");
        String choices = WalkWords.choices(pattern);
        text.append(
            Visible.text(
                all.get(i).pattern()
                    + ", size "
                    + pattern.variant().size()
                    + (choices.isEmpty() ? "" : ", " + choices)));
        text.append('\n');
        if (pattern.seams().isEmpty()) {
          text.append("  no seams\n");
        }
        pattern.seams().forEach(seam -> seam(text, seam));
      }
    }
    return text.toString();
  }

  private static void seam(StringBuilder text, WalkedSeam seam) {
    text.append("\n  ")
        .append(Visible.text(seam.name()))
        .append(seam.closed() ? ", a ring: " : ": ")
        .append(WalkWords.verdict(seam.agrees()))
        .append('\n');
    sides(text, seam);
    notches(text, seam);
    for (Joint joint : seam.joints()) {
      line(
          text,
          (joint.isTrue() ? "corners true" : "corners not true")
              + " at "
              + Millimetres.hundredths(joint.at())
              + " of side "
              + WalkWords.side(seam, joint.side())
              + ": "
              + joint.before()
              + " and "
              + joint.after()
              + ", "
              + Millimetres.brief(joint.angle())
              + " degrees together");
    }
    List<Double> allowances = seam.allowances();
    if (!allowances.isEmpty()) {
      line(
          text,
          (allowances.size() == 1 ? "allowance " : "allowances differ: ")
              + allowances.stream().map(Millimetres::brief).collect(Collectors.joining(", ")));
    }
    if (seam.isTurnable()) {
      line(text, "could be sewn turned end for end");
    }
    for (Clipping clip : seam.clippings()) {
      if (clip.isCorner()) {
        line(
            text,
            "clip side "
                + WalkWords.side(seam, clip.side())
                + " at "
                + Millimetres.hundredths(clip.from())
                + " ("
                + String.join(" + ", clip.parts())
                + "): 1 clip, "
                + Millimetres.brief(clip.depth())
                + " deep, to turn a corner of "
                + Millimetres.brief(clip.turn())
                + " degrees");
        continue;
      }
      line(
          text,
          "clip side "
              + WalkWords.side(seam, clip.side())
              + " from "
              + Millimetres.hundredths(clip.from())
              + " to "
              + Millimetres.hundredths(clip.to())
              + " ("
              + String.join(" + ", clip.parts())
              + "): "
              + TextReport.counted(clip.count(), "clip")
              + ", "
              + Millimetres.brief(clip.depth())
              + " deep, "
              + Millimetres.brief(clip.spacing())
              + " apart at the radius of "
              + Millimetres.brief(clip.radius()));
    }
  }

  private static void line(StringBuilder text, String line) {
    text.append(INDENT).append(Visible.text(line)).append('\n');
  }

  private static void sides(StringBuilder text, WalkedSeam seam) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("side", "length", "ease", "difference", "allowed", "", "parts"));
    for (int i = 0; i < seam.sides().size(); i++) {
      SeamSide side = seam.sides().get(i);
      rows.add(
          row(
              WalkWords.side(seam, i),
              side,
              seam.deviation(i),
              seam.tolerance(),
              Math.abs(seam.deviation(i)) <= seam.tolerance()));
      for (int layer = 0; layer < side.basted().size(); layer++) {
        double deviation = seam.layerDeviation(i, layer);
        rows.add(
            row(
                "  basted",
                side.basted().get(layer),
                deviation,
                seam.tolerance(),
                Math.abs(deviation) <= seam.tolerance()));
      }
      for (SeamSide.Tab tab : side.tabs()) {
        rows.add(
            List.of(
                "  tab",
                Millimetres.hundredths(tab.width()),
                "",
                "",
                "",
                "at " + Millimetres.hundredths(tab.at()),
                tab.name()));
      }
    }
    Columns.append(text, INDENT, rows, List.of(false, true, true, true, true, false, false));
  }

  private static List<String> row(
      String name, SeamSide side, double deviation, double tolerance, boolean agrees) {
    return List.of(
        name,
        Millimetres.hundredths(side.length()),
        Millimetres.hundredths(side.ease()),
        Millimetres.hundredths(deviation),
        Millimetres.hundredths(tolerance),
        WalkWords.verdict(agrees),
        WalkWords.parts(side));
  }

  private static void notches(StringBuilder text, WalkedSeam seam) {
    List<NotchLine> lines = seam.notchLines();
    if (lines.isEmpty()) {
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("side 1", "", "side", "", "", "", ""));
    for (NotchLine line : lines) {
      rows.add(
          List.of(
              line.first().map(WalkText::place).orElse(""),
              line.first().map(WalkWords::mark).orElse(""),
              WalkWords.side(seam, line.side()),
              line.second().map(WalkText::place).orElse(""),
              line.second().map(WalkWords::mark).orElse(""),
              WalkWords.word(line.verdict()),
              line.verdict() == NotchLine.Verdict.MISSES
                  ? "by " + Millimetres.brief(line.difference())
                  : ""));
    }
    Columns.append(text, INDENT, rows, List.of(true, false, false, true, false, false, false));
  }

  private static String place(SeamMark mark) {
    return Millimetres.hundredths(mark.at());
  }
}
