package org.lapmark.publish;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDVectorFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.util.Matrix;
import org.apache.pdfbox.util.Vector;
import org.lapmark.geometry.Box;

/** The box around all ink of a page: lines with their width, areas, pictures and glyphs. */
final class InkBounds extends PDFGraphicsStreamEngine {
  private static final double POINTS_A_MILLIMETRE = 72 / 25.4;

  private GeneralPath path = new GeneralPath();
  private int clipRule = -1;
  private Rectangle2D all;

  private InkBounds(PDPage page) {
    super(page);
  }

  /** In millimetres from the page's top left corner. */
  static Box of(PDPage page) throws IOException {
    InkBounds bounds = new InkBounds(page);
    bounds.processPage(page);
    double height = page.getMediaBox().getHeight();
    Rectangle2D all = bounds.all;
    if (all == null) {
      throw new IllegalArgumentException("a page without ink");
    }
    return new Box(
        all.getMinX() / POINTS_A_MILLIMETRE,
        (height - all.getMaxY()) / POINTS_A_MILLIMETRE,
        all.getMaxX() / POINTS_A_MILLIMETRE,
        (height - all.getMinY()) / POINTS_A_MILLIMETRE);
  }

  private void add(Shape shape) {
    Area area = new Area(shape);
    area.intersect(getGraphicsState().getCurrentClippingPath());
    if (!area.isEmpty()) {
      all = all == null ? area.getBounds2D() : all.createUnion(area.getBounds2D());
    }
  }

  private void ended() {
    if (clipRule >= 0) {
      path.setWindingRule(clipRule);
      getGraphicsState().intersectClippingPath(path);
      clipRule = -1;
    }
    path = new GeneralPath();
  }

  private Shape stroked() {
    Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
    double width = getGraphicsState().getLineWidth() * matrix.getScalingFactorX();
    return new BasicStroke((float) width).createStrokedShape(path);
  }

  @Override
  public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
    path.moveTo(p0.getX(), p0.getY());
    path.lineTo(p1.getX(), p1.getY());
    path.lineTo(p2.getX(), p2.getY());
    path.lineTo(p3.getX(), p3.getY());
    path.closePath();
  }

  @Override
  public void drawImage(PDImage image) {
    AffineTransform map =
        getGraphicsState().getCurrentTransformationMatrix().createAffineTransform();
    add(map.createTransformedShape(new Rectangle2D.Double(0, 0, 1, 1)));
  }

  @Override
  public void clip(int windingRule) {
    clipRule = windingRule;
  }

  @Override
  public void moveTo(float x, float y) {
    path.moveTo(x, y);
  }

  @Override
  public void lineTo(float x, float y) {
    path.lineTo(x, y);
  }

  @Override
  public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
    path.curveTo(x1, y1, x2, y2, x3, y3);
  }

  @Override
  public Point2D getCurrentPoint() {
    return path.getCurrentPoint();
  }

  @Override
  public void closePath() {
    path.closePath();
  }

  @Override
  public void endPath() {
    ended();
  }

  @Override
  public void strokePath() {
    add(stroked());
    ended();
  }

  @Override
  public void fillPath(int windingRule) {
    path.setWindingRule(windingRule);
    if (!isWhite()) {
      add(path);
    }
    ended();
  }

  private boolean isWhite() {
    float[] components = getGraphicsState().getNonStrokingColor().getComponents();
    for (float component : components) {
      if (component < 1) {
        return false;
      }
    }
    return components.length > 0;
  }

  @Override
  public void fillAndStrokePath(int windingRule) {
    add(path);
    add(stroked());
    ended();
  }

  @Override
  public void shadingFill(COSName shading) {
    add(getGraphicsState().getCurrentClippingPath());
  }

  @Override
  protected void showGlyph(Matrix matrix, PDFont font, int code, Vector displacement)
      throws IOException {
    Path2D glyph = ((PDVectorFont) font).getPath(code);
    AffineTransform map = matrix.createAffineTransform();
    map.concatenate(font.getFontMatrix().createAffineTransform());
    Rectangle2D box = map.createTransformedShape(glyph).getBounds2D();
    if (!box.isEmpty()) {
      add(box);
    }
  }
}
