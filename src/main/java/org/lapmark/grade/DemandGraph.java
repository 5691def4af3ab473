package org.lapmark.grade;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.lapmark.finding.Finding;
import org.lapmark.finding.FindingException;
import org.lapmark.finding.Findings;
import org.lapmark.finding.Position;

/**
 * Values computed when they are first asked for, each once. A value that fails is reported once;
 * who depends on it fails silently. A cycle is reported once, named in full. A graded pattern is
 * read by several threads, and texts may ask for a value that nothing asked for before: one thread
 * computes at a time.
 *
 * <p>Where a value is solved for, each trial has a graph of its own under the one that asked. It
 * takes what is known there and computes the rest anew; what turns out not to depend on the value
 * that is tried, a failure too, is kept for the next trial.
 */
final class DemandGraph {
  /** Far more than a pattern needs, and few enough for the stack of any thread. */
  static final int MOST_UNDER_WAY = 100;

  /** Stands in place of a value that can't be computed, whatever is tried. */
  private static final Object FAILURE = new Object();

  private final Findings findings;
  private final DemandGraph above;
  private final Map<String, Object> kept;
  private final Map<String, Object> done = new LinkedHashMap<>();
  private final Set<String> failed = new LinkedHashSet<>();
  private final Set<String> trying = new LinkedHashSet<>();
  private final Deque<String> underWay = new ArrayDeque<>();
  private boolean depthReported;

  DemandGraph(Findings findings) {
    this(findings, null, null);
  }

  private DemandGraph(Findings findings, DemandGraph above, Map<String, Object> kept) {
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
  DemandGraph trial(Findings sink, Map<String, Object> across) {
    return new DemandGraph(sink, this, across);
  }

  /** Thrown where a value is missing because of something that has been reported already. */
  static final class Unavailable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unavailable() {
      super("reported already", null, false, false);
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

  /** Says that whatever is being computed depends on the value that is tried. */
  synchronized void touch() {
    trying.addAll(underWay);
  }

  /**
   * The value of a node.
   *
   * @param node the node's name as a reader would say it, unique in the graph
   * @param asked where it was asked for
   * @param compute how it is computed; may ask for other nodes
   * @return the value
   * @throws Unavailable when it can't be computed
   */
  synchronized Object demand(String node, Position asked, Supplier<?> compute) {
    Object known = known(node);
    if (known != null) {
      return known;
    }
    if (hasFailed(node)) {
      throw new Unavailable();
    }
    if (underWay.contains(node)) {
      reportCycle(node, asked);
      throw new Unavailable();
    }
    if (depth() >= MOST_UNDER_WAY) {
      reportDepth(asked);
      throw new Unavailable();
    }
    underWay.addLast(node);
    try {
      Object value = compute.get();
      if (kept == null || trying.contains(node)) {
        done.put(node, value);
      } else {
        kept.put(node, value);
      }
      return value;
    } catch (FindingException e) {
      findings.add(e.finding());
      fail(node);
      throw new Unavailable();
    } catch (Unavailable e) {
      fail(node);
      throw e;
    } catch (Entangled e) {
      if (above != null) {
        throw e;
      }
      findings.add(e.finding);
      failed.add(node);
      throw new Unavailable();
    } finally {
      underWay.removeLast();
    }
  }

  /** Remembers a failure, as a chain of values that are solved for would come to it each time. */
  private void fail(String node) {
    failed.add(node);
    if (kept != null && !trying.contains(node)) {
      kept.put(node, FAILURE);
    }
  }

  private int depth() {
    return underWay.size() + (above == null ? 0 : above.depth());
  }

  private Object known(String node) {
    Object known = done.get(node);
    if (known != null) {
      if (trying.contains(node)) {
        touch();
      }
      return known;
    }
    Object before = kept == null ? null : kept.get(node);
    if (before == FAILURE) {
      return null;
    }
    return before != null ? before : fromAbove(node);
  }

  /** What is known above doesn't depend on what is tried here, which isn't known there yet. */
  private Object fromAbove(String node) {
    if (above == null || above.trying.contains(node)) {
      return null;
    }
    Object known = above.done.get(node);
    if (known == null && above.kept != null) {
      known = above.kept.get(node);
    }
    if (known == FAILURE) {
      return null;
    }
    return known != null ? known : above.fromAbove(node);
  }

  private boolean hasFailed(String node) {
    return failed.contains(node)
        || kept != null && kept.get(node) == FAILURE
        || above != null && above.kept == null && above.hasFailed(node);
  }

  /** Once, because every further part of the same row would say it again. */
  private void reportDepth(Position asked) {
    if (!depthReported) {
      depthReported = true;
      findings.add(
          Finding.of(GradeCode.VALUE_TOO_DEEP, asked, "limit", Integer.toString(MOST_UNDER_WAY)));
    }
  }

  private void reportCycle(String node, Position asked) {
    StringBuilder cycle = new StringBuilder();
    Iterator<String> nodes = underWay.iterator();
    boolean inside = false;
    while (nodes.hasNext()) {
      String next = nodes.next();
      inside |= next.equals(node);
      if (inside) {
        cycle.append(next).append(" → ");
      }
    }
    findings.add(Finding.of(GradeCode.VALUE_CYCLE, asked, "cycle", cycle.append(node).toString()));
  }
}
