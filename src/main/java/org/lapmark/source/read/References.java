package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.lapmark.finding.FindingCode;
import org.lapmark.finding.SourceText;
import org.lapmark.source.CornerSources;
import org.lapmark.source.PanelSource;
import org.lapmark.source.PatternSource;
import org.lapmark.source.PieceSource;
import org.lapmark.source.SeamSource;
import org.lapmark.source.ShapeSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.derived.DerivedSource;
import org.lapmark.source.drawing.PanelDrawing;
import org.lapmark.source.drawing.Role;
import org.lapmark.source.key.Reading;
import org.lapmark.source.mark.MarkKind;
import org.lapmark.source.mark.MarkKinds;
import org.lapmark.source.mark.MarkSource;
import org.lapmark.source.yaml.YamlNode;

/** Checks what can be known of names without computing anything: clashes, and where they lead. */
final class References {
  static final Pattern DOTTED = Pattern.compile("[a-z][a-z0-9_]*\\.[a-z][a-z0-9_]*");

  private final Reading reading;
  private final PatternSource source;
  private final Set<String> statedPanels = new TreeSet<>();
  private final Set<String> statedSeams = new TreeSet<>();
  private final Map<String, PanelSource> panels;
  private final PanelLines lines;

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
    written.entries().forEach(panel -> statedPanels.add(panel.key().text().text()));
    this.panels = PanelReader.byName(source.panels());
    this.lines = new PanelLines(source, panels, written);
  }

  void check() {
    new NamesTaken(reading, source).check();
    new FasteningNames(reading, source).check();
    source.panels().forEach(this::panel);
    source.pieces().forEach(this::piece);
    for (SeamSource seam : source.seams()) {
      seam.sides().forEach(this::side);
    }
    for (PanelSource panel : source.panels()) {
      for (PanelSource.NotchSource notch : panel.notches()) {
        notch
            .place()
            .seam()
            .filter(seam -> !statedSeams.contains(seam.text()))
            .ifPresent(
                seam ->
                    reading.unknown(
                        SourceCode.SEAM_UNKNOWN, seam.position(), seam.text(), statedSeams));
      }
    }
  }

  private void side(SeamSource.Side side) {
    side.members().forEach(this::member);
    side.tabs().forEach(tab -> member(tab.width()));
    side.basted().forEach(this::side);
  }

  private void panel(PanelSource panel) {
    if (panel.shape() != null) {
      panel.shape().derivation().ifPresent(this::derived);
      panel.shape().ends().ifPresent(ends -> corners(panel, ends));
    }
    if (panel.shape() instanceof ShapeSource.DrawnBySize drawn) {
      new SizeDrawings(reading, source.sizes()).check(panel, drawn);
    }
    slashes(panel);
    stacking(panel);
    Set<String> edges = this.lines.edges(panel);
    if (edges == null) {
      return;
    }
    if (panel.shape() instanceof ShapeSource.Drawn drawn && drawn.until() != null) {
      Set<String> all = new TreeSet<>(edges);
      all.addAll(this.lines.chains(panel));
      edge(panel.name(), drawn.until().edge(), all);
    }
    for (PanelSource.ChainSource chain : panel.chains()) {
      chain.edges().forEach(edge -> edge(panel.name(), edge, edges));
    }
    Set<String> lines = new TreeSet<>(edges);
    lines.addAll(this.lines.chains(panel));
    for (PanelSource.NotchSource notch : panel.notches()) {
      Optional<SourceText> drawn = notch.place().drawn();
      if (drawn.isPresent()) {
        drawn(panel, Role.NOTCH, drawn.get());
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
    for (MarkSource mark : panel.marks()) {
      mark.edges().forEach(edge -> edge(panel.name(), edge, lines));
      if (mark.isDrawn()) {
        drawn(panel, mark.kind().role(), mark.name());
      } else if (isKnownByName(mark.kind())) {
        drawnToo(drawnNames(panel, mark.kind().role()), mark.name(), mark.kind().word());
      }
    }
    for (PanelSource.StyleLineSource line : panel.styleLines()) {
      drawnToo(drawnNames(panel, Role.STYLELINE), line.name(), "style");
    }
    for (MarkKind kind : MarkKinds.ALL) {
      kind.unstated().ifPresent(code -> unstated(panel, kind, code));
    }
  }

  /** Reports drawn marks of a kind of which nothing is stated. */
  private void unstated(PanelSource panel, MarkKind kind, FindingCode code) {
    for (String name : drawnNames(panel, kind.role())) {
      if (panel.marks().stream()
          .noneMatch(mark -> mark.kind() == kind && mark.name().text().equals(name))) {
        reading.findings().add(code, panel.name().position(), "name", name);
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

  /** Whether a mark of a kind changes the panel or is named by others, as points rarely are. */
  private static boolean isKnownByName(MarkKind kind) {
    return kind.isGeometry() || kind.role() == Role.PLACEMENT || kind.role() == Role.FOLDLINE;
  }

  private void drawnToo(Set<String> drawn, SourceText name, String kind) {
    if (drawn.contains(name.text())) {
      reading
          .findings()
          .add(
              SourceCode.MARK_DRAWN_AND_STATED, name.position(), "name", name.text(), "kind", kind);
    }
  }

  private static Set<String> drawnNames(PanelSource panel, Role role) {
    return drawings(panel).stream()
        .findFirst()
        .map(first -> first.names(role))
        .orElse(new TreeSet<>());
  }

  private static List<PanelDrawing> drawings(PanelSource panel) {
    return panel.shape() == null ? List.of() : panel.shape().drawings();
  }

  private void stacking(PanelSource panel) {
    PanelSource original = panel;
    for (int i = 0; original != null && original.shape() != null; i++) {
      Optional<DerivedSource> how = original.shape().derivation();
      if (how.isEmpty() || !how.get().keepsCorners()) {
        break;
      }
      original = i > panels.size() ? null : panels.get(how.get().panel().text());
    }
    if (panel.stackOn() == null
        || original == null
        || original.shape() == null
        // Which corners such a panel has shows when it is made.
        || original.shape().derivation().isPresent()) {
      return;
    }
    Collection<String> corners = original.shape().corners();
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
    drawings(panel).forEach(one -> drawn.addAll(one.slashNames()));
    Set<String> opened = new TreeSet<>();
    for (PanelSource.SlashSource slash : panel.slashes()) {
      opened.add(slash.name().text());
      if (slash.from() != null) {
        drawnToo(drawn, slash.name(), "slash");
      }
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
    Set<String> edges = panel == null ? null : this.lines.edges(panel);
    if (edges != null) {
      edges.addAll(this.lines.chains(panel));
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
    Set<String> edges = panel == null ? null : this.lines.edges(panel);
    if (edges != null) {
      Set<String> all = new TreeSet<>(edges);
      all.addAll(this.lines.chains(panel));
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

  /** Checks what a derivation names of the panels that it starts from. */
  private void derived(DerivedSource how) {
    for (SourceText original : how.originals()) {
      PanelSource source = isPanel(original) ? panels.get(original.text()) : null;
      Set<String> edges = source == null ? null : this.lines.edges(source);
      if (edges != null) {
        Set<String> lines = new TreeSet<>(edges);
        lines.addAll(this.lines.chains(source));
        how.usedEdges(original).forEach(edge -> edge(original, edge, edges));
        how.usedLines().forEach(line -> edge(original, line, lines));
      }
    }
  }
}
