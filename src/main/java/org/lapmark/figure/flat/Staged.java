package org.lapmark.figure.flat;

import java.util.List;
import org.lapmark.figure.stage.Staging;

/**
 * A view in one variant.
 *
 * @param view what it shows, in place of a unit what that is made of
 * @param subject what is drawn
 */
record Staged(View view, Subject subject) {
  static Staged of(View view, Staging staging) {
    View shown = Units.resolved(view, List.of(), staging);
    List<String> within = view.unit() == null ? List.of() : List.of(view.unit().text());
    return new Staged(shown, Subjects.of(shown, within, staging));
  }
}
