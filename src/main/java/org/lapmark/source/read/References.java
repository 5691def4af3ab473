package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.source.CornerSources;
import org.lapmark.source.DerivedSource;
import org.lapmark.source.MarkKind;
import org.lapmark.source.MarkSource;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.StepSource;
import org.lapmark.source.UseSource;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Reading;
import org.lapmark.source.yaml.YamlNode;

/** Checks what can be known of names without computing anything: clashes, and where they lead. */
final class References {
  private static final Pattern DOTTED = Pattern.compile("[a-z][a-z0-9_]*\\.[a-z][a-z0-9_]*");

  private final Reading reading;
  private final PatternSource source;
  private final Set<String> statedPanels = new TreeSet<>();
  private final Set<String> statedSeams = new TreeSet<>();
  private final Map<String, Set<String>> statedEdges = new TreeMap<>();
  private final Map<String, Set<String>> statedChains = new TreeMap<>();
  private final Map<String, PanelSource> panels;

  /**
   * Prepares the checks.
   *
   * @param written the panels as written: names of what couldn't be read are known all the same
   * @param writtenSeams the seams as written, or null
   */
  References(
      Reading reading, PatternSource source, YamlNode.Entries written, YamlNode writtenSeams) {
    this.reading = reading;
    this.source = source;
    if (writtenSeams instanceof YamlNode.Entries seams) {
      seams.entries().forEach(seam -> statedSeams.add(seam.key().text().text()));
    }
    for (YamlNode.Entry panel : written.entries()) {
      String name = panel.key().text().text();
      statedPanels.add(name);
      if (panel.value() instanceof YamlNode.Entries parts) {
        names(
            parts, PanelReader.EDGES, statedEdges.computeIfAbsent(name, unused -> new TreeSet<>()));
        names(
            parts,
            PanelReader.CHAINS,
            statedChains.computeIfAbsent(name, unused -> new TreeSet<>()));
      }
    }
    this.panels = PanelReader.byName(source.panels());
    for (PanelSource panel : source.panels()) {
      String name = panel.name().text();
      Set<String> edges = statedEdges.computeIfAbsent(name, unused -> new TreeSet<>());
      panel.edges().forEach(edge -> edges.add(edge.name().text()));
      Set<String> chains = statedChains.computeIfAbsent(name, unused -> new TreeSet<>());
      panel.chains().forEach(chain -> chains.add(chain.name().text()));
    }
  }

  private static void names(YamlNode.Entries parts, Key<?> key, Set<String> names) {
    for (YamlNode.Entry part : parts.entries()) {
      if (part.key().text().text().equals(key.name())
          && part.value() instanceof YamlNode.Entries entries) {
        entries.entries().forEach(entry -> names.add(entry.key().text().text()));
      }
    }
  }

  void check() {
    clashes();
    source.panels().forEach(this::panel);
    source.pieces().forEach(this::piece);
    uses();
    use();
    for (SeamSource seam : source.seams()) {
      seam.sides().forEach(this::side);
    }
    for (PanelSource panel : source.panels()) {
      for (PanelSource.NotchSource notch : panel.notches()) {
        if (notch.place() instanceof PanelSource.NotchPlace.FromSeam from
            && !statedSeams.contains(from.seam().text())) {
          reading.unknown(
              SourceCode.SEAM_UNKNOWN, from.seam().position(), from.seam().text(), statedSeams);
        }
      }
    }
  }

  private void side(SeamSource.Side side) {
    side.members().forEach(this::member);
    side.tabs().forEach(tab -> member(tab.width()));
    side.basted().forEach(this::side);
  }

  private void clashes() {
    Map<String, Position> measures = new LinkedHashMap<>();
    if (source.sizes() != null) {
      source.sizes().rows().forEach(row -> measures.putIfAbsent(row.name(), row.position()));
    }
    source.measures().forEach(measure -> claim(measures, measure.name()));
    source.options().options().forEach(option -> claim(measures, option.name()));
    Map<String, Position> things = new LinkedHashMap<>();
    source.materials().forEach(thing -> claim(things, thing.id()));
    source.hardware().forEach(thing -> claim(things, thing.id()));
    source.making().tools().forEach(tool -> claim(things, tool.id()));
    source.panels().forEach(panel -> claim(things, panel.name()));
  }

