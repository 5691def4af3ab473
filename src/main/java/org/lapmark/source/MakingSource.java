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
 * What a maker should know before she begins and when she is done.
 *
 * @param texts by key: {@code skill}, {@code time}, {@code machine}, {@code needle}, {@code thread}
 * @param stitches stitch lengths by the name of the stitch
 * @param tools the tools, in the order stated
 * @param use how the finished article is used
 */
public record MakingSource(
    Map<String, TemplateText> texts,
    Map<String, Formula> stitches,
    List<ToolSource> tools,
    UseSource use) {
  /** Copies the collections, keeping their order. */
  public MakingSource {
    texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
    stitches = Collections.unmodifiableMap(new LinkedHashMap<>(stitches));
    tools = List.copyOf(tools);
  }

  /** Nothing is known. */
  public static final MakingSource NONE =
      new MakingSource(Collections.emptyMap(), Collections.emptyMap(), List.of(), UseSource.NONE);

  /**
   * A tool.
   *
   * @param id its name in the steps' {@code uses}
   * @param name what readers see
   * @param care the care that it needs
   */
  public record ToolSource(SourceText id, TemplateText name, CareSource care) {
    /** Its identity. */
    public Ref ref() {
      return Ref.of(Ref.Kind.THING, id.text());
    }
  }
}
