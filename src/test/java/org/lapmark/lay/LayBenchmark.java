package org.lapmark.lay;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.geometry.Affine;
import org.lapmark.packing.strip.StripArrangement;
import org.lapmark.packing.strip.StripPacker;
import org.lapmark.packing.strip.StripSearch;
import org.lapmark.packing.strip.StripShape;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** Prints how densely the engine lays known instances; its argument is the folder they are in. */
final class LayBenchmark {
  private LayBenchmark() {}

  public static void main(String[] arguments) throws Exception {
    long work = arguments.length > 1 ? Long.parseLong(arguments[1]) : LayPlanner.WORK;
    try (Stream<Path> files = Files.list(Path.of(arguments[0]))) {
      for (Path file : files.filter(path -> path.toString().endsWith(".json")).sorted().toList()) {
        run(Files.readString(file), work);
      }
    }
  }

  private static void run(String json, long work) {
    // Every JSON text is a YAML text.
    Map<?, ?> instance = (Map<?, ?>) new Load(LoadSettings.builder().build()).loadFromString(json);
    double width = number(instance.get("stripWidth"));
    double scale = 1500 / width;
    List<StripShape> shapes = new ArrayList<>();
    double area = 0;
    for (Object entry : (List<?>) instance.get("items")) {
      Map<?, ?> item = (Map<?, ?>) entry;
      List<Affine> poses =
          ((List<?>) item.get("angles")).stream().map(a -> Affine.rotation(number(a))).toList();
      Polygon outline = polygon((List<?>) item.get("outline"), scale);
      for (int i = 0; i < (int) number(item.get("count")); i++) {
        shapes.add(new StripShape(outline, poses));
        area += outline.getArea();
      }
    }
    long start = System.nanoTime();
    StripArrangement arrangement =
        StripPacker.pack(shapes, 1500, new StripSearch(0, 100_000, work, 1));
    System.out.printf(
        "%s: %d pieces, %.2f %% in %d ms; published %s%n",
        instance.get("name"),
        shapes.size(),
        100 * area / (1500 * arrangement.length()),
        (System.nanoTime() - start) / 1_000_000,
        instance.get("published"));
  }

  private static Polygon polygon(List<?> points, double scale) {
    List<Coordinate> ring = new ArrayList<>();
    for (Object point : points) {
      List<?> xy = (List<?>) point;
      ring.add(new Coordinate(number(xy.get(0)) * scale, number(xy.get(1)) * scale));
    }
    if (!ring.get(0).equals2D(ring.get(ring.size() - 1))) {
      ring.add(ring.get(0).copy());
    }
    return new GeometryFactory().createPolygon(ring.toArray(Coordinate[]::new));
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }
}
