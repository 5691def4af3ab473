package org.lapmark.source.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.geometry.Path;
import org.lapmark.geometry.Point;
import org.lapmark.panel.Mark;
import org.lapmark.panel.Panel;
import org.lapmark.panel.PanelBuilder;
import org.lapmark.source.drawing.DrawnMark;
import org.lapmark.source.drawing.Role;

class MarkKindsTest {
  /** What isn't listed can't be written in a pattern. */
  @Test
  void everyKindIsListed() {
    Set<String> kinds = new TreeSet<>();
    for (JavaClass type : new ClassFileImporter().importPackages("org.lapmark")) {
      if (type.isAssignableTo(MarkKind.class)
          && !type.getModifiers().contains(JavaModifier.ABSTRACT)) {
        kinds.add(type.getName());
      }
    }
    Set<String> listed = new TreeSet<>();
    MarkKinds.ALL.forEach(kind -> listed.add(kind.getClass().getName()));
    assertEquals(kinds, listed);
    assertEquals(MarkKinds.ALL.size(), listed.size());
  }

  @Test
  void noTwoKindsAreDrawnUnderOneId() {
    Set<Role> roles = new TreeSet<>();
    Set<String> words = new TreeSet<>();
    for (MarkKind kind : MarkKinds.ALL) {
      roles.add(kind.role());
      words.add(kind.word());
    }
    assertEquals(MarkKinds.ALL.size(), roles.size());
    assertEquals(MarkKinds.ALL.size(), words.size());
  }

  /** By its word a mark on a panel is looked up in the drawing. */
  @Test
  void whatIsMadeIsCalledLikeItsKind() {
    Panel panel = PanelBuilder.rectangle("front", 100, 100, false);
    Path legs = Path.polyline(List.of(new Point(40, 0), new Point(50, 40), new Point(60, 0)));
    DrawnMark drawn = new DrawnMark("one", legs.start(), legs);
    for (MarkKind kind : MarkKinds.ALL) {
      for (Mark mark : kind.drawn(List.of(drawn), List.of(), panel, null)) {
        assertEquals(kind.word(), mark.kindName());
        assertEquals(kind.role().id("one"), MarkKinds.id(mark));
      }
      assertEquals(
          kind.unstated().isPresent() ? 0 : 1,
          kind.drawn(List.of(drawn), List.of(), panel, null).size());
    }
  }
}
