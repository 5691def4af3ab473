package org.lapmark.figure.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.lapmark.figure.read.Entries;
import org.lapmark.figure.read.Faults;
import org.lapmark.figure.read.FigureCode;
import org.lapmark.figure.read.Keys;
import org.lapmark.figure.stage.Staging;
import org.lapmark.figure.workpiece.Body;
import org.lapmark.figure.workpiece.Cloth;
import org.lapmark.figure.workpiece.Crease;
import org.lapmark.figure.workpiece.Detail;
import org.lapmark.figure.workpiece.FoldedCloth;
import org.lapmark.figure.workpiece.Lines;
import org.lapmark.geometry.Path;
import org.lapmark.panel.Panel;
import org.lapmark.source.key.Key;

/**
 * How a piece lies: drawn up first, then folded, then rolled.
 *
 * @param gathered an edge that is drawn up, or null
 * @param folds lines at which it is folded over, one after another
 * @param rolled what of it is rolled up, or null
 */
public record Poses(Gathered gathered, List<Fold> folds, Rolled rolled) {
  private static final Key<Entries<Fold>> FOLDS = Key.of("folds", Fold.LIST);
  private static final Key<Gathered> GATHERED = Key.of("gathered", Gathered.FORM);
  private static final Key<Rolled> ROLLED = Key.of("rolled", Rolled.FORM);

  /** The keys of all kinds. */
  public static final List<Key<?>> KEYS = List.of(FOLDS, GATHERED, ROLLED);

  /** Flat. */
  public static final Poses NONE = new Poses(null, List.of(), null);

  /** Copies the list. */
  public Poses {
    folds = List.copyOf(folds);
  }

  /** What is stated among a piece's keys. */
  public static Poses read(Keys keys) {
    return new Poses(keys.get(GATHERED), keys.all(FOLDS), keys.get(ROLLED));
  }

  /** Reports each of some keys that can't stand beside folds. */
  public static void exclude(Keys keys, List<Key<?>> others) {
    for (Key<?> key : others) {
      if (keys.has(FOLDS) && keys.has(key)) {
        keys.report(
            Faults.of(
                keys.node(key).position(),
                FigureCode.FIGURE_KEYS_TOGETHER,
                "names",
                "folds’ and ‘" + key.name()),
            key);
      }
    }
  }

  /** Tells each fold of something to which others are joined, which wouldn't be folded with it. */
  public void requireUnfolded(Staging staging) {
    for (Fold fold : folds) {
      staging.run(
          () -> {
            throw Faults.of(
                fold.position(), FigureCode.FIGURE_KEYS_TOGETHER, "names", "folds’ and ‘joined");
          });
    }
  }

  /** The same, and then further ones. */
  public Poses then(Poses further) {
    List<Fold> all = new ArrayList<>(folds);
    all.addAll(further.folds);
    return new Poses(
        further.gathered == null ? gathered : further.gathered,
        all,
        further.rolled == null ? rolled : further.rolled);
  }

  /** The panel as it lies when an edge is drawn up. */
  public Panel reshaped(Staging staging, Panel panel) {
    return gathered == null
        ? panel
        : staging.attempt(() -> gathered.reshaped(staging, panel)).orElse(panel);
  }

  /** Folded at its lines, one after another; a line that can't be folded at is left out. */
  public Body folded(Staging staging, Panel panel, Cloth flat) {
    List<Crease> creases = new ArrayList<>();
    Path lying = flat.outline();
    for (Fold fold : folds) {
      Path before = lying;
      Optional<Crease> crease =
          staging.attempt(
              () -> fold.stage(staging, staging.names(), panel, before, List.copyOf(creases)));
      crease.ifPresent(creases::add);
      lying = crease.map(one -> Lines.crop(before, one.on(), one.away()).path()).orElse(before);
    }
    return creases.isEmpty()
        ? flat
        : FoldedCloth.of(flat, creases, folds.stream().anyMatch(Fold::isPeel));
  }

  /** What is left flat of something, and its roll. */
  public Body rolled(Staging staging, Panel panel, Body before) {
    return rolled == null
        ? before
        : staging.<Body>attempt(() -> rolled.stage(staging, panel, before)).orElse(before);
  }

  /**
   * What is drawn and said of how it lies.
   *
   * @param flat the panel as it is cut
   */
  public List<Detail> details(Staging staging, Panel flat) {
    List<Detail> details = new ArrayList<>();
    if (gathered != null) {
      staging.attempt(() -> gathered.lines(staging, flat)).ifPresent(details::add);
    }
    for (Fold fold : folds) {
      details.add(new FoldWords(fold.lifted().text(), fold.isPeel()));
    }
    if (rolled != null) {
      details.add(rolled.words());
    }
    return details;
  }
}
