package org.lapmark;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The rules of the house that a compiler doesn't know. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ArchitectureTest {
  /**
   * From the top; packages on one floor don't import each other. One inside another is on its
   * floor.
   */
  private static final List<List<String>> FLOORS =
      List.of(
          List.of("cli", "server"),
          List.of("publish"),
          List.of("check", "document"),
          List.of("edition", "review"),
          List.of("figure"),
          List.of("print", "lay", "assembly"),
          List.of("text"),
          List.of("grade"),
          List.of("source"),
          List.of("seam"),
          List.of("panel"),
          List.of("drawing", "packing", "measure"),
          List.of("geometry", "memory", "wording", "finding"));

  private static final Set<String> MATHS =
      Set.of(
          "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp",
          "expm1", "log", "log10", "log1p", "pow", "cbrt", "hypot");

  private JavaClasses classes;

  @BeforeAll
  void read() {
    classes =
        new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.lapmark");
  }

  @Test
  void everyPackageHasItsFloor() {
    Set<String> known = new TreeSet<>();
    FLOORS.forEach(known::addAll);
    Set<String> unknown = new TreeSet<>();
    classes.forEach(type -> unknown.add(floorName(type)));
    unknown.removeAll(known);
    assertEquals(new TreeSet<String>(), unknown);
  }

  @Test
  void importsGoDownwardOnly() {
    List<String> wrong = new ArrayList<>();
    int checked = 0;
    for (JavaClass type : classes) {
      for (JavaClass target :
          type.getDirectDependenciesFromSelf().stream()
              .map(dependency -> dependency.getTargetClass().getBaseComponentType())
              .filter(other -> other.getPackageName().startsWith("org.lapmark"))
              .distinct()
              .toList()) {
        if (!floorName(type).equals(floorName(target))) {
          checked++;
          if (floor(target) <= floor(type)) {
            wrong.add(type.getName() + " imports " + target.getName());
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(checked > 0);
  }

  @Test
  void packagesHaveNoCycles() {
    slices().matching("org.lapmark.(*)..").should().beFreeOfCycles().check(classes);
    // A package and those inside it are packages like others.
    slices().matching("org.lapmark.(**)").should().beFreeOfCycles().check(classes);
  }

  /** A package inside another stands on its floor; the packages of a floor have their own order. */
  @Test
  void packagesInsidePackagesHaveNoCycles() {
    for (List<String> floor : FLOORS) {
      for (String name : floor) {
        slices()
            .matching("org.lapmark.(" + name + "..)")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true)
            .check(classes);
      }
    }
  }

  @Test
  void onlySourcePublishAndCliTouchFiles() {
    noClasses()
        .that(outside("source", "publish", "cli"))
        .should()
        .dependOnClassesThat(
            describe(
                "work on files",
                (JavaClass type) ->
                    type.getPackageName().startsWith("java.nio.file")
                        || type.getPackageName().startsWith("java.nio.channels")
                        || type.getPackageName().startsWith("java.net")
                        || Set.of(
                                "java.io.File",
                                "java.io.FileInputStream",
                                "java.io.FileOutputStream",
                                "java.io.FileReader",
                                "java.io.FileWriter",
                                "java.io.RandomAccessFile")
                            .contains(type.getName())))
        .check(classes);
  }

  @Test
  void onlySourcePublishAndCliAskTheEnvironment() {
    noClasses()
        .that(outside("source", "publish", "cli"))
        .should(
            call(
                "the environment",
                access ->
                    on(access, "java.lang.System")
                        && Set.of(
                                "getenv",
                                "getProperty",
                                "getProperties",
                                "console",
                                "lineSeparator")
                            .contains(access.getName())))
        .check(classes);
  }

  @Test
  void nobodyButPublishAndCliAsksTheClock() {
    noClasses()
        .that(outside("publish", "cli"))
        .should(
            call(
                "the clock",
                access ->
                    on(access, "java.lang.System")
                            && Set.of("currentTimeMillis", "nanoTime").contains(access.getName())
                        || access.getTargetOwner().getPackageName().startsWith("java.time")
                            && (access.getName().equals("now")
                                || on(access, "java.time.Clock")
                                    && access.getName().startsWith("system"))
                        || on(access, "java.util.Date") && takes(access, 0)
                        || on(access, "java.util.Calendar")
                            && access.getName().equals("getInstance")
                        || on(access, "java.util.GregorianCalendar") && takes(access, 0)))
        .check(classes);
  }

  @Test
  void nobodyThrowsDice() {
    noClasses()
        .should(
            call(
                "randomness without a seed",
                access ->
                    on(access, "java.lang.Math") && access.getName().equals("random")
                        || on(access, "java.util.Random")
                            && access.getName().equals("<init>")
                            && takes(access, 0)
                        || on(access, "java.util.UUID") && access.getName().equals("randomUUID")
                        || on(access, "java.util.concurrent.ThreadLocalRandom")
                        || on(access, "java.security.SecureRandom")))
        .check(classes);
  }

  @Test
  void noOrderDependsOnHashes() {
    noClasses()
        .should(
            call(
                "collections whose order changes from run to run",
                access ->
                    on(access, "java.util.Set")
                            && Set.of("of", "copyOf").contains(access.getName())
                            && !takes(access, 0)
                        || on(access, "java.util.Map")
                            && (Set.of("copyOf", "ofEntries").contains(access.getName())
                                || access.getName().equals("of")
                                    && parameters(access) > 2
                                    && !wordsAMessage(access))
                        || on(access, "java.util.stream.Collectors")
                            && Set.of("toUnmodifiableSet", "toUnmodifiableMap", "toSet")
                                .contains(access.getName())
                        || on(access, "java.util.stream.Collectors")
                            && Set.of("toMap", "groupingBy", "partitioningBy")
                                .contains(access.getName())
                            && parameters(access) < (access.getName().equals("toMap") ? 4 : 3)
                        || on(access, "java.util.IdentityHashMap")
                        || on(access, "java.lang.System")
                            && access.getName().equals("identityHashCode")))
        .check(classes);
  }

  @Test
  void trigonometryIsStrict() {
    noClasses()
        .should(
            call(
                "functions whose last bit depends on the machine",
                access -> on(access, "java.lang.Math") && MATHS.contains(access.getName())))
        .check(classes);
  }

  @Test
  void thereIsNoStaticMutableState() {
    fields()
        .that()
        .areStatic()
        .should()
        .beFinal()
        .andShould(
            new ArchCondition<JavaField>("not be able to change") {
              @Override
              public void check(JavaField field, ConditionEvents events) {
                boolean changes =
                    Set.of(
                                "java.util.ArrayList",
                                "java.util.HashMap",
                                "java.util.LinkedHashMap",
                                "java.util.TreeMap",
                                "java.util.HashSet",
                                "java.util.concurrent.ConcurrentHashMap",
                                "java.lang.ThreadLocal",
                                "java.lang.StringBuilder")
                            .contains(field.getRawType().getName())
                        || field.getRawType().getName().startsWith("java.util.concurrent.atomic.");
                events.add(new SimpleConditionEvent(field, !changes, field.getFullName()));
              }
            })
        .check(classes);
  }

  @Test
  void librariesStayWhereTheyAreWrapped() {
    keep(
        "document",
        "org.apache.pdfbox..",
        "com.openhtmltopdf..",
        "freemarker..",
        "com.google.zxing..",
        "org.apache.fontbox..",
        "org.apache.xmpbox..");
    keep("cli", "picocli..");
    keep("source", "org.snakeyaml..", "org.apache.commons.csv..", "org.apache.batik..");
  }

  @Test
  void namesAreOfTheField() {
    noClasses().should().haveNameMatching(".*(Util|Helper|Manager)s?(\\$.*)?").check(classes);
    noClasses().should().resideInAnyPackage("..util..", "..common..", "..misc..").check(classes);
  }

  /** Arguments of a message are looked up by name, so that their order doesn't matter. */
  private static boolean wordsAMessage(JavaAccess<?> access) {
    return access.getOrigin().getMethodCallsFromSelf().stream()
        .anyMatch(call -> on(call, "org.lapmark.wording.Wording") && call.getName().equals("text"));
  }

  private void keep(String home, String... libraries) {
    noClasses()
        .that(outside(home))
        .should()
        .dependOnClassesThat(resideInAnyPackage(libraries))
        .check(classes);
  }

  private static DescribedPredicate<JavaClass> outside(String... homes) {
    return describe(
        "are outside " + String.join(", ", homes),
        type -> !List.of(homes).contains(floorName(type)));
  }

  private static ArchCondition<JavaClass> call(String what, Predicate<JavaAccess<?>> forbidden) {
    return new ArchCondition<>("call " + what) {
      @Override
      public void check(JavaClass type, ConditionEvents events) {
        for (JavaAccess<?> access : type.getAccessesFromSelf()) {
          events.add(
              new SimpleConditionEvent(type, forbidden.test(access), access.getDescription()));
        }
        type.getMethodReferencesFromSelf()
            .forEach(
                reference ->
                    events.add(
                        new SimpleConditionEvent(
                            type, forbidden.test(reference), reference.getDescription())));
      }
    };
  }

  private static boolean on(JavaAccess<?> access, String owner) {
    return access.getTargetOwner().getName().equals(owner);
  }

  private static boolean takes(JavaAccess<?> access, int count) {
    return parameters(access) == count;
  }

  private static int parameters(JavaAccess<?> access) {
    return access.getTarget() instanceof CodeUnitAccessTarget unit
        ? unit.getRawParameterTypes().size()
        : -1;
  }

  private static String floorName(JavaClass type) {
    String[] names = type.getPackageName().split("\\.");
    return names.length < 3 ? "" : names[2];
  }

  private static int floor(JavaClass type) {
    for (int i = 0; i < FLOORS.size(); i++) {
      if (FLOORS.get(i).contains(floorName(type))) {
        return i;
      }
    }
    throw new AssertionError(type.getName() + " has no floor");
  }
}
