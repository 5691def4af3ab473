package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.lapmark.document.Templates;
import org.lapmark.finding.Findings;
import org.lapmark.print.Paper;

/**
 * Publishes pattern folders.
 *
 * @param templates the templates
 */
public record Publisher(Templates templates) {
  /**
   * What to publish.
   *
   * @param sizes the sizes wanted; empty for all
   * @param papers the papers wanted
   * @param output the folder that receives one folder a pattern
   */
  public record Request(List<String> sizes, List<Paper> papers, Path output) {}

  /**
   * What came of a folder.
   *
   * @param written the files written, sorted; empty when the folder has errors
   * @param findings everything found
   */
  public record Result(List<Path> written, Findings findings) {}

  /**
   * Publishes one folder.
   *
   * @param folder the pattern folder
   * @param request what to publish
   * @return files and findings
   * @throws IOException when a file can't be read or written for reasons outside the folder's
   *     content
   */
  public Result publish(Path folder, Request request) throws IOException {
    throw new UnsupportedOperationException();
  }

  /**
   * Reads and evaluates a folder in every variant without writing anything.
   *
   * @param folder the pattern folder
   * @return everything found
   * @throws IOException when a file can't be read for reasons outside the folder's content
   */
  public Findings check(Path folder) throws IOException {
    throw new UnsupportedOperationException();
  }
}
