package org.lapmark.source.folder;

/**
 * How much of a pattern folder is read. A folder is untrusted input: each limit is far above what a
 * pattern needs and low enough that reading stays quick; passing one is a finding.
 *
 * @param fileBytes bytes of one text file
 * @param totalBytes bytes of all text files together
 * @param lineLength characters of one line
 * @param files files and folders in the pattern folder
 * @param folderDepth folders in each other, the pattern folder itself not counted
 * @param yamlDepth lists and maps in each other
 * @param yamlNodes keys and values of one YAML text
 * @param sizes columns of the size table that are sizes
 * @param rows base measures
 * @param entries measures, materials, hardware, panels, finished measurements or seams, each
 * @param pieces pieces
 * @param steps steps
 * @param nameLength characters of a title, a name or a label
 * @param textLength characters of any other text for readers that stands in pattern.yaml
 * @param xmlDepth elements in each other
 * @param xmlElements elements of one drawing
 * @param pathSegments path segments of one drawing, all shapes together
 * @param largest the largest coordinate or length in millimetres
 */
public record Limits(
    int fileBytes,
    int totalBytes,
    int lineLength,
    int files,
    int folderDepth,
    int yamlDepth,
    int yamlNodes,
    int sizes,
    int rows,
    int entries,
    int pieces,
    int steps,
    int nameLength,
    int textLength,
    int xmlDepth,
    int xmlElements,
    int pathSegments,
    double largest) {
  /** The limits in force: 2 MiB a file, 2,000 files, lengths up to 100 m. */
  public static final Limits STANDARD =
      new Limits(
          2 * 1024 * 1024,
          32 * 1024 * 1024,
          100_000,
          2_000,
          6,
          40,
          50_000,
          60,
          1_000,
          1_000,
          500,
          500,
          200,
          5_000,
          64,
          20_000,
          10_000,
          100_000);
}
