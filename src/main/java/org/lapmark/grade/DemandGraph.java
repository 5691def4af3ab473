package org.lapmark.grade;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;

/**
 * Values computed when they are first asked for, each once, with what each was computed from. A
 * value that fails is reported once; who depends on it fails silently, and both know why. A cycle
 * is reported once, named in full. A graded pattern is read by several threads, and texts may ask
 * for a value that nothing asked for before: one thread computes at a time.
 *
 * <p>Where a value is solved for, each trial has a graph of its own under the one that asked. It
 * takes what is known there and computes the rest anew; what turns out not to depend on the value
 * that is tried, a failure too, is kept for the next trial.
 */
final class DemandGraph {
  /** Far more than a pattern needs, and few enough for the stack of any thread. */
  static final int MOST_UNDER_WAY = 100;

  private final Findings findings;
  private final DemandGraph above;
  private final Kept kept;
  private final Map<Node<?>, Outcome> done = new LinkedHashMap<>();
  private final Deque<Computation> underWay = new ArrayDeque<>();
  private boolean depthReported;

  DemandGraph(Findings findings) {
    this(findings, null, null);
  }

  private DemandGraph(Findings findings, DemandGraph above, Kept kept) {
    this.findings = findings;
    this.above = above;
    this.kept = kept;
  }

  /**
   * A graph for one trial.
   *
   * @param sink where problems go
   * @param across what is kept from one trial to the next
   * @return the graph
   */
  DemandGraph trial(Findings sink, Kept across) {
    return new DemandGraph(sink, this, across);
  }

  /** What doesn't depend on the value that is tried, from one trial to the next. */
  static final class Kept {
    private final Map<Node<?>, Outcome> outcomes = new LinkedHashMap<>();
  }

  /** Thrown where a value is missing because of something that has been reported already. */
  static final class Unavailable extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<Finding> causes;

    Unavailable() {
      this(List.of());
    }

    private Unavailable(List<Finding> causes) {
      super("reported already", null, false, false);
      this.causes = causes;
    }

