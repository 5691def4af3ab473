package org.lapmark.document;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.lapmark.document.companion.Companion;
import org.lapmark.document.companion.CompanionUnits;
import org.lapmark.finding.FindingText;
import org.lapmark.finding.Findings;
import org.lapmark.grade.EvaluatedPattern;
import org.lapmark.grade.Grader;
import org.lapmark.measure.Variant;
import org.lapmark.source.PatternSource;
import org.lapmark.source.read.PatternReader;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The demo's companion, and how a browser would show it. */
public final class Companions {
  private Companions() {}

  public static List<EvaluatedPattern> demo() {
    Findings findings = new Findings();
    try {
      PatternSource source =
          PatternReader.read(Path.of("content", "towpath-handlebar-bag"), findings);
      List<EvaluatedPattern> patterns = new ArrayList<>();
      for (String size : source.sizes().sizes()) {
        patterns.add(Grader.grade(source, Variant.ofSize(size), findings));
      }
      refuse(findings);
      return patterns;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static String page(List<EvaluatedPattern> patterns) {
    Findings findings = new Findings();
    byte[] page = new DocumentWriter(Specimen.templates()).write(new Companion(patterns), findings);
    refuse(findings);
    return new String(page, StandardCharsets.UTF_8);
  }

  private static void refuse(Findings findings) {
    if (findings.hasErrors()) {
      throw new AssertionError(
          findings.sorted().stream()
              .map(finding -> finding.position() + " " + FindingText.message(finding))
              .toList());
    }
  }

  public static Document parse(String page) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page.strip())));
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError(e);
    }
  }

  public static List<Element> elements(Node node) {
    List<Element> elements = new ArrayList<>();
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element) {
        elements.add(element);
        elements.addAll(elements(element));
      }
    }
    return elements;
  }

  public static Element byId(Document page, String id) {
    return elements(page).stream()
        .filter(element -> element.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no element " + id));
  }

  public static List<Element> byClass(Node node, String name) {
    return elements(node).stream()
        .filter(element -> List.of(element.getAttribute("class").split(" ")).contains(name))
        .toList();
  }

  /**
   * The text that is shown when a size, or none, and units are chosen; figures left out.
   *
   * @param size the place of the size, or -1 for all
   */
  public static String shown(Node node, int size, CompanionUnits units) {
    StringBuilder text = new StringBuilder();
    add(node, size, units, text);
    return spaced(text.toString());
  }

  public static String spaced(String text) {
    return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
  }

  private static void add(Node node, int size, CompanionUnits units, StringBuilder text) {
    if (node instanceof Element element) {
      String in = element.getAttribute("data-in");
      String of = element.getAttribute("data-for");
      boolean hidden =
          !in.isEmpty() && !in.equals(units.id())
              || size >= 0 && !of.isEmpty() && !of.equals(String.valueOf(size))
              || size >= 0 && element.getAttribute("class").equals("who")
              || element.getTagName().equals("figure");
      if (hidden) {
        return;
      }
      boolean block =
          List.of("p", "li", "ul", "td", "th", "tr", "br").contains(element.getTagName());
      text.append(block ? " " : "");
      for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
        add(child, size, units, text);
      }
      text.append(block ? " " : "");
    } else if (node.getNodeType() == Node.TEXT_NODE) {
      text.append(node.getNodeValue());
    } else {
      for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
        add(child, size, units, text);
      }
    }
  }
}
