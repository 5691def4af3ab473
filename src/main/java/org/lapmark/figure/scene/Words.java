package org.lapmark.figure.scene;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.wording.Wording;

/**
 * The words of figures in one language.
 *
 * @param wording the words of {@code figure.…}
 */
public record Words(Wording wording) {
  /**
   * What an edge is called among other words.
   *
   * @param name the edge’s or chain’s name
   * @return the words, which begin small
   */
  public String edge(String name) {
    return word("edge", "edge", name, "name", name.replace('_', ' '));
  }

  /**
   * Words one after another.
   *
   * @param words what is told, in order
   * @return all of it
   */
  public String list(List<String> words) {
    return String.join(word("list.between"), words);
  }

  /**
   * A word or a sentence.
   *
   * @param key its key behind {@code figure.}
   * @param namesAndValues its arguments
   * @return the words
   */
  public String word(String key, Object... namesAndValues) {
    Map<String, Object> arguments = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      arguments.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return wording.text("figure." + key, arguments);
  }
}
