package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessageFormat;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.FindingCode;

/** Every kind of finding has its words, and every word its kind. */
public class FindingWordsTest {
  @Test
  void idsAreUniqueAndSpelledAlike() throws Exception {
    Map<String, FindingCode> seen = new LinkedHashMap<>();
    for (FindingCode code : codes()) {
      assertTrue(code.id().matches("[a-z][a-z0-9]*(-[a-z0-9]+)*"), code.id());
      assertEquals(null, seen.put(code.id(), code), code.id() + " stands for two kinds");
      assertNotNull(code.severity(), code.id());
    }
    assertFalse(seen.isEmpty());
  }

  @Test
  void everyKindSaysWhatIsWrongAndWhatToDo() throws Exception {
    for (FindingCode code : codes()) {
      for (String part : List.of("message", "hint")) {
        String key = code.id() + "." + part;
        String pattern = words(code.getClass()).getProperty(key);
        assertNotNull(pattern, key);
        assertFalse(pattern.isBlank(), key);
        MessageFormat format = new MessageFormat(pattern, Locale.ENGLISH);
        assertTrue(format.getArgumentNames().isEmpty() || format.usesNamedArguments(), key);
        // A lone apostrophe before a brace hides an argument.
        assertFalse(pattern.contains("'{") && !pattern.contains("}'"), key);
        // A space before a number's form would be printed before the number.
        assertFalse(pattern.matches("(?s).*, *number, +[^}]*}.*"), key);
      }
    }
  }

  @Test
  void everyWordHasItsKind() throws Exception {
    Map<String, Set<String>> expected = new LinkedHashMap<>();
    Map<String, Set<String>> found = new LinkedHashMap<>();
    for (FindingCode code : codes()) {
      String home = code.getClass().getPackageName();
      expected.computeIfAbsent(home, any -> new TreeSet<>()).add(code.id() + ".hint");
      expected.get(home).add(code.id() + ".message");
      found.put(home, new TreeSet<>(words(code.getClass()).stringPropertyNames()));
    }
    assertEquals(expected, found);
  }

  public static List<FindingCode> codes() throws ClassNotFoundException {
    List<FindingCode> codes = new ArrayList<>();
    for (JavaClass type :
        new ClassFileImporter()
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("org.lapmark")) {
      if (type.isEnum() && type.isAssignableTo(FindingCode.class)) {
        for (Object constant : Class.forName(type.getName()).getEnumConstants()) {
          codes.add((FindingCode) constant);
        }
      }
    }
    return codes;
  }

  public static Properties words(Class<?> code) throws IOException {
    Properties words = new Properties();
    try (InputStream stream = code.getResourceAsStream("findings.properties")) {
      assertNotNull(stream, code.getName());
      words.load(new InputStreamReader(stream, StandardCharsets.UTF_8));
    }
    return words;
  }
}
