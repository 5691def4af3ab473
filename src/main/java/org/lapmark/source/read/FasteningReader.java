package org.lapmark.source.read;

import static org.lapmark.source.key.Choice.way;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.source.SourceCode;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.fastening.TrimSource;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Form;
import org.lapmark.source.key.Forms;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Named;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;
import org.lapmark.source.key.Stated;
import org.lapmark.source.key.Table;
import org.lapmark.source.yaml.YamlNode;

/** Reads what is fastened: trims along edges, and what is attached at places. */
final class FasteningReader {
  private static final Form<SourceText> LINE =
      Forms.special(
          "edge, chain or line of a panel", Forms.schema("type", "string"), FasteningReader::line);
  private static final Key<SourceText> PART_OF = Key.required("edge", LINE);
  private static final Key<Formula> FROM = Key.of("from", Forms.PLACE);
  private static final Key<Formula> TO = Key.of("to", Forms.PLACE);
  private static final Table TRIM_EDGE = Table.of("trim_edge", PART_OF, FROM, TO);
  private static final Form<YamlNode> LINE_OR_PART = Forms.either(LINE, Forms.map(TRIM_EDGE));
  private static final Form<List<TrimSource.Stretch>> LINES =
      Forms.oneOrMore(
          new Form<>(
              LINE_OR_PART.shown(),
              LINE_OR_PART.schema(),
              LINE_OR_PART.tables(),
              FasteningReader::stretch));

  private static final Key<SourceText> TRIMMING = Key.required("thing", Forms.NAME);
  private static final Key<List<TrimSource.Stretch>> ALONG = Key.required("along", LINES);
  private static final Key<List<TrimSource.Stretch>> FACING = Key.of("facing", LINES);
  private static final Key<Formula> TRIM_LENGTH = Key.of("length", Forms.LENGTH);
  private static final Key<Formula> ENDS = Key.of("ends", Forms.LENGTH).unless("0 mm");
  private static final Key<Boolean> CENTRED = Key.of("centred", Forms.TRUTH).unless("no");
  private static final Key<Formula> OVERLAP = Key.of("overlap", Forms.LENGTH).unless("0 mm");
  private static final Key<Formula> EASE = Key.of("ease", Forms.LENGTH).unless("0 mm");
  private static final Key<Formula> TOLERANCE = Key.of("tolerance", Forms.LENGTH).unless("0.5 mm");
  private static final Key<Formula> VISIBLE = Key.of("visible_width", Forms.LENGTH);
  private static final Key<Formula> DISTANCE = Key.of("distance", Forms.LENGTH);
  private static final Key<Formula> CASING = Key.of("casing", Forms.LENGTH);
  private static final Table TRIM =
      Table.of(
          "trim",
          TRIMMING,
          ALONG,
          FACING,
          TRIM_LENGTH,
          ENDS,
          CENTRED,
          OVERLAP,
          EASE,
          TOLERANCE,
          VISIBLE,
          DISTANCE,
          CASING,
          Stated.WHEN);

  private static final Key<SourceText> PIECE =
      Key.of(
          "piece",
          Forms.special(
              "number of a piece", Forms.schema("type", "integer", "minimum", 1), Reading::text));
  private static final Key<SourceText> THING = Key.of("thing", Forms.NAME);
  private static final Key<SourceText> END = Key.of("end", Forms.LINE);
  private static final Key<SourceText> PANEL = Key.of("panel", Forms.NAME);
  private static final Key<SourceText> EDGE = Key.of("edge", Forms.LINE);
  private static final Key<Formula> AT = Key.of("at", Forms.PLACE).unless("1/2");
  private static final Key<Formula> INSET = Key.of("inset", Forms.LENGTH);
  private static final Key<SourceText> MARK = Key.of("mark", Forms.NAME);
  private static final Key<SourceText> CORNER = Key.of("corner", Forms.CORNER);
  private static final Key<SourceText> HELD_BY = Key.of("held_by", Forms.NAME);
  private static final Key<Boolean> WRONG_SIDE =
      Key.of("side", Forms.words(SourceCode.ATTACHMENT_SIDE, sides())).unless("right");
  private static final Key<Formula> TURN = Key.of("turn", Forms.ANGLE).unless("0 deg");
  private static final Key<Formula> WIDTH = Key.of("width", Forms.LENGTH);
  private static final Key<Formula> LENGTH = Key.of("length", Forms.LENGTH);
  private static final Choice WHAT = Choice.among(List.of(PIECE, THING));
  private static final Choice WHERE =
      Choice.of(
          way(PANEL, EDGE),
          way(PANEL, EDGE, AT),
          way(PANEL, EDGE, INSET),
          way(PANEL, EDGE, AT, INSET),
          way(PANEL, MARK),
          way(PANEL, MARK, AT),
          way(PANEL, CORNER),
          way(HELD_BY));
  private static final Table ATTACHMENT =
      Table.of(
              "attachment",
              PIECE,
              THING,
              END,
              PANEL,
              EDGE,
              AT,
              INSET,
              MARK,
              CORNER,
              HELD_BY,
              WRONG_SIDE,
              TURN,
              WIDTH,
              LENGTH,
              Stated.WHEN)
          .oneOf(WHAT)
          .oneOf(WHERE);

  /** The trims of a pattern. */
  static final Key<List<Named<Stated>>> TRIMS = Key.of("trims", Forms.named(TRIM, true));

  /** The attachments of a pattern. */
  static final Key<List<Named<Stated>>> ATTACHMENTS =
      Key.of("attachments", Forms.named(ATTACHMENT, true));

  private final Reading reading;

  FasteningReader(Reading reading) {
    this.reading = reading;
  }

  private static Map<String, Boolean> sides() {
    Map<String, Boolean> sides = new LinkedHashMap<>();
    sides.put("right", false);
    sides.put("wrong", true);
    return sides;
  }

