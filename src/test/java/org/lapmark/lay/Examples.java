package org.lapmark.lay;

import static org.lapmark.lay.Samples.CANVAS;
import static org.lapmark.lay.Samples.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Layouts of every kind that a drawing has to cope with. */
final class Examples {
  private static final Point DOWN = new Point(0, 1);

  private Examples() {}

  /** Layouts by name. */
  static Map<String, Lay> all() {
    Map<String, Lay> lays = new LinkedHashMap<>();
    add(lays, "bag", bag("usable_width", "145 cm (57 in)", "other_width", "110 cm (43 in)"));
    add(lays, "bag-nap", bag("usable_width", "145 cm (57 in)", "nap", "true"));
    add(
        lays,
        "foam",
        new Samples()
            .material(
                CANVAS, "closed-cell foam", "usable_width", "50 cm (20 in)", "no_grain", "true")
            .piece("End stiffener", Samples.halfDisc(70, 60), DOWN, cut(CANVAS, 2, 0)));
    add(
        lays,
        "piping",
        new Samples()
            .material(CANVAS, "bias cloth for the piping", "usable_width", "110 cm (43 in)")
            .bias("Piping strip", 34, 640, cut(CANVAS, 2, 0)));
    add(
        lays,
        "joined",
        new Samples()
            .material(CANVAS, "bias cloth", "usable_width", "40 cm (16 in)")
            .bias("Binding strip", 40, 1400, cut(CANVAS, 1, 0)));
    add(
        lays,
        "tiny",
        new Samples()
            .material(CANVAS, "leather", "usable_width", "1200 mm")
            .rectangle("Pull tab", 24, 30, cut(CANVAS, 4, 0))
            .rectangle("Ring keeper for the shoulder strap", 14, 60, cut(CANVAS, 3, 1))
            .rectangle("Patch", 11, 11, cut(CANVAS, 2, 0)));
    add(lays, "long", rack());
    add(
        lays,
        "rows",
        new Samples()
            .material(CANVAS, "ribbon cloth", "usable_width", "200 mm")
            .rectangle("Flag", 30, 45, cut(CANVAS, 180, 3))
            .piece(
                "Pennant", wedge().transformed(Affine.scaling(0.4, 0.9)), DOWN, cut(CANVAS, 7, 4)));
    return lays;
  }

  private static void add(Map<String, Lay> lays, String name, Samples samples) {
    for (ClothPlan plan : LayPlanner.plan(samples.pattern(), new Findings(), LayPlanner.WORK)) {
      for (Lay lay : plan.lays()) {
        lays.put(name + (lays.containsKey(name) ? "-other" : ""), lay);
      }
    }
  }

  static Samples bag(String... properties) {
    return new Samples()
        .material(CANVAS, "cotton canvas, 400 g/m²", properties)
        .piece("End", Samples.halfDisc(85, 80), DOWN, cut(CANVAS, 2, 1))
        .rectangle("Base gusset", 320, 385, cut(CANVAS, 1, 0))
        .rectangle("Rear strip", 320, 80, cut(CANVAS, 1, 0))
        .rectangle("Front strip", 320, 60, cut(CANVAS, 1, 0))
        .piece("Flap", wedge(), DOWN, cut(CANVAS, 2, 1));
  }

  private static Path wedge() {
    return Path.polyline(
        List.of(
            new Point(0, 0),
            new Point(260, 0),
            new Point(200, 180),
            new Point(140, 120),
            new Point(60, 180),
            new Point(0, 0)));
  }

  /** A large work: many pieces on a long narrow cloth. */
  private static Samples rack() {
    Samples samples =
        new Samples()
            .material(CANVAS, "deck cloth", "usable_width", "90 cm (36 in)", "margin", "0.1");
    SplittableRandom random = new SplittableRandom(11);
    List<String> names =
        List.of("Side", "Back panel", "Pocket", "Upper shelf", "Strap", "Facing", "Lid", "Tie");
    for (String name : new ArrayList<>(names)) {
      double width = random.nextDouble(50, 420);
      double height = random.nextDouble(80, 700);
      int count = 1 + random.nextInt(4);
      samples.rectangle(name, width, height, cut(CANVAS, count, count / 2));
    }
    return samples;
  }
}
