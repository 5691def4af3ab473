package org.lapmark.publish.product;

import java.util.List;
import java.util.Optional;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;

/**
 * A kind of file that publishing makes: when, for what, under which name and how. {@link
 * Products#ALL} lists them.
 */
public abstract class Product {
  private final String kind;
  private final Optional<Extra> extra;

  /** One that is always made. */
  Product(String kind) {
    this(kind, Optional.empty());
  }

  /** One that is made when it is asked for. */
  Product(String kind, Extra extra) {
    this(kind, Optional.of(extra));
  }

  private Product(String kind, Optional<Extra> extra) {
    this.kind = kind;
    this.extra = extra;
  }

  /** What the manifest calls it. */
  public final String kind() {
    return kind;
  }

  /** What asks for it; nothing when it is always made. */
  public final Optional<Extra> extra() {
    return extra;
  }

  /** Whether a request asks for it. */
  public boolean isWanted(Request request) {
    return extra.map(request.extras()::contains).orElse(true)
        && (request.pieces().isEmpty() || isOfPieces());
  }

  /** Whether it is made of chosen pieces alone, too, without anything to read. */
  boolean isOfPieces() {
    return false;
  }

  /** What is to be done to make it, in a fixed order; nothing where the run gives nothing. */
  public abstract List<Job> jobs(Run run);

  /**
   * What of it a check has to make: nothing where other products say and show all of it, and not
   * what can't fail where they can be made.
   */
  public List<Job> rehearsal(Run run) {
    return jobs(run);
  }
}
