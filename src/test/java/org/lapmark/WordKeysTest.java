package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessagePattern;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.lapmark.document.DocumentWriter;
import org.lapmark.publish.TemplateFolder;

/** Every word that the program or a template asks for is there, in British and in American. */
class WordKeysTest {
  private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*(.*?\\))");
  private static final Pattern QUOTED =
      Pattern.compile("\"([a-z][a-z-]*\\.[A-Za-z0-9.-]*)\"( \\+)?");
  private static final Pattern KEY = Pattern.compile("[a-z][a-z-]*(\\.(?!csv)[A-Za-z0-9-]+)+\\.?");

  @Test
  void everyWordAskedForIsThere() throws IOException {
    DocumentWriter writer = new DocumentWriter(TemplateFolder.bundled());
    Set<String> asked = new TreeSet<>();
    for (CompilationUnitTree unit : JavaSources.all()) {
      asked.addAll(ofProgram(unit, families(writer.wording(Locale.UK).messages().keySet())));
    }
    int ofProgram = asked.size();
    asked.addAll(ofTemplates());
    assertTrue(ofProgram > 150, "only " + ofProgram + " words asked for by the program");
    assertTrue(asked.size() > ofProgram + 150, "only " + asked.size() + " words asked for in all");
    for (Locale language : List.of(Locale.UK, Locale.US)) {
      Set<String> there = writer.wording(language).messages().keySet();
      Set<String> missing = new TreeSet<>(asked);
      missing.removeIf(
          key ->
              key.endsWith("*")
                  ? there.stream().anyMatch(one -> one.startsWith(key.replace("*", "")))
                  : there.contains(key));
      assertEquals(Set.of(), missing, language.toLanguageTag());
    }
  }

  /** Words that stand in for others are given what those are given. */
  @Test
  void overridingWordsTakeTheSameArguments() throws IOException {
    int overriding = 0;
    for (Path file : bundles("[a-z]+-[A-Z]+")) {
      Properties own = words(file);
      Properties base = new Properties();
      String language = file.getFileName().toString().replaceAll("-.*", "");
      for (Path one : bundles(language)) {
        base.putAll(words(one));
      }
      for (String key : own.stringPropertyNames()) {
        overriding++;
        assertTrue(base.containsKey(key), file + ": " + key);
        assertEquals(
            arguments(base.getProperty(key)), arguments(own.getProperty(key)), file + ": " + key);
      }
    }
    assertTrue(overriding > 20, "only " + overriding);
  }

  private static List<Path> bundles(String language) throws IOException {
    try (Stream<Path> walk = Files.walk(Path.of("templates", "words"))) {
      return walk.filter(file -> file.getFileName().toString().matches(language + "\\.properties"))
          .sorted()
          .toList();
    }
  }

  private static Properties words(Path file) throws IOException {
    Properties words = new Properties();
    try (Reader reader = Files.newBufferedReader(file)) {
      words.load(reader);
    }
    return words;
  }

  private static Set<String> arguments(String message) {
    Set<String> names = new TreeSet<>();
    MessagePattern pattern = new MessagePattern(message);
    for (int i = 0; i < pattern.countParts(); i++) {
      if (pattern.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
        names.add(pattern.getSubstring(pattern.getPart(i)));
      }
    }
    return names;
  }

  /** The first parts of keys, by which a text that is a key is known as one. */
  private static Set<String> families(Set<String> keys) {
    Set<String> families = new TreeSet<>();
    keys.forEach(key -> families.add(key.substring(0, key.indexOf('.'))));
    return families;
  }

  /** Keys, or the beginnings of keys with an asterisk. */
  private static Set<String> ofProgram(CompilationUnitTree unit, Set<String> families) {
    Set<String> asked = new TreeSet<>();
    boolean figures = unit.getPackageName().toString().endsWith(".figure");
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String method = call.getMethodSelect().toString();
        String name = method.substring(method.lastIndexOf('.') + 1);
        boolean onWords =
            call.getMethodSelect() instanceof MemberSelectTree select
                && select.getExpression().toString().matches("(.*\\.)?wording(\\(\\))?");
        if (!call.getArguments().isEmpty()) {
          ExpressionTree first = call.getArguments().get(0);
          if (figures && name.equals("word") && call.getArguments().size() != 3) {
            add(first, "figure.");
          } else if (onWords && name.equals("text")) {
            add(first, "");
          }
        }
        return super.visitMethodInvocation(call, nothing);
      }

      private void add(ExpressionTree key, String before) {
        for (JavaSources.Literal literal : JavaSources.literals(key)) {
          asked.add(before + literal.text() + (literal.whole() ? "" : "*"));
        }
      }

      @Override
      public Void visitLiteral(LiteralTree literal, Void nothing) {
        if (literal.getValue() instanceof String text
            && KEY.matcher(text).matches()
            && families.contains(text.substring(0, text.indexOf('.')))) {
          asked.add(text + (text.endsWith(".") ? "*" : ""));
        }
        return null;
      }
    }.scan(unit, null);
    return asked;
  }

  private static Set<String> ofTemplates() throws IOException {
    Set<String> asked = new TreeSet<>();
    List<Path> files;
    try (Stream<Path> walk = Files.walk(Path.of("templates"))) {
      files = walk.filter(file -> file.toString().endsWith(".ftlh")).sorted().toList();
    }
    for (Path file : files) {
      Matcher said = SAID.matcher(Files.readString(file));
      while (said.find()) {
        // Keys stand before the arguments, which are a map.
        String key = said.group(1).replaceAll(",? *\\{.*", "");
        Matcher quoted = QUOTED.matcher(key);
        while (quoted.find()) {
          String text = quoted.group(1);
          boolean follows =
              quoted.start() > 0 && key.substring(0, quoted.start()).matches(".*\\+ ");
          if (!follows) {
            asked.add(text + (quoted.group(2) == null ? "" : "*"));
          }
        }
      }
    }
    return asked;
  }
}
