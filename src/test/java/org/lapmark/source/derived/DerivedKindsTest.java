package org.lapmark.source.derived;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class DerivedKindsTest {
  /** What isn't listed can't be written in a pattern. */
  @Test
  void everyDerivationIsListed() throws ReflectiveOperationException {
    List<DerivedKind> stated = new ArrayList<>();
    for (JavaClass type : new ClassFileImporter().importPackages("org.lapmark")) {
      if (type.isAssignableTo(DerivedSource.class) && !type.isInterface()) {
        List<DerivedKind> own = kinds(type);
        assertFalse(own.isEmpty(), type.getName() + " has no key");
        stated.addAll(own);
      }
    }
    assertTrue(DerivedKinds.ALL.containsAll(stated));
    assertEquals(DerivedKinds.ALL.size(), stated.size());
    assertEquals(new LinkedHashSet<>(DerivedKinds.ALL).size(), DerivedKinds.ALL.size());
  }

  private static List<DerivedKind> kinds(JavaClass type) throws ReflectiveOperationException {
    List<DerivedKind> kinds = new ArrayList<>();
    for (JavaField field : type.getFields()) {
      if (field.getModifiers().contains(JavaModifier.STATIC)
          && field.getRawType().isEquivalentTo(DerivedKind.class)) {
        kinds.add((DerivedKind) field.reflect().get(null));
      }
    }
    return kinds;
  }
}
