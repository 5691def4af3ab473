package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.SeamSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads the seams. */
final class SeamReader {
  /** More layers than this no machine sews, and comparing each with each takes time. */
  private static final int MOST_SIDES = 24;

  private static final Form<Formula> LINE = Forms.formula("edge or chain of a panel");
  private static final Form<Formula> LINE_OR_LENGTH =
      Forms.formula("edge or chain of a panel, trim, or length");
  private static final Form<Formula> CAUGHT =
      Forms.formula("attachment, edge or chain of a panel, or length");
  private static final Key<Integer> NOTCH = Key.of("notch", Forms.number(1, 2)).unless("1");
  private static final Key<Boolean> REVERSED = Key.of("reversed", Forms.TRUTH).unless("no");

  private static final Key<Formula> EDGE = Key.required("edge", LINE);
  private static final Key<Formula> FROM = Key.of("from", Forms.PLACE);
  private static final Key<Formula> TO = Key.of("to", Forms.PLACE);
  private static final Table SEAM_EDGE = Table.of("seam_edge", EDGE, FROM, TO, REVERSED, NOTCH);

  private static final Key<Formula> LENGTH = Key.required("length", Forms.LENGTH);
  private static final Table SEAM_LENGTH = Table.of("seam_length", LENGTH, NOTCH);

  private static final Key<Formula> TAB = Key.required("tab", CAUGHT);
  private static final Key<Formula> AT = Key.of("at", Forms.PLACE);
  private static final Table SEAM_TAB = Table.of("seam_tab", TAB, AT);

  private static final Form<List<YamlNode>> PARTS =
      Forms.list(
              Forms.either(
                  LINE_OR_LENGTH,
                  Forms.map(SEAM_EDGE),
                  Forms.map(SEAM_LENGTH),
                  Forms.map(SEAM_TAB)),
              1,
              Integer.MAX_VALUE)
          .shown("list of parts");

  private static final Key<List<YamlNode>> EDGES = Key.required("edges", PARTS);
  private static final Key<SourceText> NAME = Key.of("name", Forms.TEXT);
  private static final Key<Formula> EASE = Key.of("ease", Forms.LENGTH).unless("0 mm");
  private static final Key<Formula> START = Key.of("start", Forms.PLACE).unless("0 mm");
  private static final Key<List<YamlNode>> BASTED =
      Key.of("basted", Forms.list(PARTS.unread(), 0, MOST_SIDES).with("minItems", 1));
  private static final Table SIDE =
      Table.of("seam_side", EDGES, NAME, EASE, REVERSED, START, BASTED);

  private static final Key<List<YamlNode>> SIDES =
      Key.required(
          "sides",
          Forms.list(Forms.either(PARTS, Forms.map(SIDE)), 0, MOST_SIDES).with("minItems", 2));
  private static final Key<Formula> TOLERANCE = Key.of("tolerance", Forms.LENGTH).unless("0.5 mm");
  private static final Key<Boolean> CLOSED = Key.of("closed", Forms.TRUTH).unless("no");
  private static final Key<Boolean> MATCH_NOTCHES =
      Key.of("match_notches", Forms.TRUTH).unless("no");
  private static final Table TABLE =
      Table.of("seam", SIDES, EASE, TOLERANCE, CLOSED, MATCH_NOTCHES, Stated.WHEN);

  /** The seams of a pattern. */
  static final Key<List<Named<Stated>>> SEAMS = Key.of("seams", Forms.named(TABLE, false));

  private final Reading reading;

  SeamReader(Reading reading) {
    this.reading = reading;
  }

  List<SeamSource> read(Stated pattern) {
    List<SeamSource> seams = new ArrayList<>();
    for (Named<Stated> seam : pattern.all(SEAMS)) {
      if (seam.value() != null) {
        seam(seam.name(), seam.value(), seams);
      }
    }
    return seams;
  }

