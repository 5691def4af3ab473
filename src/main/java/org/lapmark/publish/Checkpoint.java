package org.lapmark.publish;

/** Stands between the steps of writing, so that a test can break off at any of them. */
@FunctionalInterface
interface Checkpoint {
  /** Called before the step of that name. */
  void before(String step);
}
