package org.lapmark.source;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.lapmark.finding.SourceText;
import org.lapmark.measure.Formula;
import org.lapmark.measure.print.TemplateText;
import org.lapmark.source.key.Ref;

/**
 * A material or a piece of hardware.
 *
 * @param id its name in formulas and cuts
 * @param name what readers see
 * @param properties formulas by property name; a formula names one as {@code id.property}. Null
 *     stands for one that couldn't be understood, which was reported
 * @param texts further texts by key: {@code substitute}, {@code buying}
 * @param texture the texture in which figures show a cloth: {@code main}, {@code lining}, {@code
 *     interfacing}, {@code backing}, {@code binding} or {@code webbing}; or null, and the id's own
 *     word decides
 * @param form the form in which figures draw hardware, such as {@code d_ring}; or null
 * @param care the care that it needs
 * @param passes what goes through it: ids of materials and hardware, or lengths
 */
public record ThingSource(
    SourceText id,
    TemplateText name,
    Map<String, Formula> properties,
    Map<String, TemplateText> texts,
    SourceText texture,
    SourceText form,
    CareSource care,
    List<Passing> passes) {
  /** The forms of hardware that figures draw. */
  public static final List<String> FORMS =
      List.of(
          "d_ring",
          "round_ring",
          "rectangular_ring",
          "slide",
          "swivel_hook",
          "buckle",
          "press_stud",
          "magnetic_snap",
          "rivet",
          "eyelet",
          "button",
          "zip",
          "cord",
          "cord_stop",
          "elastic",
          "hook_and_loop");

  /** Its identity. */
  public Ref ref() {
    return Ref.of(Ref.Kind.THING, id.text());
  }

  /** Copies the collections, keeping their order. */
  public ThingSource {
    properties = Collections.unmodifiableMap(new LinkedHashMap<>(properties));
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    passes = List.copyOf(passes);
  }

  /**
   * A thing of which only properties are known.
   *
   * @param id its name in formulas and cuts
   * @param name what readers see
   * @param properties formulas by property name
   */
  public ThingSource(SourceText id, TemplateText name, Map<String, Formula> properties) {
    this(id, name, properties, Collections.emptyMap(), null, null, CareSource.NONE, List.of());
  }

  /**
   * The same through which something else goes.
   *
   * @param others what goes through it
   * @return the thing
   */
  public ThingSource with(List<Passing> others) {
    return new ThingSource(id, name, properties, texts, texture, form, care, others);
  }

  /**
   * Something that goes through a ring, a slide or an eyelet.
   *
   * @param text as written
   * @param formula its width, if the text isn't the id of a material or of hardware
   */
  public record Passing(SourceText text, Formula formula) {}
}
