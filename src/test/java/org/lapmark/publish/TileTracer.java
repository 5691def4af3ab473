package org.lapmark.publish;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.lapmark.geometry.Cubic;
import org.lapmark.geometry.Curve;
import org.lapmark.geometry.Line;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Reads the paths of a page in sheet coordinates. */
class TileTracer extends PDFGraphicsStreamEngine {
  private static final double POINTS_A_MILLIMETRE = 72 / 25.4;

  private final Point shift;
  private final double height;
  private final List<Path> found = new ArrayList<>();
  private Point at = new Point(0, 0);

  TileTracer(PDPage page, Point shift) {
    super(page);
    this.shift = shift;
    this.height = page.getMediaBox().getHeight();
  }

  List<Path> trace() throws IOException {
    processPage(getPage());
    return found;
  }

  private Point sheet(double x, double y) {
    return new Point(x / POINTS_A_MILLIMETRE, (height - y) / POINTS_A_MILLIMETRE).plus(shift);
  }

  private void add(Curve curve) {
    if (curve.length() > 1e-6) {
      constructed(curve);
    }
    at = curve.end();
  }

  /** A curve of a path, whatever becomes of the path. */
  void constructed(Curve curve) {
    found.add(new Path(List.of(curve)));
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {}

  @Override
  public void drawImage(PDImage image) {}

  @Override
  public void clip(int windingRule) {}

  @Override
  public void moveTo(float x, float y) {
    at = sheet(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    add(new Line(at, sheet(x, y)));
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    add(new Cubic(at, sheet(x1, y1), sheet(x2, y2), sheet(x3, y3)));
  }

  @Override
  public Point2D getCurrentPoint() {
    return new Point2D.Double(at.x(), at.y());
  }

  @Override
  public void closePath() {}

  @Override
  public void endPath() {}

  @Override
  public void strokePath() {}

  @Override
  public void fillPath(int windingRule) {}

  @Override
  public void fillAndStrokePath(int windingRule) {}

  @Override
  public void shadingFill(COSName shadingName) {}
}
