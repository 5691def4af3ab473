package org.lapmark.source.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
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
}
