package org.lapmark.grade.fastening;

import java.util.List;
import java.util.Optional;

/**
 * All that is fastened in one variant; what couldn't be evaluated is missing.
 *
 * @param trims what is sewn along edges, in the order stated
 * @param attachments what is attached at places, in the order stated
 */
public record Fastened(List<Trim> trims, List<Attached> attachments) {
  /** Nothing is fastened. */
  public static final Fastened NONE = new Fastened(List.of(), List.of());

  /** Copies the lists. */
  public Fastened {
    trims = List.copyOf(trims);
    attachments = List.copyOf(attachments);
  }

  /**
   * A trim by its name.
   *
   * @param name the name
   * @return the trim; nothing if the variant has none of that name
   */
  public Optional<Trim> trim(String name) {
    return trims.stream().filter(trim -> trim.name().equals(name)).findFirst();
  }

  /**
   * An attachment by its name.
   *
   * @param name the name
   * @return the attachment; nothing if the variant has none of that name
   */
  public Optional<Attached> attachment(String name) {
    return attachments.stream().filter(one -> one.name().equals(name)).findFirst();
  }
}
