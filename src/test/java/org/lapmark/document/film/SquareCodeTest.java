package org.lapmark.document.film;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;

/** Codes of squares are read back from their outlines. */
class SquareCodeTest {
  private static final int PIXELS = 240;

  @ParameterizedTest
  @ValueSource(ints = {0, 20, 90, 290})
  void aCodeSaysTheAddress(int length) throws Exception {
    String address =
        "https://films.example/" + "sallow-case".repeat(30).substring(0, length) + "#t=200";
    Drawing code = SquareCode.of(address);
    assertTrue(code.width() >= SquareCode.SMALLEST && code.width() == code.height());
    List<Path> paths = ((Item.Shape) code.items().get(0)).paths();
    double margin = paths.stream().mapToDouble(path -> path.bounds().minX()).min().orElseThrow();
    assertTrue(margin >= SquareCode.MARGIN * SquareCode.SMALLEST_SQUARE - 0.1, "" + margin);
    int[] pixels = new int[PIXELS * PIXELS];
    for (int y = 0; y < PIXELS; y++) {
      for (int x = 0; x < PIXELS; x++) {
        Point point = new Point((x + .5) * code.width() / PIXELS, (y + .5) * code.width() / PIXELS);
        long inside =
            paths.stream()
                .filter(path -> path.bounds().contains(point) && path.encloses(point))
                .count();
        pixels[y * PIXELS + x] = inside % 2 == 1 ? 0 : 0xffffff;
      }
    }
    BinaryBitmap seen =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(PIXELS, PIXELS, pixels)));
    assertEquals(address, new QRCodeReader().decode(seen).getText());
  }
}
