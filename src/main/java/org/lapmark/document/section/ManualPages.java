package org.lapmark.document.section;

import java.util.List;
import java.util.Optional;
import org.lapmark.grade.Cut;

/**
 * What the text pages of a document say about making the article. Components named {@code html} are
 * fragments of XHTML; a run of text is a list of strings and {@link
 * org.lapmark.measure.PrintedValue}s.
 *
 * @param sections the ids of the document's sections in their order
 * @param introduction the author's introduction as a fragment
 * @param fitting the author's advice on fitting as a fragment
 * @param begin what to know before beginning
 * @param finishedFigure the finished article with its measurements
 * @param shopping what to buy
 * @param layouts cutting layouts by material
 * @param key the key of sides and materials
 * @param stages the steps by stage
 * @param use what to mind in use, one short line a hazard
 * @param cautions the gathered cautions
 * @param ownCautions the author's own cautions as a fragment
 * @param labels labels of pieces that have no paper
 * @param walk the walk of every seam, where it was asked for
 */
public record ManualPages(
    List<String> sections,
    Optional<String> introduction,
    Optional<String> fitting,
    Begin begin,
    Optional<Picture> finishedFigure,
    Shopping shopping,
    List<ClothLayouts> layouts,
    Optional<Picture> key,
    List<Stage> stages,
    List<String> use,
    List<Caution> cautions,
    Optional<String> ownCautions,
    List<Label> labels,
    Optional<WalkPages> walk) {
  public ManualPages {
    sections = List.copyOf(sections);
    layouts = List.copyOf(layouts);
    stages = List.copyOf(stages);
    use = List.copyOf(use);
    cautions = List.copyOf(cautions);
    labels = List.copyOf(labels);
  }

  /** A drawing by name with its size in millimetres, its words and its caption. */
  public record Picture(
      String name, double width, double height, String alternative, String caption) {}

  /**
   * What to know before beginning.
   *
   * @param ages how old those are whom it is for, where not all are grown-ups
   * @param facts texts of the author's by key
   * @param allowances which allowances the pieces have; absent when there is no piece
   * @param stitches stitch lengths
   * @param tools what steps use
   * @param abbreviations those that steps use
   */
  public record Begin(
      Optional<String> ages,
      List<Fact> facts,
      Optional<Allowances> allowances,
      List<Stitch> stitches,
      List<List<Object>> tools,
      List<Abbreviation> abbreviations) {}

  /** A text of the author's. */
  public record Fact(String key, List<Object> text) {}

  /**
   * Which allowances are included.
   *
   * @param usual the most frequent one; absent when most edges, or all, have none
   * @param exceptions other allowances with the pieces or edges that have them
   * @param without the pieces that have none
   */
  public record Allowances(
      Optional<String> usual, List<Exception> exceptions, List<String> without) {}

  /** Edges or whole pieces with another allowance than most. */
  public record Exception(String where, String allowance) {}

  /** A kind of stitch and its length. */
  public record Stitch(String name, String length) {}

  /** An abbreviation and what it stands for. */
  public record Abbreviation(String shortForm, String meaning) {}

  /** What to buy: cloths, parts, thread. */
  public record Shopping(List<Material> materials, List<Part> parts, List<Object> thread) {}

  /** A material with the amount of each width. */
  public record Material(
      String name,
      List<String> details,
      List<Amount> amounts,
      List<Object> buying,
      List<Object> substitute) {}

  /** How much of a width. */
  public record Amount(String width, String amount) {}

  /** A part that is bought by the piece or by length. */
  public record Part(
      String name,
      List<String> details,
      Optional<String> quantity,
      List<Object> buying,
      List<Object> substitute) {}

  /** The layouts of one material. */
  public record ClothLayouts(
      boolean oneWay,
      boolean grain,
      boolean reversed,
      boolean joined,
      boolean folded,
      List<Layout> layouts) {}

  /** One layout. */
  public record Layout(String title, String purchase, Picture drawing) {}

  /** Steps under one heading. */
  public record Stage(String html, List<Step> steps) {}

  /**
   * A step.
   *
   * @param number its number
   * @param id its id
   * @param html its title
   * @param plain its title without form
   * @param together whether it is kept on one page
   * @param cautions the short lines of hazards that it is the first to meet
   * @param parts its body, cut where pages may break
   */
  public record Step(
      int number,
      String id,
      String html,
      String plain,
      boolean together,
      List<String> cautions,
      List<String> parts) {}

  /** A caution. */
  public record Caution(String title, String text) {}

  /** A label to cut out, with what is to be marked on the piece. */
  public record Label(
      int number,
      String name,
      String material,
      int count,
      int reversed,
      Cut.Mirroring mirrored,
      TextPages.CutSize size,
      List<List<Object>> marks) {}
}
