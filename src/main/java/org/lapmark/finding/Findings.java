package org.lapmark.finding;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Collects the findings of one pattern folder. The same finding is kept once. Not safe for use by
 * several threads at once: each stage that runs in parallel has a collector of its own, joined in a
 * fixed order.
 */
public final class Findings {
  /** How many findings of one folder are kept; further ones are only counted. */
  public static final int LIMIT = 500;

  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+([.][0-9]+)?");

  private final List<Finding> kept = new ArrayList<>();
  private int leftOut;

  /**
   * Adds a finding.
   *
   * @param finding what was found
   */
  public void add(Finding finding) {
    if (kept.stream().anyMatch(other -> isSame(other, finding))) {
      return;
    }
    if (kept.size() < LIMIT) {
      kept.add(finding);
    } else {
      leftOut++;
    }
  }

  /** Equality, with what differs most often asked first: a line's text may be long. */
  private static boolean isSame(Finding one, Finding other) {
    return one.position().column() == other.position().column()
        && one.position().line() == other.position().line()
        && one.equals(other);
  }

  /**
   * Adds a finding with arguments given in turn.
   *
   * @param code the kind of problem
   * @param position where it stands
   * @param namesAndValues argument name, value, name, value …
   */
  public void add(FindingCode code, Position position, Object... namesAndValues) {
    add(Finding.of(code, position, namesAndValues));
  }

  /**
   * Adds all of another collector's findings.
   *
   * @param others the other collector
   */
  public void addAll(Findings others) {
    others.kept.forEach(this::add);
    leftOut += others.leftOut;
  }

  /**
   * Adds another collector's findings one by one. Those that it left out stay counted.
   *
   * @param others the other collector
   * @param change what becomes of each; nothing when it isn't to be added
   */
  public void addAll(Findings others, Function<Finding, Optional<Finding>> change) {
    others.sorted().forEach(finding -> change.apply(finding).ifPresent(this::add));
    leftOut += others.leftOut;
  }

  /**
   * These findings with those made one that differ in nothing but one argument, such as the size in
   * which something is wrong: the argument of the one kept names all of theirs. Of those that
   * differ in numbers as well, as lengths do from size to size, the first is kept, and the argument
   * says how many there are beside it.
   *
   * @param argument the argument's name
   * @param order the values that are named, in their order; of findings that all have others, such
   *     as sizes with an option, the first is kept in the same way as of those that differ in
   *     numbers
   * @return a collector of the findings made one; this one isn't changed
   */
  public Findings joined(String argument, List<String> order) {
    Map<Finding, Set<String>> values = new LinkedHashMap<>();
    for (Finding finding : firsts(argument, order)) {
      Object value = finding.arguments().get(argument);
      boolean known = value instanceof String && order.contains(value);
      Set<String> named =
          values.computeIfAbsent(
              known ? with(finding, argument, "") : finding, key -> new LinkedHashSet<>());
      if (known) {
        named.add((String) value);
      }
    }
    Findings joined = new Findings();
    values.forEach(
        (finding, named) ->
            joined.add(
                named.isEmpty()
                    ? finding
                    : with(
                        finding,
                        argument,
                        order.stream().filter(named::contains).collect(Collectors.joining(", ")))));
    joined.leftOut = leftOut;
    return joined;
  }