  private void uses() {
    List<String> known = new ArrayList<>();
    source.making().tools().forEach(tool -> known.add(tool.id().text()));
    source.materials().forEach(thing -> known.add(thing.id().text()));
    source.hardware().forEach(thing -> known.add(thing.id().text()));
    for (StepSource step : source.steps()) {
      for (SourceText use : step.uses()) {
        if (!known.contains(use.text())) {
          reading.unknown(SourceCode.USE_UNKNOWN, use.position(), use.text(), known);
        }
      }
    }
  }

  /** Ages are of sizes, and what is worn somewhere is a thing or a piece. */
  private void use() {
    UseSource use = source.making().use();
    if (source.sizes() != null) {
      List<String> sizes = source.sizes().sizes();
      for (SourceText size : use.ages().keySet()) {
        if (!sizes.contains(size.text())) {
          reading.unknown(SourceCode.AGES_SIZE_UNKNOWN, size.position(), size.text(), sizes);
        }
      }
    }
    List<String> worn = new ArrayList<>();
    source.materials().forEach(thing -> worn.add(thing.id().text()));
    source.hardware().forEach(thing -> worn.add(thing.id().text()));
    source.pieces().forEach(piece -> worn.add(Integer.toString(piece.number())));
    for (SourceText what : use.wornAt().keySet()) {
      if (!worn.contains(what.text())) {
        reading.unknown(SourceCode.WORN_UNKNOWN, what.position(), what.text(), worn);
      }
    }
  }

  private void claim(Map<String, Position> taken, SourceText name) {
    Position first = taken.putIfAbsent(name.text(), name.position());
    if (first != null) {
      reading
          .findings()
          .add(
              SourceCode.NAME_TAKEN,
              name.position(),
              "name",
              name.text(),
              "file",
              first.file(),
              "line",
              Integer.toString(first.line()));
    }
  }

  private void panel(PanelSource panel) {
    if (panel.shape() instanceof PanelSource.Derived derived) {
      derived(derived.how());
    }
    if (panel.shape() instanceof PanelSource.Drawn drawn) {
      corners(panel, drawn.drawing().cornerNames());
    }
    if (panel.shape() instanceof PanelSource.DrawnBySize drawn) {
      new SizeDrawings(reading, source.sizes()).check(panel, drawn);
      drawn.drawings().values().stream()
          .findFirst()
          .ifPresent(first -> corners(panel, first.drawing().cornerNames()));
    }
    if (panel.shape() instanceof PanelSource.Stated stated) {
      corners(panel, stated.form().kind().corners());
    }
    slashes(panel);
    stacking(panel);
    Set<String> edges = edges(panel, new TreeSet<>());
    if (edges == null) {
      return;
    }
    if (panel.shape() instanceof PanelSource.Drawn drawn && drawn.until() != null) {
      Set<String> all = new TreeSet<>(edges);
      all.addAll(chains(panel, new TreeSet<>()));
      edge(panel.name(), drawn.until().edge(), all);
    }
    for (PanelSource.ChainSource chain : panel.chains()) {
      chain.edges().forEach(edge -> edge(panel.name(), edge, edges));
    }
    Set<String> lines = new TreeSet<>(edges);
    lines.addAll(chains(panel, new TreeSet<>()));
    for (PanelSource.NotchSource notch : panel.notches()) {
      if (notch.place() instanceof PanelSource.NotchPlace.Drawn drawn) {
        drawn(panel, Role.NOTCH, drawn.name());
      } else {
        edge(panel.name(), notch.edge(), lines);
      }
    }
    marks(panel, lines);
    for (PanelSource.SlashSource slash : panel.slashes()) {
      for (PanelSource.SlashEnd end : slash.stated()) {
        if (end instanceof PanelSource.SlashEnd.OnEdge on) {
          edge(panel.name(), on.edge(), lines);
        }
      }
    }
  }

  private void marks(PanelSource panel, Set<String> lines) {
    Set<String> pleats = new TreeSet<>();
    for (MarkSource mark : panel.marks()) {
      for (String key : List.of("edge", "from_edge", "to_edge")) {
        if (mark.names().containsKey(key)) {
          edge(panel.name(), mark.names().get(key), lines);
        }
      }
      if (mark.isDrawn()) {
        drawn(panel, mark.kind().role(), mark.name());
      }
      if (mark.kind() == MarkKind.PLEAT) {
        pleats.add(mark.name().text());
      }
    }
    for (String name : drawnNames(panel, Role.PLEAT)) {
      if (!pleats.contains(name)) {
        reading.findings().add(SourceCode.PLEAT_UNSTATED, panel.name().position(), "name", name);
      }
    }
  }

