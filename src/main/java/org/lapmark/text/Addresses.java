package org.lapmark.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.commonmark.node.Node;
import org.lapmark.finding.Known;
import org.lapmark.finding.Nearest;
import org.lapmark.finding.Position;

/** Where links and pictures may lead. */
final class Addresses {
  private static final Pattern WEB =
      Pattern.compile("https://[^\\s<>\"{}|\\\\^`/?#@]+(?:[/?#][^\\s<>\"{}|\\\\^`]*)?");
  private static final Pattern MAIL =
      Pattern.compile("mailto:[^\\s<>\"{}|\\\\^`@?/]+@[^\\s<>\"{}|\\\\^`@?/]+");
  private static final Pattern ART =
      Pattern.compile("art(?:/[A-Za-z0-9_](?:[A-Za-z0-9_-]|\\.(?!\\.))*+)+(?<!\\.)");
  private static final List<String> SCHEMES = List.of("https", "mailto", "step", "piece", "page");

  private Addresses() {}

  /** The link to an address; nothing, and a finding, when no document can lead there. */
  static Optional<Inline> link(
      String destination, List<Inline> words, BlockReader reader, Node node) {
    String address = Letters.shown(destination);
    if (WEB.matcher(address).matches() || MAIL.matcher(address).matches()) {
      List<Inline> shown = PlainText.isBlank(words) ? List.of(new Inline.Words(address)) : words;
      return Optional.of(new Inline.WebLink(address, shown));
    }
    int colon = address.indexOf(':');
    String scheme = colon < 0 ? address : address.substring(0, colon);
    Optional<Inline.Reference.Kind> kind = Inline.Reference.Kind.of(scheme);
    if (colon < 0 || kind.isEmpty()) {
      String nearest = SCHEMES.contains(scheme) ? "" : Nearest.of(scheme, SCHEMES).orElse("");
      reader
          .manuscript()
          .findings()
          .add(
              TextCode.LINK_ADDRESS,
              place(destination, reader, node),
              "given",
              address.isEmpty() ? "no" : "yes",
              "address",
              InlineReader.brief(address),
              "nearest",
              nearest,
              "hasNearest",
              nearest.isEmpty() ? "no" : "yes");
      return Optional.empty();
    }
    return reference(kind.get(), address.substring(colon + 1), words, reader, node, destination);
  }

  private static Optional<Inline> reference(
      Inline.Reference.Kind kind,
      String target,
      List<Inline> words,
      BlockReader reader,
      Node node,
      String destination) {
    Position position = place(destination, reader, node);
    List<String> known = reader.manuscript().targets().of(kind);
    if (known.contains(target)) {
      List<Inline> shown = PlainText.isBlank(words) ? List.of() : words;
      return Optional.of(new Inline.Reference(kind, target, shown, position));
    }
    List<String> sorted = new ArrayList<>(known);
    String nearest = Nearest.of(target, sorted).orElse("");
    reader
        .manuscript()
        .findings()
        .add(
            TextCode.REFERENCE_UNKNOWN,
            position,
            "kind",
            kind.scheme(),
            "target",
            InlineReader.brief(target),
            "nearest",
            nearest,
            "hasNearest",
            nearest.isEmpty() ? "no" : "yes",
            "known",
            Known.listed(sorted));
    return Optional.empty();
  }

  /** The path of a picture; nothing, and a finding, when it lies anywhere but in its folder. */
  static Optional<String> art(String destination, BlockReader reader, Node node) {
    String path = Letters.shown(destination);
    if (ART.matcher(path).matches()) {
      return Optional.of(path);
    }
    reader
        .manuscript()
        .findings()
        .add(TextCode.ART_PATH, place(destination, reader, node), "path", InlineReader.brief(path));
    return Optional.empty();
  }

  /** Where an address is written: behind the words, unless the link took it from elsewhere. */
  static Position place(String destination, BlockReader reader, Node node) {
    int start = reader.start(node);
    int end = reader.end(node);
    int at = destination.isEmpty() ? -1 : reader.masked().lastIndexOf(destination, end);
    if (at < start || at + destination.length() > end) {
      return reader.position(node);
    }
    return reader.text().position(at, at + destination.length());
  }
}
