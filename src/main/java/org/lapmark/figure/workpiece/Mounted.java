package org.lapmark.figure.workpiece;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.scene.Words;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Path;

/**
 * A workpiece that lies on another one or is joined to it, of which as much is drawn as of that
 * one.
 *
 * @param workpiece the workpiece
 * @param on from its coordinates to the other's
 * @param isJoined whether it is sewn to an edge of the other and reaches beyond that
 */
public record Mounted(Workpiece workpiece, Affine on, boolean isJoined, String name, String said)
    implements Overlay {
  @Override
  public Optional<Path> cover() {
    return Optional.of(workpiece.lying().body().outline().transformed(on));
  }

  @Override
  public Path draw(PlacedBody laid, FlatInk ink) {
    PlacedBody own = laid.carrying(workpiece.lying(), on);
    if (laid.leavesOut(cover().orElseThrow())) {
      return own.outline();
    }
    FlatInk turned = ink.on(own.map());
    workpiece.base(own, turned);
    workpiece.details(own, List.of(), turned);
    return own.outline();
  }

  @Override
  public List<String> inWords(Words words) {
    List<String> sentences = new ArrayList<>();
    if (!said.isEmpty()) {
      sentences.add(words.word(isJoined ? "alt.joined" : "alt.thing", "what", said));
    }
    sentences.addAll(workpiece.inWords(words));
    return sentences;
  }
}
