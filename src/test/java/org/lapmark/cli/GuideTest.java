package org.lapmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;

/** The pages for authors: README.md leads to every one of them, and every link leads somewhere. */
class GuideTest {
  private static final Path README = Path.of("README.md");
  private static final Path PAGES = Path.of("src", "readme");
  private static final Parser PARSER =
      Parser.builder().extensions(List.of(TablesExtension.create())).build();

  @Test
  void everyPageIsReachedAndEveryLinkLeadsSomewhere() throws IOException {
    Set<Path> reached = new TreeSet<>(Set.of(README));
    Deque<Path> open = new ArrayDeque<>(reached);
    List<String> broken = new ArrayList<>();
    int links = 0;
    while (!open.isEmpty()) {
      Path page = open.remove();
      for (String link : links(page)) {
        links++;
        String[] parts = link.split("#", 2);
        Path folder = page.toAbsolutePath().getParent();
        Path to = parts[0].isEmpty() ? page : relative(folder.resolve(parts[0]).normalize());
        if (!Files.isRegularFile(to)) {
          broken.add(page + " leads to " + link);
        } else if (parts.length > 1 && !anchors(to).contains(parts[1])) {
          broken.add(page + " leads to the heading " + link);
        } else if (to.toString().endsWith(".md") && reached.add(to)) {
          open.add(to);
        }
      }
    }
    assertEquals(List.of(), broken);
    assertTrue(links > 100, links + " links");
    try (Stream<Path> pages = Files.walk(PAGES)) {
      Set<Path> written =
          pages
              .filter(page -> page.toString().endsWith(".md"))
              .collect(Collectors.toCollection(TreeSet::new));
      written.removeAll(reached);
      assertEquals(Set.of(), written);
    }
  }

  private static Path relative(Path path) {
    return Path.of("").toAbsolutePath().relativize(path);
  }

  private static List<String> links(Path page) throws IOException {
    List<String> links = new ArrayList<>();
    PARSER
        .parse(Files.readString(page))
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Link link) {
                links.add(link.getDestination());
                visitChildren(link);
              }

              @Override
              public void visit(Image image) {
                links.add(image.getDestination());
                visitChildren(image);
              }
            });
    return links;
  }

  /** What headings are called in addresses: small letters, digits and hyphens. */
  private static Set<String> anchors(Path page) throws IOException {
    Set<String> anchors = new TreeSet<>();
    PARSER
        .parse(Files.readString(page))
        .accept(
            new AbstractVisitor() {
              @Override
              public void visit(Heading heading) {
                StringBuilder words = new StringBuilder();
                for (Node node = heading.getFirstChild(); node != null; node = node.getNext()) {
                  if (node instanceof Text text) {
                    words.append(text.getLiteral());
                  } else if (node instanceof Code code) {
                    words.append(code.getLiteral());
                  }
                }
                anchors.add(
                    words
                        .toString()
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^a-z0-9 _-]", "")
                        .replace(' ', '-'));
              }
            });
    return anchors;
  }
}
