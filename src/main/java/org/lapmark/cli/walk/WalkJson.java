package org.lapmark.cli.walk;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.lapmark.cli.console.Json;
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
 * A walk as JSON; lengths are millimetres, rounded to hundredths:
 *
 * <pre>{@code
 * format     1; changes when a reader of this form would break
 * program    name, version
 * patterns   one for each folder, in the order given
 *   pattern, folder
 *   failure    why it couldn't be read to the end; only if so
 *   variants   one for each size
 *     size, choices
 *     seams
 *       seam, closed, agrees, tolerance, turnable
 *       allowances   each once; more than one is a fault
 *       sides        name, parts, length, ease, difference, agrees
 *         basted       parts, length, difference
 *         tabs         name, width, at
 *       notches      side, first, second (kind, at, count, name), verdict, difference
 *       corners      side, before, after, at, angle, true
 *       clips        side, parts, from, to, radius, allowance, depth, spacing, count; at a corner
 *                    turn, in degrees, and no radius and spacing
 * }</pre>
 *
 * Sides are counted from 1.
 */
public final class WalkJson {
  private static final int FORMAT = 1;

  private WalkJson() {}

  public static String of(List<FolderReport> all, List<EvaluatedFolder> walks) {
    List<Object> patterns = new ArrayList<>();
    for (int i = 0; i < walks.size(); i++) {
      List<Object> variants = new ArrayList<>();
      for (EvaluatedPattern pattern : walks.get(i).patterns()) {
        variants.add(
            Json.object(
                "size",
                pattern.variant().size(),
                "choices",
                pattern.variant().choices(),
                "seams",
                pattern.seams().stream().map(WalkJson::seam).toList()));
      }
      patterns.add(
          Json.object(
              "pattern",
              all.get(i).pattern(),
              "folder",
              all.get(i).folder(),
              "failure",
              all.get(i).failure(),
              "variants",
              variants));
    }
    return Json.report(FORMAT, patterns);
  }

  private static Object seam(WalkedSeam seam) {
    List<Object> sides = new ArrayList<>();
    for (int i = 0; i < seam.sides().size(); i++) {
      sides.add(side(seam, i));
    }
    return Json.object(
        "seam",
        seam.name(),
        "closed",
        seam.closed(),
        "agrees",
        seam.agrees(),
        "tolerance",
        mm(seam.tolerance()),
        "turnable",
        seam.isTurnable(),
        "allowances",
        seam.allowances().stream().map(WalkJson::mm).toList(),
        "sides",
        sides,
        "notches",
        seam.notchLines().stream().map(WalkJson::notch).toList(),
        "corners",
        seam.joints().stream().map(WalkJson::corner).toList(),
        "clips",
        seam.clippings().stream().map(WalkJson::clip).toList());
  }

  private static Map<String, Object> side(WalkedSeam seam, int index) {
    SeamSide side = seam.sides().get(index);
    List<Object> basted = new ArrayList<>();
    for (int layer = 0; layer < side.basted().size(); layer++) {
      basted.add(
          Json.object(
              "parts",
              side.basted().get(layer).members(),
              "length",
              mm(side.basted().get(layer).length()),
              "difference",
              mm(seam.layerDeviation(index, layer))));
    }
    return Json.object(
        "name",
        side.name().isEmpty() ? null : side.name(),
        "parts",
        side.members(),
        "length",
        mm(side.length()),
        "ease",
        mm(side.ease()),
        "difference",
        mm(seam.deviation(index)),
        "agrees",
        seam.agrees(index),
        "basted",
        basted,
        "tabs",
        side.tabs().stream()
            .map(
                tab ->
                    Json.object("name", tab.name(), "width", mm(tab.width()), "at", mm(tab.at())))
            .toList());
  }

  private static Map<String, Object> notch(NotchLine line) {
    return Json.object(
        "side",
        line.side() + 1,
        "first",
        line.first().map(WalkJson::mark).orElse(null),
        "second",
        line.second().map(WalkJson::mark).orElse(null),
        "verdict",
        WalkWords.word(line.verdict()),
        "difference",
        mm(line.difference()));
  }

  private static Map<String, Object> mark(SeamMark mark) {
    return Json.object(
        "kind",
        WalkWords.word(mark.kind()),
        "at",
        mm(mark.at()),
        "count",
        mark.count(),
        "name",
        mark.name());
  }

  private static Map<String, Object> corner(Joint joint) {
    return Json.object(
        "side",
        joint.side() + 1,
        "before",
        joint.before(),
        "after",
        joint.after(),
        "at",
        mm(joint.at()),
        "angle",
        mm(joint.angle()),
        "true",
        joint.isTrue());
  }

  private static Map<String, Object> clip(Clipping clip) {
    return Json.object(
        "side",
        clip.side() + 1,
        "parts",
        clip.parts(),
        "from",
        mm(clip.from()),
        "to",
        mm(clip.to()),
        "radius",
        clip.isCorner() ? null : mm(clip.radius()),
        "turn",
        clip.isCorner() ? mm(clip.turn()) : null,
        "allowance",
        mm(clip.allowance()),
        "depth",
        mm(clip.depth()),
        "spacing",
        clip.isCorner() ? null : mm(clip.spacing()),
        "count",
        clip.count());
  }

  private static double mm(double value) {
    return Millimetres.number(value);
  }
}
