package org.lapmark.figure.section;

import java.util.List;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Values;
import org.lapmark.figure.stage.Staging;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.yaml.YamlNode;

/**
 * A point of a section.
 *
 * @param along the distance
 * @param level the level, 0 at the top
 */
record SectionPoint(Formula along, double level) {
  private static final double LONGEST = 2_000;

  static final Form<SectionPoint> FORM =
      Forms.special(
          "distance and level in brackets",
          Forms.schema(
              "type",
              "array",
              "prefixItems",
              List.of(FigureForms.LENGTH.schema(), Forms.schema("type", "number"))),
          (reading, node, what) -> read(node, what));

  static SectionPoint read(YamlNode block, String what) {
    List<YamlNode> both = block.list().orElse(List.of());
    if (both.size() == 2) {
      return new SectionPoint(Values.formula(both.get(0), what), level(both.get(1), what));
    }
    throw Faults.kind(block.position(), what, "a distance and a level in brackets");
  }

  SectionScene.Spot stage(Staging staging) {
    return new SectionScene.Spot(distance(along, staging), level);
  }

  /** A distance along the section. */
  static double distance(Formula along, Staging staging) {
    return staging.length(along, -LONGEST, LONGEST);
  }

  static double level(YamlNode block, String what) {
    String text = Values.text(block, what).text();
    if (!text.matches("\\d{1,2}(\\.\\d{1,3})?") || Double.parseDouble(text) > 20) {
      throw Faults.kind(block.position(), what, "a level: a number from 0 to 20");
    }
    return Double.parseDouble(text);
  }
}
