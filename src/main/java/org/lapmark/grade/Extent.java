package org.lapmark.grade;

import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.measure.Formula;
import org.lapmark.panel.Edge;
import org.lapmark.panel.Panel;
import org.lapmark.source.PieceSource;
import org.lapmark.source.ThingSource;
import org.lapmark.source.fastening.AttachmentSource;

/**
 * How much room something takes that is attached, in millimetres.
 *
 * @param width how wide it is where it begins; 0 where nobody says so
 * @param length how far it reaches from there; 0 where nobody says so
 */
record Extent(double width, double length) {
  /**
   * What is stated, or else what the piece or the thing says.
   *
   * @throws org.lapmark.finding.FindingException when the variant has no such thing or panel
   */
  static Extent of(PatternScope scope, AttachmentSource attachment) {
    Extent own =
        attachment.thing() == null ? ofPiece(scope, attachment) : ofThing(scope, attachment);
    return new Extent(
        attachment.width() == null ? own.width() : scope.positiveLength(attachment.width()),
        attachment.length() == null ? own.length() : scope.positiveLength(attachment.length()));
  }

  private static Extent ofThing(PatternScope scope, AttachmentSource attachment) {
    ThingSource thing = TrimFactory.thing(scope, attachment.thing());
    Formula length = thing.properties().get("length");
    return new Extent(
        TrimFactory.width(scope, thing).orElse(0), length == null ? 0 : scope.length(length));
  }

  private static Extent ofPiece(PatternScope scope, AttachmentSource attachment) {
    PieceSource piece =
        scope.piece(attachment.piece().text()).orElseThrow(DemandGraph.Unavailable::new);
    Panel panel = scope.shape(piece.panel());
    if (attachment.end() == null) {
      Box box = panel.outline().bounds();
      return new Extent(box.width(), box.height());
    }
    Path end = PatternScope.edge(panel, attachment.end());
    Point inward = end.end().minus(end.start()).unit().quarterTurn();
    double far = 0;
    for (Edge edge : panel.edges()) {
      far = Math.max(far, edge.path().start().minus(end.start()).dot(inward));
    }
    return new Extent(end.length(), far);
  }
}
