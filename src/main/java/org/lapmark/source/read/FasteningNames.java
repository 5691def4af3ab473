package org.lapmark.source.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.lapmark.finding.SourceText;
import org.lapmark.source.PatternSource;
import org.lapmark.source.SourceCode;
import org.lapmark.source.fastening.AttachmentSource;
import org.lapmark.source.fastening.Fastenings;
import org.lapmark.source.key.Reading;
import org.lapmark.source.key.Ref;

/** Checks that what is fastened names things, pieces and holders that there are. */
final class FasteningNames implements AttachmentSource.Reader<Optional<SourceText>> {
  private final Reading reading;
  private final Fastenings fastenings;
  private final List<String> things = new ArrayList<>();
  private final List<String> pieces = new ArrayList<>();

  FasteningNames(Reading reading, PatternSource source) {
    this.reading = reading;
    this.fastenings = source.fastenings();
    source.hardware().forEach(thing -> things.add(thing.id().text()));
    source.materials().forEach(thing -> things.add(thing.id().text()));
    source.pieces().forEach(piece -> pieces.add(Integer.toString(piece.number())));
  }

  void check() {
    fastenings.trims().forEach(trim -> known(SourceCode.THING_UNKNOWN, trim.thing(), things));
    for (AttachmentSource attachment : fastenings.attachments()) {
      if (attachment.thing() != null) {
        known(SourceCode.THING_UNKNOWN, attachment.thing(), things);
      } else {
        known(SourceCode.PIECE_UNKNOWN, attachment.piece(), pieces);
      }
      attachment.where().read(this).ifPresent(holder -> holder(attachment, holder));
    }
  }

  private boolean known(SourceCode code, SourceText name, List<String> names) {
    if (names.contains(name.text())) {
      return true;
    }
    if (code == SourceCode.HOLDER_UNKNOWN
        && reading.switches().unread().contains(Ref.of(Ref.Kind.ATTACHMENT, name.text()))) {
      return false;
    }
    reading.unknown(code, name.position(), name.text(), names);
    return false;
  }

  /** What holds something has to be attached somewhere in the end. */
  private void holder(AttachmentSource attachment, SourceText holder) {
    List<String> names = fastenings.attachments().stream().map(one -> one.name().text()).toList();
    if (!known(SourceCode.HOLDER_UNKNOWN, holder, names)) {
      return;
    }
    Set<String> before = new LinkedHashSet<>();
    Optional<SourceText> next = Optional.of(holder);
    while (next.isPresent() && before.add(next.get().text())) {
      next = fastenings.attachment(next.get().text()).flatMap(one -> one.where().read(this));
    }
    // A circle is told once, where the first of it stands.
    boolean first =
        names.stream()
            .filter(before::contains)
            .findFirst()
            .filter(attachment.name().text()::equals)
            .isPresent();
    if (next.isPresent() && first) {
      reading
          .findings()
          .add(
              SourceCode.HELD_IN_A_CIRCLE,
              holder.position(),
              "name",
              attachment.name().text(),
              "holder",
              holder.text());
    }
  }

  @Override
  public Optional<SourceText> atEdge(AttachmentSource.AtEdge place) {
    return Optional.empty();
  }

  @Override
  public Optional<SourceText> atMark(AttachmentSource.AtMark place) {
    return Optional.empty();
  }

  @Override
  public Optional<SourceText> atCorner(AttachmentSource.AtCorner place) {
    return Optional.empty();
  }

  @Override
  public Optional<SourceText> heldBy(AttachmentSource.HeldBy place) {
    return Optional.of(place.holder());
  }
}
