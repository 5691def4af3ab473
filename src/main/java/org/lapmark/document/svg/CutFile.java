package org.lapmark.document.svg;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.document.Document;
import org.lapmark.document.DocumentWriter;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.drawing.Style;
import org.lapmark.finding.Findings;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.piece.Piece;
import org.lapmark.print.SheetPlanner;
import org.lapmark.print.piece.CutGroup;
import org.lapmark.source.Masthead;
import org.lapmark.text.Markup;

/**
 * A cut file: one piece as SVG whose user unit is a millimetre, for machines that cut or plot.
 * Curves stay what they are; numbers are rounded to 0.00001 mm, so that what is read back is within
 * 0.001 mm of the piece.
 *
 * <p>Each kind of line is a {@code g} whose id is that of its {@link CutGroup}, plain and of a
 * colour of its own, since some machines tell lines by their group and others by their colour. The
 * line that is sewn has the id {@code outline} and the grainline has {@code grainline}, as in a
 * panel's drawing. Lettering is text in whatever font the reader's device has, set to the width for
 * which there is room.
 *
 * @param pattern the pattern in one variant
 * @param piece one of its pieces
 * @param planner draws pieces and has the words
 */
public record CutFile(EvaluatedPattern pattern, Piece piece, SheetPlanner planner)
    implements Document {
  private static final double LINE = 0.25;
  private static final SvgNumbering NUMBERS = new SvgNumbering(5);

  @Override
  public byte[] write(DocumentWriter writer, Findings findings) {
    Drawing drawing = planner.cutSheet(pattern, piece);
    String width = NUMBERS.number(drawing.width());
    String height = NUMBERS.number(drawing.height());
    Markup out = new Markup();
    out.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        width + "mm",
        "height",
        height + "mm",
        "viewBox",
        "0 0 " + width + " " + height,
        "xml:lang",
        pattern.source().masthead().language().toLanguageTag(),
        "role",
        "img",
        "aria-labelledby",
        "title description");
    out.raw("\n").open("title", "id", "title").text(title()).close();
    out.raw("\n").open("desc", "id", "description").text(description()).close();
    boolean sewnApart =
        drawing.items().stream().anyMatch(item -> layer(item).equals(CutGroup.STITCHING_LINE.id()));
    for (CutGroup group : CutGroup.values()) {
      for (Item item : drawing.items()) {
        if (item instanceof Item.Group lines && layer(item).equals(group.id())) {
          boolean sewn = group == (sewnApart ? CutGroup.STITCHING_LINE : CutGroup.CUTTING_LINE);
          String first = sewn ? "outline" : group == CutGroup.GRAINLINE ? "grainline" : null;
          group(lines, group, first, out);
        }
      }
    }
    out.raw("\n").close().raw("\n");
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String layer(Item item) {
    return item instanceof Item.Group group && group.layer() != null ? group.layer() : "";
  }

  private void group(Item.Group group, CutGroup kind, String first, Markup out) {
    boolean text = kind == CutGroup.TEXT;
    out.raw("\n");
    out.open(
        "g",
        "id",
        kind.id(),
        "xml:space",
        text ? "preserve" : null,
        "fill",
        text ? colour(kind) : "none",
        "stroke",
        text ? null : colour(kind),
        "stroke-width",
        text ? null : NUMBERS.number(LINE),
        "font-family",
        text ? "'Source Sans Pro', 'Source Sans 3', sans-serif" : null);
    String id = first;
    for (Item item : group.items()) {
      if (item instanceof Item.Shape shape) {
        for (Path path : shape.paths()) {
          out.raw("\n").empty("path", "id", id, "d", NUMBERS.data(path));
          id = null;
        }
      } else if (item instanceof Item.Lettering line) {
        out.raw("\n");
        lettering(line, out);
      }
    }
    out.raw("\n").close();
  }

  private void lettering(Item.Lettering line, Markup out) {
    Style style = planner.styles().style(line.role());
    List<String> attributes =
        SvgLettering.attributes(
            line, line.anchor(), line.angle(), style, planner.lettering(), NUMBERS);
    out.open("text", attributes.toArray(String[]::new));
    out.text(line.text()).close();
  }

  private static String colour(CutGroup group) {
    return switch (group) {
      case CUTTING_LINE -> "#000000";
      case NOTCHES -> "#c00000";
      case STITCHING_LINE -> "#0050b0";
      case GRAINLINE -> "#806000";
      case MARKS -> "#007040";
      case TEXT -> "#606060";
    };
  }

  private String title() {
    Map<String, Object> names = new LinkedHashMap<>();
    names.put("number", Integer.toString(piece.number()));
    names.put("name", piece.name());
    names.put("size", pattern.variant().size());
    names.put("title", pattern.source().masthead().title().text());
    return planner.wording().text("cut-file.title", names);
  }

  private String description() {
    Masthead masthead = pattern.source().masthead();
    List<String> lines = planner.cutsAndAllowance(pattern, piece);
    int last = lines.size() - 1;
    Box box = piece.shape().opened().bounds();
    Map<String, Object> facts = new LinkedHashMap<>();
    facts.put("title", masthead.title().text());
    facts.put("edition", masthead.edition().text());
    facts.put("studio", masthead.studio().text());
    facts.put("width", box.width());
    facts.put("height", box.height());
    facts.put("cuts", String.join("; ", lines.subList(0, last)));
    facts.put("allowance", lines.get(last));
    facts.put("folded", piece.isFolded() ? "yes" : "no");
    return planner.wording().text("cut-file.description", facts);
  }
}
