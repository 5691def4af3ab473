package org.lapmark.figure.stage;

import java.util.List;
import org.lapmark.figure.scene.Scene;
import org.lapmark.measure.Formula;

/** One picture of a figure as its author states it, in no size. */
public interface Picture {
  /** The largest scale at which pieces and finished articles are drawn. */
  double LARGEST = 1.2;

  /**
   * The largest scale at which it is drawn.
   *
   * @return millimetres on paper for one of cloth
   */
  double largest();

  /**
   * What it shows in one variant. What is wrong with a part of it goes to the staging, and that
   * part is left out.
   *
   * @param staging the variant
   * @param scale the scale at which it is tried first, at which it is looked at whether everything
   *     that is stated can be seen
   * @return the scene
   * @throws org.lapmark.finding.FindingException when there is nothing to be shown
   */
  Scene stage(Staging staging, double scale);

  /**
   * How deep it says to clip.
   *
   * @return a formula for each row of clips
   */
  List<Formula> clipDepths();

  /**
   * Whether it shows the finished article, complete.
   *
   * @return whether it can stand on a cover
   */
  boolean isFinishedArticle();

  /**
   * The same without lettering.
   *
   * @return a picture without labels and dimensions, where a finished article has them
   */
  Picture unlettered();
}
