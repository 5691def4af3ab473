package org.lapmark.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Affine;
import org.lapmark.grade.Piece;
import org.lapmark.print.arrange.Arranged;
import org.lapmark.print.paper.Paper;
import org.lapmark.print.piece.PieceArt;
import org.lapmark.print.sheet.SheetPlan;
import org.lapmark.print.sheet.Tile;

class PinnedTest {
  private static final SheetPlanner PLANNER = SamplePatterns.planner();

  private static SheetPlan plan(List<Piece> pieces, Optional<Arranged> earlier) {
    return PLANNER.plan(SamplePatterns.pattern("M", pieces), Paper.A4, earlier);
  }

  private static Map<Integer, Affine> places(SheetPlan plan) {
    Map<Integer, Affine> places = new TreeMap<>();
    plan.pieces().forEach(placed -> places.put(placed.piece().number(), placed.placement()));
    return places;
  }

  private static void assertApart(SheetPlan plan) {
    List<PieceArt> art = plan.pieces().stream().map(PieceArt::of).toList();
    for (int i = 0; i < art.size(); i++) {
      for (int k = i + 1; k < art.size(); k++) {
        assertTrue(art.get(i).polygon().distance(art.get(k).polygon()) > 1.9, i + " and " + k);
      }
    }
  }

  private static List<Piece> pieces() {
    return new ArrayList<>(GeneratedPatterns.pattern(12).pieces());
  }

  @Test
  void anUnchangedPatternIsArrangedAlike() {
    SheetPlan first = plan(pieces(), Optional.empty());
    assertEquals(first, plan(pieces(), first.arranged()));
  }

  @Test
  void onlyThePieceThatGrewMoves() {
    SheetPlan first = plan(pieces(), Optional.empty());
    for (int changed : new int[] {3, 8, 14}) {
      List<Piece> pieces = pieces();
      Piece old = pieces.get(changed - 1);
      var box = old.shape().cuttingLine().path().bounds();
      pieces.set(
          changed - 1,
          SamplePatterns.rectangle(changed, old.name(), box.width() + 90, box.height() + 90));
      SheetPlan second = plan(pieces, first.arranged());
      Map<Integer, Affine> before = places(first);
      Map<Integer, Affine> after = places(second);
      assertNotEquals(before.remove(changed), after.remove(changed));
      assertEquals(before, after);
      assertApart(second);
    }
  }

  @Test
  void aPieceThatShrinksStaysAndARemovedOneLeavesItsPlaceFree() {
    SheetPlan first = plan(pieces(), Optional.empty());
    List<Piece> pieces = pieces();
    pieces.remove(10);
    SheetPlan second = plan(pieces, first.arranged());
    Map<Integer, Affine> before = places(first);
    before.remove(11);
    assertEquals(before, places(second));
    List<String> codes = first.tiles().stream().map(Tile::code).toList();
    assertTrue(second.tiles().stream().allMatch(tile -> codes.contains(tile.code())));
  }

  @Test
  void aNewPieceMovesNothing() {
    SheetPlan first = plan(pieces(), Optional.empty());
    List<Piece> pieces = pieces();
    pieces.add(SamplePatterns.rectangle(70, "Facing", 150, 200));
    SheetPlan second = plan(pieces, first.arranged());
    Map<Integer, Affine> after = places(second);
    after.remove(70);
    assertEquals(places(first), after);
    assertApart(second);
  }
}
