package org.lapmark.figure.operation;

import java.util.List;
import java.util.stream.Stream;
import org.lapmark.figure.operation.craft.Amounts;
import org.lapmark.figure.operation.craft.Bench;
import org.lapmark.figure.operation.craft.Craft;
import org.lapmark.figure.operation.craft.Stated;
import org.lapmark.figure.operation.frame.OperationScene;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.FigureForms;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.scene.Scene;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;
import org.lapmark.figure.stage.Staging;
import org.lapmark.measure.Formula;
import org.lapmark.source.key.Choice;
import org.lapmark.source.key.Key;
import org.lapmark.source.key.Table;

/**
 * An operation of the trade, in one to three moments beside each other.
 *
 * @param craft its kind
 * @param stated the seam, edge or trim that it is about, or else what stands in its braces
 * @param beside what stands beside that
 */
public record Operation(Craft craft, Stated stated, Stated beside) implements Picture {
  private static final List<Key<?>> KINDS = Crafts.ALL.stream().<Key<?>>map(Craft::key).toList();
  private static final Table TABLE =
      Table.of("operation", KINDS.toArray(Key<?>[]::new))
          .with(Amounts.ALL)
          .oneOf(Choice.among(KINDS));

  /** Operations under the key {@code operation}. */
  public static final PictureKind KIND =
      PictureKind.of(Key.of("operation", FigureForms.map(TABLE, Operation::read)));

  /** Amounts are a few millimetres, and are drawn so large that they can be seen. */
  private static final double LARGEST_OPERATION = 3;

  private static Picture read(Keys keys) {
    String word = keys.one();
    Craft craft =
        Crafts.ALL.stream().filter(one -> one.word().equals(word)).findFirst().orElseThrow();
    Stated stated = keys.get(craft.key());
    Stated beside = Stated.of(keys, Amounts.ALL);
    for (Key<?> amount : Amounts.ALL) {
      if (!craft.knows(amount)) {
        keys.idle(craft.key(), List.of(amount), craft.beside());
      }
    }
    if (stated != null && stated.name() != null) {
      craft.need(keys);
    }
    Key<?>[] looked =
        Stream.<Key<?>>concat(Stream.of(craft.key()), craft.beside().stream())
            .toArray(Key<?>[]::new);
    return keys.amiss(looked) ? null : new Operation(craft, stated, beside);
  }

  @Override
  public double largest() {
    return LARGEST_OPERATION;
  }

  @Override
  public Scene stage(Staging staging, double scale) {
    boolean named = stated.name() != null;
    for (Key<?> key : named ? craft.given() : Amounts.ALL) {
      if (beside.has(key)) {
        throw Faults.of(
            beside.places().get(key.name()),
            named ? FigureCode.FIGURE_OPERATION_GIVEN : FigureCode.FIGURE_OPERATION_BESIDE,
            "key",
            key.name(),
            "kind",
            craft.word(),
            "name",
            named ? stated.name().text() : "");
      }
    }
    return new OperationScene(
        craft.frames(new Bench(craft, named ? beside.of(stated) : stated, staging)));
  }

  @Override
  public List<Formula> clipDepths() {
    return List.of();
  }

  @Override
  public boolean isFinishedArticle() {
    return false;
  }

  @Override
  public Picture unlettered() {
    return this;
  }
}
