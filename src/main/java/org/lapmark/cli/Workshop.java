package org.lapmark.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import org.lapmark.publish.EvaluatedFolder;
import org.lapmark.publish.Listener;
import org.lapmark.publish.Outcome;
import org.lapmark.publish.Publisher;
import org.lapmark.publish.TemplateFolder;
import org.lapmark.publish.request.Request;

/** What the commands need done. */
public interface Workshop {
  /** Publishes folders; templates is a folder that replaces the program's own, or null. */
  List<Outcome> publish(Path templates, List<Path> folders, Request request, Listener listener)
      throws IOException;

  /** Checks folders; templates is a folder that replaces the program's own, or null. */
  List<Outcome> check(Path templates, List<Path> folders, Listener listener) throws IOException;

  /** Evaluates folders in the sizes wanted, or in all, so that their seams can be walked. */
  List<EvaluatedFolder> walk(List<Path> folders, List<String> sizes) throws IOException;

  /** Evaluates folders with some choices in the sizes wanted, or in all, to compare the sizes. */
  List<EvaluatedFolder> grade(
      List<Path> folders, List<String> sizes, SortedMap<String, String> choices) throws IOException;

  /** The program's own. */
  final class Real implements Workshop {
    @Override
    public List<Outcome> publish(
        Path templates, List<Path> folders, Request request, Listener listener) throws IOException {
      return publisher(templates).publish(folders, request, listener);
    }

    @Override
    public List<Outcome> check(Path templates, List<Path> folders, Listener listener)
        throws IOException {
      return publisher(templates).check(folders, listener);
    }

    @Override
    public List<EvaluatedFolder> walk(List<Path> folders, List<String> sizes) throws IOException {
      return publisher(null).walk(folders, sizes);
    }

    @Override
    public List<EvaluatedFolder> grade(
        List<Path> folders, List<String> sizes, SortedMap<String, String> choices)
        throws IOException {
      return publisher(null).grade(folders, sizes, choices);
    }

    private static Publisher publisher(Path templates) throws IOException {
      return templates == null
          ? new Publisher(TemplateFolder.bundled())
          : new Publisher(TemplateFolder.replacing(templates), Optional.of(templates));
    }
  }
}
