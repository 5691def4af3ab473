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
 */
final class DemandGraph {
  private final Findings findings;
  private final Map<String, Object> done = new LinkedHashMap<>();
  private final Set<String> failed = new LinkedHashSet<>();
  private final Deque<String> underWay = new ArrayDeque<>();

  DemandGraph(Findings findings) {
    this.findings = findings;
  }

  /** Thrown where a value is missing because of something that has been reported already. */
  static final class Unavailable extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Unavailable() {
      super("reported already", null, false, false);
    }
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
    Object known = done.get(node);
    if (known != null) {
      return known;
    }
    if (failed.contains(node)) {
      throw new Unavailable();
    }
    if (underWay.contains(node)) {
      reportCycle(node, asked);
      throw new Unavailable();
    }
    underWay.addLast(node);
    try {
      Object value = compute.get();
      done.put(node, value);
      return value;
    } catch (FindingException e) {
      findings.add(e.finding());
      failed.add(node);
      throw new Unavailable();
    } catch (Unavailable e) {
      failed.add(node);
      throw e;
    } finally {
      underWay.removeLast();
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
