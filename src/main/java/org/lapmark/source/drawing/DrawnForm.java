package org.lapmark.source.drawing;

/** How what stands for something is drawn, and what is taken from it. */
enum DrawnForm {
  /** Closed lines, of which there is one. */
  OUTLINE {
    @Override
    void take(DrawnShape shape, ShapeReading reading) {
      reading.outline(reading.outline(shape));
    }
  },
  /** One line. */
  LINE {
    @Override
    void take(DrawnShape shape, ShapeReading reading) {
      reading.add(shape, DrawnMark.line(shape.name(), reading.path(shape)));
    }
  },
  /** A point. */
  POINT {
    @Override
    void take(DrawnShape shape, ShapeReading reading) {
      reading.add(shape, new DrawnMark(shape.name(), reading.point(shape), null));
    }
  },
  /** Two lines that meet in a point. */
  LEGS {
    @Override
    void take(DrawnShape shape, ShapeReading reading) {
      reading.add(shape, DrawnMark.line(shape.name(), reading.legs(shape)));
    }
  },
  /** A point on the outline, or a line that crosses it. */
  NOTCH {
    @Override
    void take(DrawnShape shape, ShapeReading reading) {
      reading.add(reading.notch(shape));
    }
  };

  /**
   * Takes what is drawn.
   *
   * @throws org.lapmark.finding.FindingException when it isn't drawn like that
   */
  abstract void take(DrawnShape shape, ShapeReading reading);
}
