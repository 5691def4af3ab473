package org.lapmark.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.figure.stage.Picture;
import org.lapmark.figure.stage.PictureKind;

/** Every kind of picture can be stated, and what is drawn of one knows numbers alone. */
class KindsTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains("/test-classes/"))
          .importPackages("org.lapmark.figure");

  @Test
  void everyKindIsListedOnce() throws ReflectiveOperationException {
    List<PictureKind> kinds = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      if (!type.isInterface() && type.isAssignableTo(Picture.class)) {
        Field kind = Class.forName(type.getName()).getDeclaredField("KIND");
        kind.setAccessible(true);
        kinds.add((PictureKind) kind.get(null));
      }
    }
    assertFalse(kinds.isEmpty());
    assertEquals(new TreeSet<>(keys(kinds)), new TreeSet<>(keys(FigureSource.KINDS)));
    assertEquals(kinds.size(), FigureSource.KINDS.size());
    assertEquals(Set.copyOf(kinds), Set.copyOf(FigureSource.KINDS));
  }

  private static List<String> keys(List<PictureKind> kinds) {
    return kinds.stream().<String>map(kind -> kind.key().name()).toList();
  }

  @Test
  void whatIsDrawnKnowsNoFormulaAndNoPlaceInAFile() {
    DescribedPredicate<JavaClass> drawn =
        DescribedPredicate.describe(
            "are drawn",
            type ->
                type.getPackageName().endsWith(".ink")
                    || type.getPackageName().endsWith(".scene")
                    || draws(type)
                    || type.getEnclosingClass().filter(KindsTest::draws).isPresent());
    ArchRuleDefinition.noClasses()
        .that(drawn)
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage(
            "org.lapmark.measure..",
            "org.lapmark.finding..",
            "org.lapmark.source..",
            "org.lapmark.grade..",
            "org.lapmark.figure.read..",
            "org.lapmark.figure.stage..")
        .check(CLASSES);
  }

  private static boolean draws(JavaClass type) {
    // What chooses the scale for scenes stands above them.
    return !type.getPackageName().equals("org.lapmark.figure")
        && type.getMethods().stream().anyMatch(method -> method.getName().equals("draw"));
  }
}
