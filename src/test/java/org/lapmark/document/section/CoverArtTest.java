package org.lapmark.document.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.lapmark.document.Specimen;
import org.lapmark.drawing.Drawing;
import org.lapmark.drawing.Item;
import org.lapmark.geometry.Box;
import org.lapmark.geometry.Path;

class CoverArtTest {
  @Test
  void standsAllPiecesApartOnOneGroundLine() {
    Drawing art = CoverArt.of(Specimen.pieces(), 162, 88).orElseThrow();
    assertTrue(art.height() <= 88 + 1e-9);
    Box whole = Box.at(0, 0, art.width(), art.height());
    List<Box> boxes = new ArrayList<>();
    List<String> numbers = new ArrayList<>();
    for (Item item : art.items()) {
      if (item instanceof Item.Group group) {
        Path cutting = ((Item.Shape) group.items().get(0)).paths().get(0);
        boxes.add(cutting.transformed(group.map()).bounds());
      } else if (item instanceof Item.Lettering lettering) {
        numbers.add(lettering.text());
      }
    }
    assertEquals(List.of("1", "4", "7"), numbers);
    for (int i = 0; i < boxes.size(); i++) {
      assertTrue(whole.contains(boxes.get(i)), boxes.get(i).toString());
      assertEquals(boxes.get(0).maxY(), boxes.get(i).maxY(), 1e-9);
      for (int j = 0; j < i; j++) {
        assertTrue(!boxes.get(i).expanded(1).overlaps(boxes.get(j)));
      }
    }
    // One scale for all: widths 320, 240 and 35 mm over the cutting lines.
    assertEquals(320.0 / 240, boxes.get(0).width() / boxes.get(1).width(), 1e-9);
  }

  @Test
  void leavesTheCoverBareWhenThereIsNothingOrTooMuchToShow() {
    assertTrue(CoverArt.of(List.of(), 162, 88).isEmpty());
    assertTrue(CoverArt.of(Collections.nCopies(60, Specimen.pieces().get(0)), 162, 88).isEmpty());
  }
}
