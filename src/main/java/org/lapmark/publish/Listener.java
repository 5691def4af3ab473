package org.lapmark.publish;

import java.nio.file.Path;
import org.lapmark.print.arrange.PlanQuality;

/** Is told how the work goes on, always by the thread that asked for it. */
public interface Listener {
  /**
   * Work on a folder begins.
   *
   * @param folder the pattern folder, absolute
   * @param sizes how many sizes are made
   * @param papers on how many papers
   */
  default void begun(Path folder, int sizes, int papers) {}

  /**
   * Nothing that a folder's files depend on has changed, and all of them are as they were left:
   * nothing is made, and {@link #ended} tells of them.
   *
   * @param folder the pattern folder, absolute
   */
  default void upToDate(Path folder) {}

  /**
   * A file was made anew in the place of one that somebody had changed, which was kept.
   *
   * @param folder the pattern folder, absolute
   * @param file the file's name
   * @param kept what the changed one is called now
   */
  default void setAside(Path folder, String file, String kept) {}

  /**
   * The pieces of one size have been arranged on pages; told in the order of sizes and papers.
   *
   * @param folder the pattern folder, absolute
   * @param size the size
   * @param paper the paper's name in commands
   * @param quality pages, joins and what they are held to
   */
  default void arranged(Path folder, String size, String paper, PlanQuality quality) {}

  /**
   * Something was asked for and isn't made, since the pattern gives nothing to make it of.
   *
   * @param folder the pattern folder, absolute
   * @param what what isn't made and why, as a sentence without a full stop
   */
  default void omitted(Path folder, String what) {}

  /**
   * Work on a folder has ended.
   *
   * @param outcome what came of it
   */
  default void ended(Outcome outcome) {}
}
