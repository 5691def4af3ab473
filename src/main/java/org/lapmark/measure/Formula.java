package org.lapmark.measure;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Value.Quantity;

/**
 * A parsed formula that remembers where each of its parts stands. Immutable.
 *
 * <p>The language, from what binds least to what binds most:
 *
 * <ul>
 *   <li>{@code or}; {@code and}; {@code not}; only as much is evaluated as decides the outcome
 *   <li>{@code < <= > >= = !=}; two numbers are equal when they differ by no more than {@link
 *       #TOLERANCE} of the larger of them and 1, and only then neither is less than the other
 *   <li>{@code + -}; {@code * /}; a minus sign; {@code ^}, which groups to the right
 *   <li>numbers, whole, decimal or mixed ({@code 10}, {@code 0.5}, {@code 1 3/8}), quantities
 *       ({@code 10 mm}, {@code 1 3/8 in}; a fraction directly before a unit is that fraction of the
 *       unit), {@code pi}, names, brackets, functions
 *   <li>a pair of stock sizes ({@code 25 mm (1 in)}), which counts as its metric length; a list of
 *       pairs in square brackets
 * </ul>
 *
 * <p>Functions: {@code if(condition, a, b)}, which evaluates only the branch it takes, {@code min},
 * {@code max}, {@code abs}, {@code sqrt}, {@code round(x, step)}, {@code round_up}, {@code
 * round_down}, {@code sin}, {@code cos}, {@code tan} of angles, {@code asin}, {@code acos}, {@code
 * atan}, {@code longest_up_to(stock, limit)}, and those of the geometry, which take the names of
 * panels, edges and corners: {@code length}, {@code width}, {@code height}, {@code perimeter},
 * {@code area}, {@code distance}. Names are described at {@link Names}.
 *
 * <p>An option that has choices, and {@code size}, are compared with a choice's name ({@code
 * closure = zip}, {@code size < L}, {@code size = "2 XL"}); sizes have the order of the size table.
 *
 * <p>Lengths are added to lengths, areas to areas, angles to angles, counts and plain numbers to
 * each other. A length times a length is an area; kinds beyond that don't exist. A count times a
 * plain number stays a count. A zero without a unit is zero of any kind.
 */
public final class Formula {
  /** How many characters a formula may have. */
  public static final int MAX_LENGTH = Parser.MAX_LENGTH;

  /** How deep brackets, signs and operators may be nested. */
  public static final int MAX_DEPTH = Parser.MAX_DEPTH;

  /** How many arguments a function, or entries a list may have. */
  public static final int MAX_ARGUMENTS = Function.MAX_ARGUMENTS;

  /** Numbers that differ by less than this part of the larger of them and 1 are equal. */
  public static final double TOLERANCE = Comparison.TOLERANCE;

  private final SourceText text;
  private final Node root;
  private final Set<String> names;

  private Formula(SourceText text, Node root) {
    this.text = text;
    this.root = root;
    Set<String> found = new LinkedHashSet<>();
    root.names(text, name -> found.add(name.text()));
    this.names = Collections.unmodifiableSet(found);
  }

  /**
   * Parses a formula.
   *
   * @param text the formula as written
   * @return the formula
   * @throws FindingException at the first character that can't be understood, or when a limit is
   *     passed
   */
  public static Formula parse(SourceText text) {
    return new Formula(text, Parser.parse(text));
  }

  /**
   * The formula as written.
   *
   * @return the text with its place
   */
  public SourceText text() {
    return text;
  }

  /**
   * The names it asks for, without those of geometry functions' references.
   *
   * @return names in the order of their first appearance
   */
  public Set<String> names() {
    return names;
  }

  /**
   * Computes the formula.
   *
   * @param scope what names and geometry functions stand for
   * @return the value
   * @throws FindingException at the part that can't be computed: unlike dimensions, a division by
   *     zero, whatever the scope throws
   */
  public Value evaluate(Scope scope) {
    return root.value(new Evaluation(text, scope));
  }

