package org.lapmark.panel.derivation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelException;
import org.lapmark.panel.Ring;

/**
 * A panel's mirror image, left and right exchanged, in the same place. Its grainline stays upright
 * if it was; edges keep their names and are travelled the other way round, so that chains list them
 * in the other order.
 *
 * @param panel the panel
 */
public record Mirrored(Panel panel) implements Derivation {
  @Override
  public Panel derive(String name, Consumer<PanelException> notices) {
    Box box = panel.outline().bounds();
    Affine map = new Affine(-1, 0, 0, 1, box.minX() + box.maxX(), 0);
    List<Edge> edges = new ArrayList<>();
    int count = panel.edges().size();
    for (int i = 0; i < count; i++) {
      Edge edge = panel.edges().get((count - i) % count);
      edges.add(new Edge(edge.name(), edge.to(), edge.from(), Ring.mirrored(edge.path(), map)));
    }
    Map<String, List<String>> chains = new LinkedHashMap<>();
    panel
        .chains()
        .forEach(
            (chain, members) -> {
              List<String> backwards = new ArrayList<>();
              members.forEach(member -> backwards.add(0, member));
              chains.put(chain, backwards);
            });
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : panel.marks()) {
      marks.add(mark.transformed(map, edge -> Ring.edge(panel, edge).path().length()));
    }
    return new Panel(name, edges, chains, marks);
  }
}