  private void seam(SourceText name, Stated in, List<SeamSource> seams) {
    in.condition(Ref.of(Ref.Kind.SEAM, name.text()));
    Formula ease = in.get(EASE);
    Formula tolerance = in.get(TOLERANCE);
    boolean closed = in.isTrue(CLOSED);
    boolean matchNotches = in.isTrue(MATCH_NOTCHES);
    if (!in.has(SIDES)) {
      return;
    }
    List<YamlNode> nodes = in.all(SIDES);
    if (nodes.size() < 2 && in.node(SIDES).list().isPresent()) {
      reading.findings().add(SourceCode.SEAM_SIDES, name.position(), "name", name.text());
    }
    List<SeamSource.Side> sides = new ArrayList<>();
    for (YamlNode side : nodes) {
      sides.add(side instanceof YamlNode.Entries ? side(side, name, closed) : plain(side, "side"));
    }
    seams.add(new SeamSource(name, sides, ease, tolerance, closed, matchNotches));
  }

  /** A side that is a list of its parts and nothing else. */
  private SeamSource.Side plain(YamlNode node, String key) {
    List<SeamSource.Member> members = new ArrayList<>();
    List<SeamSource.Tab> tabs = new ArrayList<>();
    parts(PARTS.reader().read(reading, node, key), key, members, tabs);
    return new SeamSource.Side(members, tabs, null, null, false, null, List.of());
  }

  private SeamSource.Side side(YamlNode node, SourceText seam, boolean closed) {
    Stated in = stated(node, SIDE);
    List<SeamSource.Member> members = new ArrayList<>();
    List<SeamSource.Tab> tabs = new ArrayList<>();
    parts(in.all(EDGES), EDGES.name(), members, tabs);
    if (in.has(START) && !closed) {
      reading
          .findings()
          .add(SourceCode.SEAM_START_MISPLACED, in.position(START), "name", seam.text());
    }
    List<SeamSource.Side> basted =
        in.all(BASTED).stream().map(layer -> plain(layer, BASTED.name())).toList();
    return new SeamSource.Side(
        members, tabs, in.get(NAME), in.get(EASE), in.isTrue(REVERSED), in.get(START), basted);
  }

  /**
   * Reads the parts of a side. One with a part that couldn't be read has none: it can't be walked.
   */
  private void parts(
      List<YamlNode> nodes,
      String key,
      List<SeamSource.Member> members,
      List<SeamSource.Tab> tabs) {
    boolean whole = true;
    for (YamlNode part : nodes) {
      SeamSource.Member member = null;
      boolean caught = false;
      if (!(part instanceof YamlNode.Entries entries) || Reading.looksLikePlaceholder(entries)) {
        member = member(reading.formula(part, key), 1);
      } else if (has(entries, EDGE)) {
        Stated in = stated(part, SEAM_EDGE);
        int notch = in.or(NOTCH, 1);
        member =
            in.isKnown() && in.isSound(EDGE, FROM, TO, REVERSED)
                ? new SeamSource.Member(
                    in.get(EDGE).text(),
                    in.get(EDGE),
                    in.get(FROM),
                    in.get(TO),
                    in.isTrue(REVERSED),
                    notch)
                : null;
      } else if (has(entries, LENGTH)) {
        Stated in = stated(part, SEAM_LENGTH);
        member = member(in.get(LENGTH), in.or(NOTCH, 1));
      } else if (has(entries, TAB)) {
        caught = true;
        Stated in = stated(part, SEAM_TAB);
        SeamSource.Member width = member(in.get(TAB), 1);
        if (width != null && in.isSound(AT)) {
          tabs.add(new SeamSource.Tab(width, in.get(AT)));
        }
      } else {
        reading.findings().add(SourceCode.SEAM_PART_WRONG, part.position());
      }
      if (member != null) {
        members.add(member);
      }
      whole &= caught || member != null;
    }
    if (!whole) {
      members.clear();
    }
  }

  private static SeamSource.Member member(Formula formula, int notch) {
    return formula == null
        ? null
        : new SeamSource.Member(formula.text(), formula, null, null, false, notch);
  }

  private Stated stated(YamlNode node, Table table) {
    return Stated.of(reading, node, table, node.firstKey(), SIDES.name());
  }

  private static boolean has(YamlNode.Entries map, Key<?> key) {
    return map.entries().stream().anyMatch(entry -> entry.key().text().text().equals(key.name()));
  }
}
