package org.lapmark.text.markdown;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.lapmark.finding.Known;
import org.lapmark.finding.NearestWord;
import org.lapmark.finding.Position;
import org.lapmark.finding.SourceText;
import org.lapmark.text.Inline;
import org.lapmark.text.Letters;
import org.lapmark.text.PlainText;
import org.lapmark.text.Targets;
import org.lapmark.text.TextCode;

/**
 * Where links and pictures may lead.
 *
 * @param text the text that they stand in
 * @param targets what cross-references can lead to
 */
record Addresses(PreparedText text, Targets targets) {
  private static final Pattern WEB =
      Pattern.compile("https://[^\\s<>\"{}|\\\\^`/?#@]+(?:[/?#][^\\s<>\"{}|\\\\^`]*)?");
  private static final Pattern MAIL =
      Pattern.compile("mailto:[^\\s<>\"{}|\\\\^`@?/]+@[^\\s<>\"{}|\\\\^`@?/]+");
  private static final Pattern ART =
      Pattern.compile("art(?:/[A-Za-z0-9_](?:[A-Za-z0-9_-]|\\.(?!\\.))*+)+(?<!\\.)");
  private static final List<String> SCHEMES = List.of("https", "mailto", "step", "piece", "page");

  /** The link to an address; nothing, and a finding, when no document can lead there. */
  Optional<Inline> link(Link link, List<Inline> words) {
    String destination = link.getDestination();
    String address = Letters.shown(destination);
    if (WEB.matcher(address).matches() || MAIL.matcher(address).matches()) {
      List<Inline> shown = PlainText.isBlank(words) ? List.of(new Inline.Words(address)) : words;
      return Optional.of(new Inline.WebLink(address, shown));
    }
    int colon = address.indexOf(':');
    String scheme = colon < 0 ? address : address.substring(0, colon);
    Optional<Inline.Reference.Kind> kind = Inline.Reference.Kind.of(scheme);
    if (colon < 0 || kind.isEmpty()) {
      String nearest = SCHEMES.contains(scheme) ? "" : NearestWord.of(scheme, SCHEMES).orElse("");
      text.findings()
          .add(
              TextCode.LINK_ADDRESS,
              place(destination, link),
              "given",
              address.isEmpty() ? "no" : "yes",
              "address",
              Letters.brief(address),
              "nearest",
              nearest,
              "hasNearest",
              nearest.isEmpty() ? "no" : "yes");
      return Optional.empty();
    }
    return reference(kind.get(), address.substring(colon + 1), words, place(destination, link));
  }

  private Optional<Inline> reference(
      Inline.Reference.Kind kind, String target, List<Inline> words, Position position) {
    List<String> known = targets.of(kind);
    if (known.contains(target)) {
      List<Inline> shown = PlainText.isBlank(words) ? List.of() : words;
      return Optional.of(new Inline.Reference(kind, target, shown, position));
    }
    if (targets.mayBeUnread(kind, target)) {
      return Optional.empty();
    }
    Optional<String> when = targets.condition(kind, target);
    if (when.isPresent()) {
      text.findings()
          .add(
              TextCode.REFERENCE_ABSENT,
              position,
              "kind",
              kind.scheme(),
              "target",
              target,
              "when",
              when.get());
      return Optional.empty();
    }
    List<String> sorted = new ArrayList<>(known);
    String nearest = NearestWord.of(target, sorted).orElse("");
    text.findings()
        .add(
            TextCode.REFERENCE_UNKNOWN,
            position,
            "kind",
            kind.scheme(),
            "target",
            Letters.brief(target),
            "nearest",
            nearest,
            "hasNearest",
            nearest.isEmpty() ? "no" : "yes",
            "known",
            Known.listed(sorted));
    return Optional.empty();
  }

  /** The path of a picture; nothing, and a finding, when it lies anywhere but in its folder. */
  Optional<String> art(Image image) {
    String path = Letters.shown(image.getDestination());
    if (ART.matcher(path).matches()) {
      return Optional.of(path);
    }
    text.findings()
        .add(TextCode.ART_PATH, place(image.getDestination(), image), "path", Letters.brief(path));
    return Optional.empty();
  }

  /** What stands in quotation marks behind the path of a picture. */
  Optional<SourceText> caption(Image image) {
    String title = image.getTitle();
    if (title == null || title.isBlank()) {
      return Optional.empty();
    }
    int at = within(image, title);
    if (at < 0) {
      // With escapes in it, which leave no place for each letter.
      int[] offsets = new int[title.length() + 1];
      Arrays.fill(offsets, text.text().offset(text.start(image)));
      return Optional.of(SourceText.mapped(text.text().file(), title, offsets));
    }
    return Optional.of(text.text().part(at, at + title.length()));
  }

  /** Reports what stands in quotation marks behind the address of a link: nobody would see it. */
  void title(Link link) {
    String title = link.getTitle();
    if (title == null || title.isBlank()) {
      return;
    }
    int at = within(link, title);
    if (at < 0) {
      text.reportUnread("title", text.start(link), text.end(link));
    } else {
      text.reportUnread("title", at - 1, at + title.length() + 1);
    }
  }

  /** Where words last stand in a node as they are written; below zero where they don't. */
  private int within(Node node, String words) {
    int end = text.end(node);
    int at = text.masked().lastIndexOf(words, end);
    return at < text.start(node) || at + words.length() > end ? -1 : at;
  }

  /** Where an address is written: behind the words, unless the link took it from elsewhere. */
  Position place(String destination, Node node) {
    int at = destination.isEmpty() ? -1 : within(node, destination);
    if (at < 0) {
      return text.position(node);
    }
    return text.text().position(at, at + destination.length());
  }
}
