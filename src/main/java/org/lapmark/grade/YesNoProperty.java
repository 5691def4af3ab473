package org.lapmark.grade;

import org.lapmark.finding.FindingException;
import org.lapmark.grade.demand.DemandGraph;
import org.lapmark.measure.Formula;
import org.lapmark.measure.Scope;
import org.lapmark.source.ThingSource;

/** What is so of a material or not. */
public final class YesNoProperty {
  private YesNoProperty() {}

  /**
   * Whether a property holds.
   *
   * @param thing the material, or null
   * @param property its name
   * @param scope what names in it stand for
   * @return true if it is stated and holds; a mistake in it is reported where pieces are laid out
   */
  public static boolean holds(ThingSource thing, String property, Scope scope) {
    Formula formula = thing == null ? null : thing.properties().get(property);
    if (formula == null) {
      return false;
    }
    try {
      return isYes(formula) || !isNo(formula) && formula.evaluate(scope).isTrue();
    } catch (FindingException | DemandGraph.Unavailable e) {
      return false;
    }
  }

  /**
   * Whether a property is stated in a word rather than as a formula.
   *
   * @param formula the property
   * @return true for yes and no and their likes
   */
  public static boolean isStated(Formula formula) {
    return isYes(formula) || isNo(formula);
  }

  /**
   * Whether a property says yes. Formulas have no word for it; as a property it stands alone.
   *
   * @param formula the property
   * @return true for {@code true} and {@code yes}
   */
  public static boolean isYes(Formula formula) {
    String text = formula.text().text();
    return text.equals("true") || text.equals("yes");
  }

  /**
   * Whether a property says no.
   *
   * @param formula the property
   * @return true for {@code false} and {@code no}
   */
  public static boolean isNo(Formula formula) {
    String text = formula.text().text();
    return text.equals("false") || text.equals("no");
  }
}
