package org.lapmark.figure.symbol;

import java.util.ArrayList;
import java.util.List;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

/**
 * A coil zip, along y from one end of its tape.
 *
 * @param length from stop to stop
 * @param tape how wide its two tapes are together
 * @param part what is shown: {@code closed}, {@code face_down}, {@code cut_end} for one that is cut
 *     from a longer one at its far end, or {@code slider} for the slider alone
 */
public record Zip(double length, double tape, String part) implements Symbol {
  /** How far the tape reaches beyond a stop, in millimetres, as zips are sold. */
  public static final double END = 20;

  /** Closed, its face to the reader. */
  public static final String CLOSED = "closed";

  /** Seen from its back. */
  public static final String FACE_DOWN = "face_down";

  private static final String SLIDER = "slider";
  private static final String CUT_END = "cut_end";

  /** How far teeth are apart on paper. */
  private static final double PITCH = 0.7;

  static final Form FORM = new Form("zip", List.of(CLOSED, FACE_DOWN, CUT_END, SLIDER), Zip::read);

  private static Symbol read(Measures of) {
    double tape = of.or("tape_width", 32, 8, 100);
    boolean alone = of.part().equals(SLIDER);
    return new Zip(alone ? tape : of.need("length", 10, 10_000), tape, of.part());
  }

  /** How wide its teeth are together. */
  private double coil() {
    return tape * 0.18;
  }

  /** How long its slider is, without what it is pulled by. */
  private double slider() {
    return tape * 0.3;
  }

  @Override
  public Box size() {
    return part.equals(SLIDER)
        ? Outline.about(1.7 * coil(), -slider() / 2, slider() * 2.2)
        : Outline.about(tape, 0, length + 2 * END);
  }

  @Override
  public double told() {
    return length;
  }

  @Override
  public boolean isByLength() {
    return !part.equals(SLIDER);
  }

  @Override
  public void draw(Pen pen) {
    if (part.equals(SLIDER)) {
      slider(pen, 0);
      return;
    }
    pen.body(Path.rectangle(size()));
    double far = END + length + (part.equals(CUT_END) ? END : 0);
    if (part.equals(FACE_DOWN)) {
      back(pen, END, far);
    } else {
      teeth(pen, END, far);
    }
    double half = coil() * 0.75;
    Path start = Path.rectangle(new Box(-half, END - 1.6, half, END));
    pen.solid(start);
    if (part.equals(CUT_END)) {
      for (double y = END + length - 1.6; y < END + length + 2; y += 1.2) {
        pen.detail(Outline.line(-half * 1.3, y, half * 1.3, y));
      }
    } else {
      pen.solid(Path.rectangle(new Box(-half, far, half, far + 1.6)));
    }
    if (pen.isReadable() && !part.equals(FACE_DOWN)) {
      slider(pen, END + slider() * 0.7);
    }
  }

  private void teeth(Pen pen, double from, double to) {
    double half = coil() / 2;
    List<Path> lines = new ArrayList<>();
    lines.add(Outline.line(-half, from, -half, to));
    lines.add(Outline.line(half, from, half, to));
    int count = (int) Math.min(800, Math.max(1, Math.floor((to - from) / pen.onPaper(PITCH))));
    for (int i = 1; i < count; i++) {
      double y = from + (to - from) * i / count;
      double slant = (to - from) / count * 0.4;
      lines.add(Outline.line(-half, y - slant, 0, y));
      lines.add(Outline.line(0, y, half, y - slant));
    }
    pen.details(lines);
  }

  /** The threads that hold the teeth, seen on the back. */
  private void back(Pen pen, double from, double to) {
    double half = coil() / 2;
    List<Path> lines = new ArrayList<>();
    lines.add(Outline.line(-half, from, -half, to));
    lines.add(Outline.line(half, from, half, to));
    lines.add(Outline.line(0, from, 0, to));
    pen.details(lines);
  }

  /** Its pull lies along the teeth, towards the far end. */
  private void slider(Pen pen, double y) {
    double wide = coil() * 0.85;
    double narrow = coil() * 0.6;
    double half = slider() / 2;
    pen.body(
        Outline.from(-wide, y - half)
            .to(wide, y - half)
            .to(narrow, y + half)
            .to(-narrow, y + half)
            .closed());
    double pull = coil() * 0.36;
    Path tag = Outline.rounded(Outline.about(2 * pull, y - half * 0.3, y + slider() * 2.2), pull);
    pen.body(tag);
    pen.part(
        Outline.rounded(Outline.about(pull, y + slider() * 1.55, y + slider() * 1.95), pull / 2));
  }
}