  /** Whether a panel's drawing has a mark that more is said of. */
  private void drawn(PanelSource panel, Role role, SourceText name) {
    Set<String> names = drawnNames(panel, role);
    if (!names.contains(name.text())) {
      reading.unknown(SourceCode.MARK_NOT_DRAWN, name.position(), name.text(), names);
    }
  }

  private static Set<String> drawnNames(PanelSource panel, Role role) {
    if (panel.shape() instanceof PanelSource.Drawn drawn) {
      return drawn.drawing().names(role);
    }
    Set<String> names = new TreeSet<>();
    if (panel.shape() instanceof PanelSource.DrawnBySize bySize) {
      bySize.drawings().values().stream()
          .findFirst()
          .ifPresent(first -> names.addAll(first.drawing().names(role)));
    }
    return names;
  }

  private void stacking(PanelSource panel) {
    PanelSource original = panel;
    for (int i = 0;
        original != null
            && original.shape() instanceof PanelSource.Derived derived
            && derived.how() instanceof DerivedSource.Beside beside;
        i++) {
      original = i > panels.size() ? null : panels.get(beside.panel().text());
    }
    if (original != null && original.shape() instanceof PanelSource.Derived) {
      // Which corners such a panel has shows when it is made.
      return;
    }
    if (panel.stackOn() == null || original == null || original.shape() == null) {
      return;
    }
    Collection<String> corners = List.of("top_left", "top_right", "bottom_right", "bottom_left");
    if (original.shape() instanceof PanelSource.Drawn drawn) {
      corners = drawn.drawing().cornerNames();
    } else if (original.shape() instanceof PanelSource.DrawnBySize drawn) {
      Set<String> all = new TreeSet<>();
      drawn.drawings().values().forEach(one -> all.addAll(one.drawing().cornerNames()));
      corners = all;
    } else if (original.shape() instanceof PanelSource.Stated stated) {
      corners = stated.form().kind().corners();
    }
    if (!corners.contains(panel.stackOn().text())) {
      reading.unknown(
          SourceCode.CORNER_UNKNOWN,
          panel.stackOn().position(),
          panel.stackOn().text(),
          corners,
          "panel",
          panel.name().text());
    }
  }

  private void slashes(PanelSource panel) {
    Set<String> drawn = new TreeSet<>();
    if (panel.shape() instanceof PanelSource.Drawn one) {
      drawn.addAll(one.drawing().slashNames());
    }
    if (panel.shape() instanceof PanelSource.DrawnBySize several) {
      several.drawings().values().forEach(one -> drawn.addAll(one.drawing().slashNames()));
    }
    Set<String> opened = new TreeSet<>();
    for (PanelSource.SlashSource slash : panel.slashes()) {
      opened.add(slash.name().text());
      if (slash.from() == null && panel.shape() != null && !drawn.contains(slash.name().text())) {
        reading.unknown(
            SourceCode.SLASH_UNKNOWN, slash.name().position(), slash.name().text(), drawn);
      }
    }
    for (String name : drawn) {
      if (!opened.contains(name)) {
        reading
            .findings()
            .add(
                SourceCode.SLASH_IDLE,
                panel.name().position(),
                "name",
                name,
                "panel",
                panel.name().text());
      }
    }
  }

  private void corners(PanelSource panel, Collection<String> corners) {
    for (PanelSource.EdgeSource edge : panel.edges()) {
      for (SourceText corner : List.of(edge.from(), edge.to())) {
        if (!corners.contains(corner.text())) {
          reading.unknown(
              SourceCode.CORNER_UNKNOWN,
              corner.position(),
              corner.text(),
              corners,
              "panel",
              panel.name().text());
        }
      }
    }
  }

  private void piece(PieceSource piece) {
    boolean known = isPanel(piece.panel());
    PanelSource panel = known ? panels.get(piece.panel().text()) : null;
    Set<String> edges = panel == null ? null : edges(panel, new TreeSet<>());
    if (edges != null) {
      edges.addAll(chains(panel, new TreeSet<>()));
      piece.edgeAllowances().forEach(allowance -> edge(panel.name(), allowance.edge(), edges));
      for (CornerSources.CornerSource corner : piece.corners().single()) {
        if (corner.kind().edge() != null) {
          edge(panel.name(), corner.kind().edge(), edges);
        }
      }
    }
    List<String> materials =
        source.materials().stream().map(material -> material.id().text()).toList();
    for (PieceSource.CutSource cut : piece.cuts()) {
      if (!materials.contains(cut.material().text())) {
        reading.unknown(
            SourceCode.MATERIAL_UNKNOWN,
            cut.material().position(),
            cut.material().text(),
            materials);
      }
    }
  }