  private static SourceText line(Reading reading, YamlNode node, String key) {
    SourceText line = reading.text(node, key);
    if (line != null && !References.DOTTED.matcher(line.text()).matches()) {
      reading.findings().add(SourceCode.TRIM_LINE, line.position(), "text", line.text());
      return null;
    }
    return line;
  }

  private static TrimSource.Stretch stretch(Reading reading, YamlNode node, String key) {
    if (!(node instanceof YamlNode.Entries)) {
      SourceText line = line(reading, node, key);
      return line == null ? null : new TrimSource.Stretch(line, null, null);
    }
    Stated in = Stated.of(reading, node, TRIM_EDGE, node.firstKey(), key);
    return isSound(in, TRIM_EDGE)
        ? new TrimSource.Stretch(in.get(PART_OF), in.get(FROM), in.get(TO))
        : null;
  }

  Fastenings read(Stated pattern) {
    List<TrimSource> trims = new ArrayList<>();
    for (Named<Stated> trim : pattern.all(TRIMS)) {
      if (trim.value() == null || !trim(trim.name(), trim.value(), trims)) {
        reading.switches().unread(Ref.of(Ref.Kind.TRIM, trim.name().text()));
      }
    }
    List<AttachmentSource> attachments = new ArrayList<>();
    for (Named<Stated> attachment : pattern.all(ATTACHMENTS)) {
      if (attachment.value() == null
          || !attachment(attachment.name(), attachment.value(), attachments)) {
        reading.switches().unread(Ref.of(Ref.Kind.ATTACHMENT, attachment.name().text()));
      }
    }
    return new Fastenings(trims, attachments);
  }

  private static boolean trim(SourceText name, Stated in, List<TrimSource> trims) {
    in.condition(Ref.of(Ref.Kind.TRIM, name.text()));
    boolean sound = isSound(in, TRIM) && !in.all(ALONG).isEmpty();
    if (sound) {
      trims.add(
          new TrimSource(
              name,
              in.get(TRIMMING),
              in.all(ALONG),
              in.all(FACING),
              in.get(TRIM_LENGTH),
              in.get(ENDS),
              in.isTrue(CENTRED),
              in.get(OVERLAP),
              in.get(EASE),
              in.get(TOLERANCE),
              in.get(VISIBLE),
              in.get(DISTANCE),
              in.get(CASING)));
    }
    return sound;
  }

  private boolean attachment(SourceText name, Stated in, List<AttachmentSource> attachments) {
    in.condition(Ref.of(Ref.Kind.ATTACHMENT, name.text()));
    boolean sound = isSound(in, ATTACHMENT);
    for (Choice choice : ATTACHMENT.choices()) {
      if (!choice.isMet(in.names())) {
        reading
            .findings()
            .add(
                SourceCode.ATTACHMENT_STATEMENT,
                name.position(),
                "name",
                name.text(),
                "asked",
                choice == WHAT ? "what" : "where",
                "mend",
                choice == WHAT ? mendWhat(in) : mendWhere(in),
                "keys",
                String.join(", ", choice == WHAT ? List.of() : inTheWay(in)));
        sound = false;
      }
    }
    if (sound) {
      attachments.add(
          new AttachmentSource(
              name,
              in.get(THING),
              in.get(PIECE),
              in.get(END),
              where(in),
              in.isTrue(WRONG_SIDE),
              in.get(TURN),
              in.get(WIDTH),
              in.get(LENGTH)));
    }
    return sound;
  }

  private static String mendWhat(Stated in) {
    return in.has(PIECE) || in.has(THING) ? "both" : "neither";
  }

  /** What would make a place of what is written. */
  private static String mendWhere(Stated in) {
    List<Key<?>> anchors = anchors(in);
    if (anchors.size() > 1) {
      return "several";
    }
    if (anchors.isEmpty()) {
      return in.has(PANEL) ? "onPanel" : "nowhere";
    }
    return inTheWay(in).isEmpty() ? "panel" : anchors.get(0) == HELD_BY ? "held" : "surplus";
  }

  private static List<Key<?>> anchors(Stated in) {
    return Stream.<Key<?>>of(EDGE, MARK, CORNER, HELD_BY).filter(in::has).toList();
  }

  /** The keys of which some have to go: several places, or what the one place has no use for. */
  private static List<String> inTheWay(Stated in) {
    List<Key<?>> anchors = anchors(in);
    if (anchors.size() != 1) {
      return anchors.stream().<String>map(Key::name).toList();
    }
    Key<?> anchor = anchors.get(0);
    return Stream.<Key<?>>of(PANEL, AT, INSET)
        .filter(in::has)
        .filter(
            key ->
                WHERE.ways().stream()
                    .noneMatch(way -> way.contains(anchor.name()) && way.contains(key.name())))
        .<String>map(Key::name)
        .toList();
  }

  /** Whether all could be read that is stated, besides to which variants it belongs. */
  private static boolean isSound(Stated in, Table table) {
    return in.isSound(
        table.keys().stream().filter(key -> key != Stated.WHEN).toArray(Key<?>[]::new));
  }

  private static AttachmentSource.Where where(Stated in) {
    if (in.has(HELD_BY)) {
      return new AttachmentSource.HeldBy(in.get(HELD_BY));
    }
    if (in.has(MARK)) {
      return new AttachmentSource.AtMark(in.get(PANEL), in.get(MARK), in.get(AT));
    }
    if (in.has(CORNER)) {
      return new AttachmentSource.AtCorner(in.get(PANEL), in.get(CORNER));
    }
    return new AttachmentSource.AtEdge(in.get(PANEL), in.get(EDGE), in.get(AT), in.get(INSET));
  }
}
