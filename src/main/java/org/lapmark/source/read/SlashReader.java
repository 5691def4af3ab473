package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.spreading.Slash;
import org.lapmark.source.PanelSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;

/** Reads the lines along which panels are cut and opened. */
final class SlashReader {
  /** Nobody cuts a panel more often; every line is looked at together with every other. */
  private static final int MOST = 100;

  private static final Key<SourceText> EDGE = Key.of("edge", Forms.LINE);
  private static final Key<Formula> AT = Key.of("at", Forms.PLACE);
  private static final Key<SourceText> CORNER = Key.of("corner", Forms.CORNER);
  private static final Table END =
      Table.of("slash_end", EDGE, AT, CORNER).oneOf(Choice.of(way(EDGE, AT), way(CORNER)));

  private static final Key<SourceText> NAME = Key.required("name", Forms.NAME);
  private static final Key<Formula> OPEN = Key.required("open", Forms.LENGTH);
  private static final Key<Stated> FROM = Key.of("from", Forms.map(END));
  private static final Key<Stated> TO = Key.of("to", Forms.map(END));
  private static final Key<Slash.Hinge> HINGE =
      Key.of("hinge", Forms.words(SourceCode.HINGE_UNKNOWN, hinges())).unless("none");
  private static final Table TABLE =
      Table.of("slash", NAME, OPEN, FROM, TO, HINGE, Stated.WHEN)
          .oneOf(Choice.of(way(), way(FROM, TO)));

  /** The slashes of a panel. */
  static final Key<List<Stated>> SLASHES = Key.of("slashes", Forms.list(Forms.map(TABLE), 0, MOST));

  private final Reading reading;

  SlashReader(Reading reading) {
    this.reading = reading;
  }

  private static Map<String, Slash.Hinge> hinges() {
    Map<String, Slash.Hinge> hinges = new LinkedHashMap<>();
    hinges.put("from", Slash.Hinge.FROM);
    hinges.put("to", Slash.Hinge.TO);
    hinges.put("none", Slash.Hinge.NONE);
    return hinges;
  }

  List<PanelSource.SlashSource> read(Ref panel, Stated stated) {
    List<PanelSource.SlashSource> slashes = new ArrayList<>();
    for (Stated in : stated.all(SLASHES)) {
      SourceText name = in.get(NAME);
      PanelSource.SlashEnd from = end(in, FROM);
      PanelSource.SlashEnd to = end(in, TO);
      boolean whole = name != null && reading.checkName(name) && in.isSound(OPEN, HINGE);
      whole &= in.has(FROM) == (from != null) && in.has(TO) == (to != null);
      if (in.has(FROM) != in.has(TO)) {
        Key<?> missing = in.has(FROM) ? TO : FROM;
        reading.findings().add(KeyCode.KEY_MISSING, in.owner(), "key", missing.name());
        whole = false;
      }
      if (name != null) {
        whole &= isFirst(name, slashes);
        in.condition(panel.inside(Ref.Kind.SLASH, name.text()));
      }
      if (whole) {
        Slash.Hinge hinge = in.get(HINGE, Slash.Hinge.NONE);
        slashes.add(new PanelSource.SlashSource(name, from, to, in.get(OPEN), hinge));
      }
    }
    return slashes;
  }

  private boolean isFirst(SourceText name, List<PanelSource.SlashSource> slashes) {
    for (PanelSource.SlashSource other : slashes) {
      if (other.name().text().equals(name.text())) {
        NamesTaken.tell(reading, name, other.name().position());
        return false;
      }
    }
    return true;
  }

  private PanelSource.SlashEnd end(Stated slash, Key<Stated> key) {
    Stated in = slash.get(key);
    if (in == null) {
      return null;
    }
    if (!END.choices().get(0).isMet(in.names())) {
      reading.findings().add(SourceCode.SLASH_END, in.owner(), "key", key.name());
      return null;
    }
    if (in.has(CORNER)) {
      SourceText corner = in.get(CORNER);
      return corner == null ? null : new PanelSource.SlashEnd.AtCorner(corner);
    }
    return in.isSound(EDGE, AT) ? new PanelSource.SlashEnd.OnEdge(in.get(EDGE), in.get(AT)) : null;
  }
}
