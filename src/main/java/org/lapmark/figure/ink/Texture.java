package org.lapmark.figure.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Affine;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/**
 * How a material is told apart from others without colour: by a flat tone, or by lines or dots of a
 * constant size on paper, clipped to the shape. A row of dots is one line whose dashes are as long
 * as they are wide.
 */
public enum Texture {
  /** The cloth outside. */
  MAIN(0, 0, 0, 0),
  /** The cloth inside. */
  LINING(1.3, 0, 2.6, 0),
  /** What is fused or laid to the wrong side. */
  INTERFACING(1.5, -45, 0, -45),
  /** Foam, stiffener and the like. */
  BACKING(1.3, -45, 0, 45),
  /** Cloth cut on the bias for bindings and piping. */
  BINDING(0, 0, 2.2, 45),
  /** Straps. */
  WEBBING(0.8, 90, 0.8, 90),
  /** Anything else. */
  OTHER(2.0, 30, 4.0, 30);

  private final double rightPitch;
  private final double rightAngle;
  private final double wrongPitch;
  private final double wrongAngle;

  Texture(double rightPitch, double rightAngle, double wrongPitch, double wrongAngle) {
    this.rightPitch = rightPitch;
    this.rightAngle = rightAngle;
    this.wrongPitch = wrongPitch;
    this.wrongAngle = wrongAngle;
  }

  /**
   * The texture of a material, by the trade word in its id.
   *
   * @param material the id
   * @return the texture
   */
  public static Texture of(String material) {
    for (String word : material.split("[^\\p{L}]+")) {
      Texture texture = ofWord(word);
      if (texture != OTHER) {
        return texture;
      }
    }
    return OTHER;
  }

  /**
   * The word by which labels call a material: that of its texture, or where materials of one
   * texture differ much, the trade word in its id.
   *
   * @param material the id
   * @return the word; empty if the id has none
   */
  public static String word(String material) {
    for (String word : material.split("[^\\p{L}]+")) {
      Texture texture = ofWord(word);
      if (texture != OTHER) {
        return texture == BACKING || texture == BINDING ? word : texture.word();
      }
    }
    return "";
  }

  private static Texture ofWord(String word) {
    return switch (word) {
      case "main", "outer", "shell", "face" -> MAIN;
      case "lining" -> LINING;
      case "interfacing", "interlining", "fusible" -> INTERFACING;
      case "foam", "stiffener", "backing", "wadding", "batting", "board" -> BACKING;
      case "binding", "piping", "bias", "facing" -> BINDING;
      case "webbing", "strap", "tape", "cord" -> WEBBING;
      default -> OTHER;
    };
  }

  /**
   * The texture that an author states.
   *
   * @param word one of the words that the pattern folder's reader admits
   * @return the texture
   */
  public static Texture stated(String word) {
    return valueOf(word.toUpperCase(Locale.ROOT));
  }

  /**
   * Whether its two sides differ.
   *
   * @return whether a picture tells them apart
   */
  public boolean sided() {
    return this == MAIN || this == LINING || this == BINDING || this == OTHER;
  }

  /** Whether a side has lines or dots. */
  boolean isDrawn(Side side) {
    return (sided() && side == Side.WRONG ? wrongPitch : rightPitch) > 0;
  }

  /** Whether lines on a side of it are drawn white, as black ones wouldn't be seen. */
  public boolean isDark(Side side) {
    return this == BINDING && side == Side.RIGHT;
  }

  /** Its name in style roles and words. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  private String role(Side side) {
    return "figure-" + word() + (sided() && side == Side.WRONG ? "-wrong" : "");
  }

  /**
   * Fills a shape.
   *
   * @param outline a closed path on paper
   * @param side the side that faces the reader
   * @param angle how far the grain is turned, in degrees clockwise
   * @return what is drawn
   */
  List<Item> fill(Path outline, Side side, double angle) {
    boolean wrong = sided() && side == Side.WRONG;
    List<Item> items = new ArrayList<>();
    items.add(new Item.Shape(List.of(outline), role(side)));
    double pitch = wrong ? wrongPitch : rightPitch;
    if (pitch > 0) {
      List<Path> rows = rows(outline.bounds(), pitch, (wrong ? wrongAngle : rightAngle) + angle);
      if (!sided() && wrongAngle != rightAngle) {
        rows.addAll(rows(outline.bounds(), pitch, wrongAngle + angle));
      }
      if (!rows.isEmpty()) {
        items.add(
            new Item.Group(
                outline,
                Affine.IDENTITY,
                null,
                List.of(new Item.Shape(rows, role(side) + "-texture"))));
      }
    }
    return items;
  }

  /** Every second row is moved by half a pitch, so that dots stand in quincunx. */
  private static List<Path> rows(Box box, double pitch, double angle) {
    Affine turn = Affine.rotation(angle);
    Point along = turn.applyVector(new Point(1, 0));
    Point across = turn.applyVector(new Point(0, 1));
    double reach = new Point(box.width(), box.height()).norm() / 2 + pitch;
    Point centre = box.centre();
    double middle = Math.rint(centre.dot(across) / pitch);
    double start = pitch * (Math.rint(centre.dot(along) / pitch) - Math.ceil(reach / pitch));
    List<Path> rows = new ArrayList<>();
    int count = (int) Math.ceil(reach / pitch);
    for (int i = -count; i <= count; i++) {
      double level = (middle + i) * pitch;
      double from = start + (Math.floorMod((long) middle + i, 2) == 0 ? 0 : pitch / 2);
      Point first = along.times(from).plus(across.times(level));
      Point last = first.plus(along.times(2 * reach + 2 * pitch));
      rows.add(Path.polyline(List.of(first, last)));
    }
    return rows;
  }
}
