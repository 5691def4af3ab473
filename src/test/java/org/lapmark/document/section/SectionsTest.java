package org.lapmark.document.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.document.Specimen;
import org.lapmark.document.template.Templates;
import org.lapmark.document.template.Words;

class SectionsTest {
  @Test
  void everySectionIsListedOnce() {
    TreeSet<String> made = new TreeSet<>();
    for (JavaClass type : new ClassFileImporter().importPackages(Section.class.getPackageName())) {
      if (type.isAssignableTo(Section.class) && !type.isInterface()) {
        made.add(type.getName());
      }
    }
    List<String> listed =
        Sections.ALL.stream().map(section -> section.getClass().getName()).toList();
    assertEquals(made, new TreeSet<>(listed));
    assertEquals(made.size(), listed.size());
    assertEquals(listed.size(), Sections.ALL.stream().map(Section::id).distinct().count());
  }

  @Test
  void everySectionHasATemplateAndAHeading() {
    Templates templates = Specimen.templates();
    Set<String> words = Words.of(templates, Locale.ENGLISH).messages().keySet();
    for (Section section : Sections.ALL) {
      assertTrue(words.contains(section.id() + ".title"), section.id());
      assertTrue(
          section.id().equals(PrintingSection.ID)
              || templates.files().containsKey("document/sections/" + section.id() + ".ftlh"),
          section.id());
    }
  }

  @Test
  void authorsCanReferToEverySectionButTheWalk() {
    Set<String> ids = new LinkedHashSet<>(Sections.ALL.stream().map(Section::id).toList());
    assertTrue(ids.containsAll(Sections.pages()));
    assertTrue(ids.removeAll(Sections.pages()));
    // The walk is there only when it is asked for.
    assertEquals(Set.of("walk"), ids);
  }
}