  /**
   * The findings, with those told by the first that differ in an argument that isn't listed, or in
   * numbers.
   */
  private List<Finding> firsts(String argument, List<String> order) {
    Map<Finding, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding finding : kept) {
      Map<String, Object> rest = new LinkedHashMap<>(finding.arguments());
      rest.remove(argument);
      rest.replaceAll((name, value) -> isNumber(value) ? 0 : value);
      alike
          .computeIfAbsent(
              new Finding(finding.code(), finding.position(), rest), key -> new ArrayList<>())
          .add(finding);
    }
    List<Finding> firsts = new ArrayList<>();
    for (List<Finding> group : rows(alike.values(), argument)) {
      Finding first = group.get(0);
      boolean differ =
          group.stream().map(one -> with(one, argument, "")).distinct().count() > 1
              || group.stream().noneMatch(one -> isListed(one.arguments().get(argument), order));
      boolean eachItsOwn =
          group.stream().allMatch(one -> one.arguments().get(argument) instanceof String)
              && group.stream().map(one -> one.arguments().get(argument)).distinct().count()
                  == group.size();
      if (differ && eachItsOwn && group.size() > 1) {
        String value = first.arguments().get(argument) + " and " + (group.size() - 1) + " more";
        firsts.add(with(first, argument, value));
      } else {
        firsts.addAll(group);
      }
    }
    return firsts;
  }

  /**
   * Of findings that are alike, as many with each value of an argument, such as a size, the first
   * with each, then the second with each, and so on: as where several notches of a seam miss in
   * every size. Where there are more with one value than with another, nobody knows which belong
   * together, and they stay as they are.
   */
  private static List<List<Finding>> rows(Collection<List<Finding>> groups, String argument) {
    List<List<Finding>> rows = new ArrayList<>();
    for (List<Finding> group : groups) {
      Map<Object, List<Finding>> byValue = new LinkedHashMap<>();
      for (Finding finding : group) {
        byValue
            .computeIfAbsent(
                String.valueOf(finding.arguments().get(argument)), key -> new ArrayList<>())
            .add(finding);
      }
      if (byValue.values().stream().map(List::size).distinct().count() > 1) {
        rows.add(group);
        continue;
      }
      int each = byValue.values().iterator().next().size();
      for (int i = 0; i < each; i++) {
        int row = i;
        rows.add(byValue.values().stream().map(findings -> findings.get(row)).toList());
      }
    }
    return rows;
  }

  /**
   * These findings with each cause told once: of those that miss the same ({@link
   * FindingCode#subject()}) one is kept, where most of them stand, with an argument {@link
   * FindingText#MORE} that counts the other places.
   *
   * @return a collector of the findings that are left; this one isn't changed
   */
  public Findings causes() {
    Map<List<Object>, List<Finding>> bySubject = new LinkedHashMap<>();
    Findings causes = new Findings();
    for (Finding finding : kept) {
      List<Object> subject = subject(finding);
      if (subject.isEmpty()) {
        causes.add(finding);
      } else {
        bySubject.computeIfAbsent(subject, unused -> new ArrayList<>()).add(finding);
      }
    }
    bySubject.values().forEach(group -> causes.add(cause(group)));
    causes.leftOut = leftOut;
    return causes;
  }

  private static List<Object> subject(Finding finding) {
    List<String> stated = finding.code().subject();
    List<Object> subject = new ArrayList<>();
    for (int i = 0; i < stated.size(); i++) {
      subject.add(i == 0 ? stated.get(0) : String.valueOf(finding.arguments().get(stated.get(i))));
    }
    return subject;
  }

  /** The first of the gravest findings at the first place in the file that has most of them. */
  private static Finding cause(List<Finding> all) {
    Severity gravest = all.stream().map(Finding::severity).min(Comparator.naturalOrder()).get();
    List<Finding> group = all.stream().filter(one -> one.severity() == gravest).toList();
    Map<String, Set<Position>> byFile = new TreeMap<>();
    for (Finding finding : group) {
      byFile
          .computeIfAbsent(finding.position().file(), unused -> new TreeSet<>())
          .add(finding.position());
    }
    int places = (int) all.stream().map(Finding::position).distinct().count();
    Set<Position> most =
        byFile.values().stream().max(Comparator.comparingInt(Set::size)).orElseThrow();
    Position first = most.iterator().next();
    Finding cause =
        group.stream()
            .filter(one -> one.position().equals(first))
            .min(Comparator.comparing(one -> one.code().yields()))
            .orElseThrow();
    if (places == 1) {
      return cause;
    }
    Map<String, Object> arguments = new LinkedHashMap<>(cause.arguments());
    arguments.put(FindingText.MORE, places - 1);
    return new Finding(cause.code(), cause.position(), arguments);
  }

  private static boolean isListed(Object value, List<String> order) {
    return value instanceof String && order.contains(value);
  }

  private static boolean isNumber(Object value) {
    return value instanceof Number
        || value instanceof String text && NUMBER.matcher(text).matches();
  }

  private static Finding with(Finding finding, String argument, String value) {
    Map<String, Object> arguments = new LinkedHashMap<>(finding.arguments());
    arguments.put(argument, value);
    return new Finding(finding.code(), finding.position(), arguments);
  }

  /**
   * Whether an error is among them.
   *
   * @return true when the folder cannot be published
   */
  public boolean hasErrors() {
    return kept.stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
  }

  /**
   * All findings kept.
   *
   * @return by position, then code
   */
  public List<Finding> sorted() {
    return kept.stream().sorted(Finding.BY_POSITION).toList();
  }

  /**
   * How many findings were counted but not kept.
   *
   * @return the number beyond {@link #LIMIT}
   */
  public int leftOut() {
    return leftOut;
  }
}
