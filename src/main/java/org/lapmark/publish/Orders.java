package org.lapmark.publish;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.lapmark.finding.Findings;
import org.lapmark.print.paper.Paper;
import org.lapmark.publish.output.FinishedRuns;
import org.lapmark.publish.request.Request;

/**
 * What a run has to do, folder by folder. What was done before and is as it was left is told from
 * what has to be made, so that a run that was broken off goes on where it was. Few folders are held
 * in memory at a time, however many there are.
 */
final class Orders {
  /** So many folders that have been read to see whether the request fits them are kept as read. */
  private static final int MOST_KEPT = 4;

  private final Request request;
  private final List<Paper> papers;
  private final Stages stages;
  private final List<Order> orders;
  private int kept;

  Orders(List<Path> folders, Request request, List<Paper> papers, Stages stages) {
    this.request = request;
    this.papers = List.copyOf(papers);
    this.stages = stages;
    Optional<String> common = stages.common();
    this.orders = folders.stream().map(folder -> new Order(folder, common)).toList();
  }

  Request request() {
    return request;
  }

  List<Paper> papers() {
    return papers;
  }

  List<Order> all() {
    return orders;
  }

  boolean areDone() {
    return orders.stream().allMatch(Order::isDone);
  }

  /** Refuses a request that doesn't fit one of the folders. */
  void refuseUnfit() {
    for (Order order : orders) {
      if (!order.isDone()) {
        OpenedFolder one = order.open();
        Refusals.refuse(one, request);
        if (kept < MOST_KEPT) {
          kept++;
          order.opened = one;
        }
      }
    }
  }

  /** A folder, and what has to be done for it. */
  final class Order {
    private final Path folder;
    private final Optional<String> common;
    private final Optional<String> run;
    private final Optional<FinishedRuns.UpToDate> done;
    private OpenedFolder opened;

    private Order(Path folder, Optional<String> common) {
      this.folder = folder;
      this.common = common;
      this.run = fingerprint();
      this.done = run.flatMap(this::upToDate);
    }

    private Optional<String> fingerprint() {
      return common.flatMap(each -> Fingerprint.of(folder, request, papers, each));
    }

    private Optional<FinishedRuns.UpToDate> upToDate(String hash) {
      try {
        return FinishedRuns.upToDate(
            request.output().toAbsolutePath().normalize(), folder.getFileName().toString(), hash);
      } catch (IOException e) {
        return Optional.empty(); // Publishing says what is wrong there.
      }
    }

    private OpenedFolder open() {
      return OpenedFolder.open(folder, stages).presented(request.presentation());
    }

    /** The folder as read, which isn't kept any longer. */
    OpenedFolder take() {
      OpenedFolder one = opened == null ? open() : opened;
      opened = null;
      return one;
    }

    /** Whether everything wanted is there, and made of what the folder has now. */
    boolean isDone() {
      return done.isPresent();
    }

    /** What there is of a folder that is done. */
    Outcome told(Listener listener) {
      FinishedRuns.UpToDate run = done.orElseThrow();
      Findings findings = new Findings();
      run.told().findings().forEach(findings::add);
      Outcome outcome = new Outcome(folder, new Result(run.files(), findings), Optional.empty());
      listener.upToDate(folder);
      run.told().omitted().forEach(what -> listener.omitted(folder, what));
      listener.ended(outcome);
      return outcome;
    }

    /** The hash of what the run depends on, if that hasn't changed since. */
    Optional<String> unchanged() {
      return run.filter(before -> fingerprint().equals(run));
    }
  }
}
