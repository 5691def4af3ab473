package org.lapmark.figure.stage;

import java.util.Optional;
import org.lapmark.figure.ink.Side;
import org.lapmark.figure.ink.Texture;
import org.lapmark.finding.FindingException;
import org.lapmark.measure.print.TemplateText;

/**
 * How materials are called and shown in figures.
 *
 * @param staging the variant
 */
public record Cloths(Staging staging) {
  /** What a material is called in a label. */
  public String name(String material) {
    String word = Texture.word(material);
    return word.isEmpty() ? statedName(material) : staging.words().word("cloth." + word);
  }

  /** A material's name as its author states it, up to the first comma. */
  public String statedName(String material) {
    String name =
        staging.pattern().source().materials().stream()
            .filter(thing -> thing.id().text().equals(material))
            .findFirst()
            .flatMap(thing -> printed(thing.name()))
            .orElse(material);
    int comma = name.indexOf(',');
    return comma > 0 ? name.substring(0, comma) : name;
  }

  /** A text that was printed before, so that what is wrong with it is known. */
  private Optional<String> printed(TemplateText text) {
    try {
      return Optional.of(staging.text(text));
    } catch (FindingException e) {
      return Optional.empty();
    }
  }

  /** A material with the side that faces the reader, where its sides differ. */
  public String nameAndSide(String material, Side side) {
    return texture(material).sided() ? sided(name(material), side) : name(material);
  }

  /** A name with the side that faces the reader. */
  public String sided(String name, Side side) {
    return staging.words().word("cloth.sided", "cloth", name, "side", side(side));
  }

  /** The side that faces the reader, in words. */
  public String side(Side side) {
    return staging.words().word(side == Side.RIGHT ? "side.right" : "side.wrong");
  }

  /**
   * The texture in which a material is shown: the one its author states, or that of its id.
   *
   * @param material the material's id
   * @return the texture
   */
  public Texture texture(String material) {
    return staging.pattern().source().materials().stream()
        .filter(thing -> thing.id().text().equals(material) && thing.texture() != null)
        .findFirst()
        .map(thing -> Texture.stated(thing.texture().text()))
        .orElseGet(() -> Texture.of(material));
  }
}
