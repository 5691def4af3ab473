package org.lapmark.document.template;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceFile;

/** Which templates include which. */
final class Includes {
  private static final Pattern INCLUDE =
      Pattern.compile("<#(?:include|import)\\s+[\"']/?([^\"']+)[\"']");

  private static final Pattern VALUE = Pattern.compile("\\$\\{[^}]*}");

  private Includes() {}

  /** The place where a template leads back to itself; the whole template if none is found. */
  static Position cycle(Templates templates, String path) {
    Position found = cycle(templates, path, new LinkedHashSet<>());
    return found == null ? Position.ofFile(templates.display(path)) : found;
  }

  private static Position cycle(Templates templates, String path, Set<String> above) {
    if (!templates.files().containsKey(path) || !above.add(path)) {
      return null;
    }
    SourceFile file = templates.source(path);
    Matcher include = INCLUDE.matcher(file.content());
    while (include.find()) {
      String folder = path.substring(0, path.lastIndexOf('/') + 1);
      for (String target : targets(templates, folder, include.group(1))) {
        if (above.contains(target)) {
          return file.position(include.start(), include.end());
        }
        Position deeper = cycle(templates, target, above);
        if (deeper != null) {
          return deeper;
        }
      }
    }
    above.remove(path);
    return null;
  }

  /** What a name may mean; a value in it stands for anything. */
  private static List<String> targets(Templates templates, String folder, String name) {
    if (!name.contains("${")) {
      String inside = folder + name;
      return List.of(templates.files().containsKey(inside) ? inside : name);
    }
    String any =
        Stream.of(VALUE.split(name, -1)).map(Pattern::quote).collect(Collectors.joining("[^/]*"));
    return templates.files().keySet().stream()
        .filter(path -> path.matches(Pattern.quote(folder) + any))
        .toList();
  }
}
