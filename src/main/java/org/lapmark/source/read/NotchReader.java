package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.Known;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.panel.NotchSet;
import org.lapmark.source.PanelSource.NotchPlace;
import org.lapmark.source.PanelSource.NotchSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.KeyCode;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads a panel's notches. */
final class NotchReader {
  private static final Key<SourceText> EDGE = Key.of("edge", Forms.LINE);
  private static final Key<Formula> AT = Key.of("at", Forms.PLACE);
  private static final Key<Formula> EVERY = Key.of("every", Forms.LENGTH);
  private static final Key<Boolean> CENTRED = Key.of("centred", Forms.TRUTH).unless("yes");
  private static final Key<SourceText> FROM_SEAM = Key.of("from_seam", Forms.NAME);
  private static final Key<SourceText> CORNER = Key.of("corner", Forms.CORNER);
  private static final Key<SourceText> DRAWN = Key.of("drawn", Forms.NAME);
  private static final Key<Integer> COUNT = Key.of("count", Forms.number(1, 3)).unless("1");
  private static final Key<List<YamlNode>> SET =
      Key.of("set", Forms.list(Forms.LENGTH.unread(), 1, NotchSet.MOST - 1).naming("set"));
  private static final Key<NotchSet.Cut> CUT =
      Key.of("cut", Forms.words(KeyCode.MARK_WORD_UNKNOWN, NotchSet.Cut.class)).unless("slit");
  private static final Table TABLE =
      Table.of(
              "notch",
              EDGE,
              AT,
              EVERY,
              CENTRED,
              FROM_SEAM,
              CORNER,
              DRAWN,
              COUNT,
              SET,
              CUT,
              Stated.WHEN)
          .oneOf(
              Choice.of(
                  way(EDGE, AT),
                  way(EDGE, EVERY),
                  way(EDGE, EVERY, CENTRED),
                  way(EDGE, FROM_SEAM),
                  way(EDGE, CORNER),
                  way(DRAWN)));

  private static final List<Key<?>> PLACES = List.of(AT, EVERY, FROM_SEAM, CORNER, DRAWN);

  /** The notches of a panel. */
  static final Key<List<Stated>> NOTCHES = Key.of("notches", Forms.list(Forms.map(TABLE)));

  /** How they are cut where nothing else is stated of them. */
  static final Key<NotchSet.Cut> NOTCH_CUT =
      Key.of("notch_cut", Forms.words(KeyCode.MARK_WORD_UNKNOWN, NotchSet.Cut.class))
          .unless("slit");

  private final Reading reading;

  NotchReader(Reading reading) {
    this.reading = reading;
  }

  List<NotchSource> read(Ref panel, Stated stated) {
    List<NotchSource> notches = new ArrayList<>();
    if (!stated.has(NOTCHES)) {
      return notches;
    }
    int nth = 0;
    NotchSet.Cut general = stated.or(NOTCH_CUT, NotchSet.Cut.SLIT);
    for (Stated in : stated.all(NOTCHES)) {
      Key<SourceText> owned = in.has(DRAWN) ? DRAWN : EDGE;
      if (!in.has(owned)) {
        reading.findings().add(KeyCode.KEY_MISSING, in.owner(), "key", owned.name());
      }
      Ref ref = panel.inside(Ref.Kind.NOTCH, ++nth);
      SourceText edge = in.get(owned);
      NotchPlace place = place(in);
      Integer count = in.get(COUNT, 1);
      List<Formula> gaps = gaps(in);
      NotchSet.Cut cut = in.get(CUT, general);
      if (edge != null && place != null && count != null && gaps != null && cut != null) {
        in.condition(ref);
        notches.add(new NotchSource(ref, edge, place, count, gaps, cut));
      }
    }
    return notches;
  }

  private NotchPlace place(Stated in) {
    List<Key<?>> stated = new ArrayList<>(PLACES);
    stated.removeIf(key -> !in.has(key));
    boolean centredAlone = in.has(CENTRED) && !in.has(EVERY);
    if (stated.size() != 1 || centredAlone) {
      Position at = centredAlone ? in.position(CENTRED) : in.owner();
      reading
          .findings()
          .add(
              SourceCode.NOTCH_PLACE,
              at,
              "ways",
              stated.size(),
              "known",
              Known.listed(PLACES.stream().<String>map(Key::name).toList()));
      return null;
    }
    Boolean centred = in.get(CENTRED, Boolean.TRUE);
    if (in.get(stated.get(0)) == null || centred == null) {
      return null;
    }
    if (in.has(AT)) {
      return new NotchPlace.At(in.get(AT));
    }
    if (in.has(EVERY)) {
      return new NotchPlace.Every(in.get(EVERY), centred);
    }
    if (in.has(DRAWN)) {
      return new NotchPlace.Drawn(in.get(DRAWN));
    }
    return in.has(FROM_SEAM)
        ? new NotchPlace.FromSeam(in.get(FROM_SEAM))
        : new NotchPlace.NearCorner(in.get(CORNER));
  }

  /** The gaps of a set; empty for a single notch, null if they are misstated. */
  private List<Formula> gaps(Stated in) {
    List<Formula> gaps = new ArrayList<>();
    if (!in.has(SET)) {
      return gaps;
    }
    if (in.has(COUNT)) {
      reading.findings().add(SourceCode.NOTCH_SET_TWICE, in.position(COUNT));
    }
    for (YamlNode node : in.all(SET)) {
      Formula gap = reading.formula(node, SET.name());
      if (gap == null) {
        return null;
      }
      gaps.add(gap);
    }
    return gaps.isEmpty() ? null : gaps;
  }
}
