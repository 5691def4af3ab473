package org.lapmark.publish.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.publish.request.Extra;
import org.lapmark.publish.request.Request;

class ProductsTest {
  @Test
  void everyProductIsListed() {
    TreeSet<String> made = new TreeSet<>();
    for (JavaClass type : new ClassFileImporter().importPackages("org.lapmark.publish")) {
      if (type.isAssignableTo(Product.class)
          && !type.getModifiers().contains(JavaModifier.ABSTRACT)) {
        made.add(type.getName());
      }
    }
    TreeSet<String> listed = new TreeSet<>();
    Products.ALL.forEach(product -> listed.add(product.getClass().getName()));
    assertEquals(made, listed);
    assertEquals(made.size(), Products.ALL.size());
  }

  @Test
  void noTwoShareAKindOrAnOption() {
    assertEquals(Products.ALL.size(), Products.ALL.stream().map(Product::kind).distinct().count());
    assertEquals(
        Products.extras().size(), Products.extras().stream().map(Extra::option).distinct().count());
  }

  @Test
  void whatIsAskedForIsMadeAndNothingElse() {
    Request usual = new Request(List.of(), List.of(), Path.of(""));
    assertEquals(
        List.of("companion", "all-sizes", "cut-file", "instructions", "complete", "tiles"),
        Products.wanted(usual).stream().map(Product::kind).toList());
    for (Product product : Products.ALL) {
      product
          .extra()
          .ifPresent(extra -> assertTrue(Products.wanted(usual.with(extra)).contains(product)));
    }
    Request alone =
        new Request(
            List.of(),
            List.of(),
            usual.choices(),
            usual.output(),
            usual.presentation(),
            new TreeSet<>(),
            List.of("1"));
    assertEquals(List.of("tiles"), Products.wanted(alone).stream().map(Product::kind).toList());
  }
}
