package org.lapmark.publish.output;

/** Stands between the steps of writing, so that a test can break off at any of them. */
@FunctionalInterface
public interface Checkpoint {
  /** Called before the step of that name. */
  void before(String step);
}
