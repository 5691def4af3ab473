package org.lapmark.print.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PaperTest {
  @Test
  void papersHaveNamesOfTheirOwnAndMargins() {
    Set<String> names = new HashSet<>();
    for (Paper paper : Paper.ALL) {
      assertTrue(names.add(paper.id()), paper.id());
      assertTrue(paper.window().minX() > 0 && paper.window().maxX() < paper.width(), paper.id());
      assertTrue(paper.window().minY() > 0 && paper.window().maxY() < paper.height(), paper.id());
    }
  }

  @Test
  void whatIsMadeWhenNothingIsAskedForCanBeRead() {
    for (Paper paper : Paper.ALL) {
      assertTrue(!paper.usual() || paper.readable(), paper.id());
    }
  }

  /** A paper that is cut or corrected stays the kind of paper that it was. */
  @Test
  void cutAndCorrectedPapersAreFilledAlike() {
    for (Paper paper : Paper.ALL) {
      Correction measured = new Correction(179, 241);
      for (Paper other :
          List.of(
              paper.cut(250), paper.corrected(measured), paper.corrected(measured).asPrinted())) {
        assertEquals(paper.filling(), other.filling());
        assertEquals(paper.usual(), other.usual());
        assertEquals(paper.readable(), other.readable());
        assertFalse(other.equals(paper));
      }
    }
  }

  @Test
  void eachWayOfFillingIsReadAsItself() {
    Filling.Reader<Filling> reader =
        new Filling.Reader<>() {
          @Override
          public Filling pages() {
            return Filling.PAGES;
          }

          @Override
          public Filling sheets() {
            return Filling.SHEETS;
          }

          @Override
          public Filling roll() {
            return Filling.ROLL;
          }

          @Override
          public Filling picture() {
            return Filling.PICTURE;
          }
        };
    for (Filling filling : Filling.values()) {
      assertEquals(filling, filling.read(reader));
    }
  }
}