  /**
   * Computes a formula that must come to a number: a quantity, or a pair's metric length.
   *
   * @param scope what names and geometry functions stand for
   * @return the quantity
   * @throws FindingException as {@link #evaluate}, or when it comes to something else
   */
  public Quantity quantity(Scope scope) {
    return new Evaluation(text, scope).quantity(root);
  }

  /**
   * Computes a formula that must come to a quantity of one dimension.
   *
   * @param scope what names and geometry functions stand for
   * @param dimension the dimension; {@link Dimension#COUNT} takes plain numbers too
   * @return its amount in millimetres, square millimetres, degrees, or a bare number
   * @throws FindingException as {@link #evaluate}, or when it comes to something else; a plain
   *     number where a length is needed gets the advice to add a unit
   */
  public double amount(Scope scope, Dimension dimension) {
    return new Evaluation(text, scope).amount(root, dimension);
  }

  /**
   * Computes a formula that must come to a condition that holds or not.
   *
   * @param scope what names and geometry functions stand for
   * @return whether it holds
   * @throws FindingException as {@link #evaluate}, or when it comes to something else
   */
  public boolean holds(Scope scope) {
    return new Evaluation(text, scope).truth(root);
  }

  /**
   * Whether the formula is nothing but a plain number.
   *
   * @return true for {@code 10} and {@code -10}
   */
  public boolean isPlainNumber() {
    return root.bare().unsigned().bare().isPlainNumber();
  }

  /**
   * The name that the formula consists of.
   *
   * @return the name; nothing for a formula that is more, or something else
   */
  public Optional<SourceText> soleName() {
    return root.bare().name(text);
  }

  /**
   * The {@link Value#kind()} that it comes to, without computing it.
   *
   * @param scope what is known of names
   * @return the kind; nothing where it doesn't show
   */
  public Optional<String> kind(Scope scope) {
    return root.kind(new Kinds.InScope(text, scope));
  }

  /**
   * What is wrong where the formula comes to a plain number and something with a unit is needed, if
   * the unit is missing where a name that it uses is stated.
   *
   * @param scope what names stand for
   * @param needed what is needed
   * @return the exception with a finding there; nothing if no name, or more than one, may be the
   *     cause
   */
  public Optional<FindingException> withoutUnit(Scope scope, Dimension needed) {
    return new Evaluation(text, scope).statedWithoutUnit(root, needed);
  }

  /**
   * What is wrong where the formula comes to a plain number and something with a unit is needed.
   *
   * @param needed what is needed
   * @return the exception with a finding at the formula, which gives the advice to add a unit
   */
  public FindingException unitMissing(Dimension needed) {
    return new Evaluation(text, null).unitMissingHere(root, needed);
  }

  /**
   * Whether the formula as a whole says that two things are equal, so that a value can be sought
   * that makes it true.
   *
   * @return true for {@code a = b}
   */
  public boolean isEquation() {
    return root.bare().equation().isPresent();
  }

  /**
   * How far an equation is from true.
   *
   * @param scope what names and geometry functions stand for
   * @return its left side less its right side
   * @throws FindingException as {@link #evaluate}
   * @throws IllegalStateException when the formula is no equation
   */
  public Quantity imbalance(Scope scope) {
    Operands sides =
        root.bare().equation().orElseThrow(() -> new IllegalStateException("no equation"));
    return new Evaluation(text, scope).quantity(new Nodes.Binary(Operator.MINUS, sides));
  }

  /**
   * A finding about the whole formula.
   *
   * @param code the kind of problem
   * @param namesAndValues the message's arguments
   * @return the exception that carries it
   */
  public FindingException fault(MeasureCode code, Object... namesAndValues) {
    return new FindingException(Finding.of(code, text.position(), namesAndValues));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Formula that && text.equals(that.text);
  }

  @Override
  public int hashCode() {
    return text.hashCode();
  }

  @Override
  public String toString() {
    return text.text();
  }
}