    /** What was reported; nothing where the source lacks something, which its reader reported. */
    List<Finding> causes() {
      return causes;
    }
  }

  /** Ends all trials: two values that are solved for depend on each other. */
  static final class Entangled extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient Finding finding;

    Entangled(Finding finding) {
      super("values solved for depend on each other", null, false, false);
      this.finding = finding;
    }
  }

  /** What a node came to: a value, or a failure, which is a value too and remembers why. */
  private record Outcome(Object value, List<Finding> causes, Trace trace) {
    boolean isFailure() {
      return value == null;
    }

    /** One cast for all: a node's value is put here by whoever computed it for that type. */
    @SuppressWarnings("unchecked")
    <T> T as(Node<T> node) {
      if (isFailure()) {
        throw new Unavailable(causes);
      }
      return (T) value;
    }
  }

  /** What something was computed from, directly, and whether that depends on a value tried. */
  private static final class Trace {
    private final Set<Fact> facts = new LinkedHashSet<>();
    private final Set<Trace> from = new LinkedHashSet<>();
    private boolean tried;
  }

  private record Computation(Node<?> node, Trace trace) {}

  /** Says that whatever is being computed depends on the value that is tried. */
  synchronized void touch() {
    underWay.forEach(computation -> computation.trace().tried = true);
  }

  /**
   * Takes note that what is being computed depends on something stated.
   *
   * @param fact what is asked for
   */
  synchronized void note(Fact fact) {
    if (!underWay.isEmpty()) {
      underWay.peekLast().trace().facts.add(fact);
    } else if (above != null) {
      above.note(fact);
    }
  }

  /**
   * The value of a node.
   *
   * @param node what is asked for
   * @param asked where it was asked for
   * @param compute how it is computed; may ask for other nodes
   * @param <T> what it comes to
   * @return the value
   * @throws Unavailable when it can't be computed
   */
  synchronized <T> T demand(Node<T> node, Position asked, Supplier<T> compute) {
    Outcome outcome = known(node);
    if (outcome == null) {
      refuseCycle(node, asked);
      if (depth() >= MOST_UNDER_WAY) {
        throw reportDepth(asked);
      }
      outcome = computed(node, compute);
    }
    note(outcome.trace());
    return outcome.as(node);
  }

  private Outcome computed(Node<?> node, Supplier<?> compute) {
    Trace trace = new Trace();
    underWay.addLast(new Computation(node, trace));
    Object value = null;
    List<Finding> causes = List.of();
    Entangled entangled = null;
    try {
      value = compute.get();
    } catch (FindingException e) {
      causes = List.of(e.finding());
      findings.add(e.finding());
    } catch (Unavailable e) {
      causes = e.causes();
    } catch (Entangled e) {
      entangled = e;
      causes = List.of(e.finding);
    } finally {
      underWay.removeLast();
    }
    if (entangled != null && above != null) {
      trace.tried = true;
      note(trace);
      throw entangled;
    }
    if (entangled != null) {
      findings.add(entangled.finding);
    }
    Outcome outcome = new Outcome(value, causes, trace);
    // Failures are remembered too, as a chain of values that are solved for would come to them each
    // time.
    (kept == null || trace.tried ? done : kept.outcomes).put(node, outcome);
    return outcome;
  }

  /**
   * What a node was computed from.
   *
   * @param node the node, of which the value has been asked for
   * @return everything stated on which its value depends, in the order in which it was asked for;
   *     nothing when nobody has asked for it
   */
  synchronized Set<Fact> dependencies(Node<?> node) {
    Set<Fact> facts = new LinkedHashSet<>();
    if (done.containsKey(node)) {
      collect(done.get(node).trace(), facts, new LinkedHashSet<>());
    }
    return Collections.unmodifiableSet(facts);
  }

  private static void collect(Trace trace, Set<Fact> facts, Set<Trace> seen) {
    if (seen.add(trace)) {
      facts.addAll(trace.facts);
      trace.from.forEach(one -> collect(one, facts, seen));
    }
  }

  /** What is asked for at the top of a trial, whoever asked for the trial depends on. */
  private void note(Trace trace) {
    if (!underWay.isEmpty()) {
      underWay.peekLast().trace().from.add(trace);
    } else if (above != null) {
      above.noteTried(trace, new LinkedHashSet<>());
    }
  }

  /** Without what is computed for one trial only, so that no trial's work is held on to. */
  private void noteTried(Trace trace, Set<Trace> seen) {
    if (!trace.tried) {
      note(trace);
    } else if (seen.add(trace)) {
      trace.facts.forEach(this::note);
      trace.from.forEach(one -> noteTried(one, seen));
    }
  }

  private int depth() {
    return underWay.size() + (above == null ? 0 : above.depth());
  }

  private Outcome known(Node<?> node) {
    Outcome known = done.get(node);
    if (known != null) {
      if (known.trace().tried) {
        touch();
      }
      return known;
    }
    if (kept != null && kept.outcomes.containsKey(node)) {
      return kept.outcomes.get(node);
    }
    known = fromAbove(node);
    if (known == null && above != null && above.kept == null) {
      known = above.done.get(node);
    }
    return known;
  }

  /** What is known above doesn't depend on what is tried here, which isn't known there yet. */
  private Outcome fromAbove(Node<?> node) {
    if (above == null) {
      return null;
    }
    Outcome known = above.done.get(node);
    if (known == null && above.kept != null) {
      known = above.kept.outcomes.get(node);
    }
    if (known == null) {
      return above.fromAbove(node);
    }
    return known.trace().tried || known.isFailure() ? null : known;
  }

  /** Once, because every further part of the same row would say it again. */
  private Unavailable reportDepth(Position asked) {
    Finding finding =
        Finding.of(GradeCode.VALUE_TOO_DEEP, asked, "limit", Integer.toString(MOST_UNDER_WAY));
    if (!depthReported) {
      depthReported = true;
      findings.add(finding);
    }
    return new Unavailable(List.of(finding));
  }

  private void refuseCycle(Node<?> node, Position asked) {
    StringBuilder cycle = new StringBuilder();
    Trace first = null;
    for (Computation computation : underWay) {
      if (computation.node().equals(node)) {
        first = computation.trace();
      }
      if (first != null) {
        cycle.append(computation.node().named()).append(" → ");
      }
    }
    if (first != null) {
      // Whoever is in a cycle depends on all that is.
      note(first);
      Finding finding =
          Finding.of(GradeCode.VALUE_CYCLE, asked, "cycle", cycle.append(node.named()).toString());
      findings.add(finding);
      throw new Unavailable(List.of(finding));
    }
  }
}
