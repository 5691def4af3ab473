package org.lapmark.figure.workpiece;

import java.util.List;
import java.util.Optional;
import org.lapmark.geometry.Path;

/**
 * What was done to a workpiece in earlier steps: it is drawn as it lies, and neither named nor said
 * again.
 *
 * @param things what lies on it
 * @param details what was done to it
 */
public record Earlier(List<Overlay> things, List<Detail> details) implements Overlay {
  /** Copies the lists. */
  public Earlier {
    things = List.copyOf(things);
    details = List.copyOf(details);
  }

  @Override
  public String name() {
    return "";
  }

  @Override
  public String said() {
    return "";
  }

  @Override
  public Optional<Path> cover() {
    return Optional.empty();
  }

  @Override
  public List<Path> covers() {
    return things.stream().flatMap(thing -> thing.covers().stream()).toList();
  }

  @Override
  public List<Path> reach() {
    return things.stream().flatMap(thing -> thing.reach().stream()).toList();
  }

  @Override
  public void drawBehind(PlacedBody laid, FlatInk ink) {
    FlatInk unlettered = new FlatInk(ink.canvas().another(), ink.scale());
    things.forEach(thing -> thing.drawBehind(laid, unlettered));
    ink.canvas().addUnlettered(unlettered.canvas());
  }

  @Override
  public Path draw(PlacedBody laid, FlatInk ink) {
    FlatInk unlettered = new FlatInk(ink.canvas().another(), ink.scale(), ink.turn());
    for (Overlay thing : things) {
      if (thing.cover().filter(laid::leavesOut).isEmpty()) {
        thing.draw(laid, unlettered);
      }
    }
    details.forEach(detail -> detail.draw(laid, List.of(), unlettered));
    ink.canvas().addUnlettered(unlettered.canvas());
    return laid.outline();
  }
}
