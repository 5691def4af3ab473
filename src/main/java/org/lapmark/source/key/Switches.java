package org.lapmark.source.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;

/** Collects, while a folder is read, what depends on a condition, and which names are asked for. */
public final class Switches {
  private static final Pattern WORD = Pattern.compile("(?<![a-z0-9_])[a-z][a-z0-9_]*+");

  private final Map<Ref, Formula> conditions = new LinkedHashMap<>();
  private final Set<Ref> unread = new LinkedHashSet<>();
  private final Set<String> asked = new TreeSet<>();
  private final Set<String> words = new TreeSet<>();

  /** Something belongs to the variants in which a condition holds. */
  public void condition(Ref what, Formula when) {
    conditions.put(what, when);
  }

  /** Something is stated, and it couldn't be read, or to which variants it belongs. */
  public void unread(Ref what) {
    unread.add(what);
  }

  /** What is stated and couldn't be read. */
  public Set<Ref> unread() {
    return Collections.unmodifiableSet(unread);
  }

  public Map<Ref, Formula> conditions() {
    return Collections.unmodifiableMap(conditions);
  }

  public void ask(Formula formula) {
    asked.addAll(formula.names());
  }

  public void ask(TemplateText text) {
    text.placeholders().forEach(placeholder -> ask(placeholder.formula()));
  }

  /** Takes every word of a text for a name, where its formulas are only read later. */
  public void askWords(String text) {
    Matcher matcher = WORD.matcher(text);
    while (matcher.find()) {
      words.add(matcher.group());
    }
  }

  /** The names that formulas ask for. */
  public Set<String> asked() {
    return Collections.unmodifiableSet(asked);
  }

  /** Whether a formula asks for a name, or one that is only read later may. */
  public boolean isAsked(String name) {
    return asked.contains(name) || words.contains(name);
  }
}
