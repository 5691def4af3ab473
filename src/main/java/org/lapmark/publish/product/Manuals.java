package org.lapmark.publish.product;

import java.util.Optional;
import org.lapmark.document.manual.Manual;

/**
 * What the instructions of one variant say, in each size of type wanted.
 *
 * @param standard in standard type
 * @param large in large print, if that is wanted
 */
public record Manuals(Manual standard, Optional<Manual> large) {
  /** With the walk of seams, whose tables are too wide for large print. */
  public Manuals walked() {
    return new Manuals(standard.withWalk(), large);
  }
}