  private void member(SeamSource.Member member) {
    String text = member.text().text();
    if (!DOTTED.matcher(text).matches()) {
      return;
    }
    int dot = text.indexOf('.');
    String owner = text.substring(0, dot);
    List<String> things = new ArrayList<>();
    source.materials().forEach(thing -> things.add(thing.id().text()));
    source.hardware().forEach(thing -> things.add(thing.id().text()));
    if (things.contains(owner)) {
      return;
    }
    if (!statedPanels.contains(owner)) {
      things.addAll(0, statedPanels);
      reading.unknown(
          SourceCode.PANEL_UNKNOWN, member.text().part(0, dot).position(), owner, things);
      return;
    }
    PanelSource panel = panels.get(owner);
    Set<String> edges = panel == null ? null : edges(panel, new TreeSet<>());
    if (edges != null) {
      Set<String> all = new TreeSet<>(edges);
      all.addAll(chains(panel, new TreeSet<>()));
      edge(panel.name(), member.text().part(dot + 1, text.length()), all);
    }
  }

  private void edge(SourceText panel, SourceText edge, Set<String> known) {
    if (!known.contains(edge.text()) && !known.contains(DerivedSource.whole(edge.text()))) {
      reading.unknown(
          SourceCode.EDGE_UNKNOWN, edge.position(), edge.text(), known, "panel", panel.text());
    }
  }

  private boolean isPanel(SourceText name) {
    if (statedPanels.contains(name.text())) {
      return true;
    }
    reading.unknown(SourceCode.PANEL_UNKNOWN, name.position(), name.text(), statedPanels);
    return false;
  }

  /** A panel's edges: stated ones, those of its shape, an inset's original's; null if unknown. */
  private Set<String> edges(PanelSource panel, Set<String> visited) {
    Set<String> names = new TreeSet<>(statedEdges.getOrDefault(panel.name().text(), Set.of()));
    if (panel.shape() instanceof PanelSource.Derived derived) {
      Set<String> inherited = inherited(panel, derived.how(), visited);
      if (inherited == null) {
        return null;
      }
      names.addAll(inherited);
    } else if (panel.shape() instanceof PanelSource.Rectangle
        || panel.shape() instanceof PanelSource.Strip) {
      names.addAll(PanelReader.stockEdges());
    } else if (panel.shape() instanceof PanelSource.Stated stated) {
      names.addAll(stated.form().kind().edges());
      for (PanelSource.EdgeSource edge : panel.edges()) {
        names.remove(stated.form().kind().edge(edge.from().text(), edge.to().text()));
        names.add(edge.name().text());
      }
    } else if (panel.shape() == null) {
      return null;
    }
    return names;
  }

  private Set<String> chains(PanelSource panel, Set<String> visited) {
    Set<String> names = new TreeSet<>(statedChains.getOrDefault(panel.name().text(), Set.of()));
    if (panel.shape() instanceof PanelSource.Stated stated) {
      names.addAll(stated.form().kind().chains());
    }
    if (panel.shape() instanceof PanelSource.Derived derived && visited.add(panel.name().text())) {
      for (SourceText original : derived.how().originals()) {
        if (panels.containsKey(original.text())) {
          names.addAll(
              derived.how().chains(chains(panels.get(original.text()), new TreeSet<>(visited))));
        }
      }
    }
    return names;
  }

  /** The edges that a panel has from those that it is derived from; null if unknown. */
  private Set<String> inherited(PanelSource panel, DerivedSource how, Set<String> visited) {
    if (!visited.add(panel.name().text())) {
      return null;
    }
    List<Set<String>> known = new ArrayList<>();
    for (SourceText original : how.originals()) {
      PanelSource source = panels.get(original.text());
      Set<String> edges = source == null ? null : edges(source, new TreeSet<>(visited));
      if (edges == null) {
        return null;
      }
      known.add(edges);
    }
    return how.edges(known);
  }

  /** Checks what a derivation names of the panels that it starts from. */
  private void derived(DerivedSource how) {
    for (SourceText original : how.originals()) {
      PanelSource source = isPanel(original) ? panels.get(original.text()) : null;
      Set<String> edges = source == null ? null : edges(source, new TreeSet<>());
      if (edges != null) {
        Set<String> lines = new TreeSet<>(edges);
        lines.addAll(chains(source, new TreeSet<>()));
        how.usedEdges(original).forEach(edge -> edge(original, edge, edges));
        how.usedLines().forEach(line -> edge(original, line, lines));
      }
    }
  }
}
