package org.lapmark.source.fastening;

import java.util.List;
import java.util.Optional;

/**
 * All that is fastened.
 *
 * @param trims what is sewn along edges, in the order stated
 * @param attachments what is attached at places, in the order stated
 */
public record Fastenings(List<TrimSource> trims, List<AttachmentSource> attachments) {
  /** Nothing is fastened. */
  public static final Fastenings NONE = new Fastenings(List.of(), List.of());

  /** Copies the lists. */
  public Fastenings {
    trims = List.copyOf(trims);
    attachments = List.copyOf(attachments);
  }

  /**
   * A trim by its name.
   *
   * @param name the name
   * @return the trim; nothing if none has the name
   */
  public Optional<TrimSource> trim(String name) {
    return trims.stream().filter(trim -> trim.name().text().equals(name)).findFirst();
  }

  /**
   * An attachment by its name.
   *
   * @param name the name
   * @return the attachment; nothing if none has the name
   */
  public Optional<AttachmentSource> attachment(String name) {
    return attachments.stream().filter(one -> one.name().text().equals(name)).findFirst();
  }
}
