package org.lapmark.figure.operation.frame;

import java.util.Optional;
import org.lapmark.figure.ink.Texture;

/**
 * A material as it is shown and called.
 *
 * @param texture how it is shown; nothing for a zip's tape
 * @param name what it is called in labels
 * @param said what it is called in sentences
 */
public record Material(Optional<Texture> texture, String name, String said) {
  /** Its texture where it is seen from above; a tape is shown as webbing is. */
  public Texture seen() {
    return texture.orElse(Texture.WEBBING);
  }
}
