package org.lapmark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.ibm.icu.text.MessagePattern;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.lapmark.finding.FindingCode;

/**
 * Wherever a finding is made, it gets what its message and hint name. Read from the sources: what a
 * call names itself, and what the methods it goes through add.
 */
class FindingArgumentsTest {
  /** What {@code PanelFactory} adds to whatever an operation on a panel says. */
  private static final Set<String> OF_PANELS = Set.of("size");

  private final Map<String, FindingCode> codes = new LinkedHashMap<>();
  private final Map<String, Set<String>> texts = new TreeMap<>();
  private final Map<String, Set<String>> onward = new TreeMap<>();
  private final List<Call> calls = new ArrayList<>();

  /** A call that hands a code on, with the names of arguments that stand in it. */
  private record Call(String file, String code, String method, Set<String> names) {}

  @Test
  void everyCallStatesWhatItsMessageNames() throws Exception {
    for (FindingCode code : FindingWordsTest.codes()) {
      codes.put(code.getClass().getSimpleName() + "." + ((Enum<?>) code).name(), code);
    }
    for (CompilationUnitTree unit : JavaSources.all()) {
      scan(unit);
    }
    Set<String> called = new TreeSet<>();
    List<String> wrong = new ArrayList<>();
    for (Call call : calls) {
      called.add(call.code);
      Set<String> known = new TreeSet<>(call.names);
      known.addAll(added(call.file, call.method));
      for (String way : List.of(call.file + "." + call.method, call.method)) {
        for (String next : onward.getOrDefault(way, Set.of())) {
          known.addAll(added(call.file, next));
        }
      }
      if (call.code.startsWith("PanelCode.")) {
        known.addAll(OF_PANELS);
      }
      Set<String> missing = new TreeSet<>(named(codes.get(call.code)));
      missing.removeAll(known);
      if (!missing.isEmpty()) {
        wrong.add(call.file + ": " + call.code + " by " + call.method + " lacks " + missing);
      }
    }
    assertEquals("", String.join("\n", wrong));
    // Some codes reach their call in a variable.
    assertTrue(called.size() > codes.size() * 3 / 4, called.size() + " of " + codes.size());
  }

  /**
   * What a method adds to the names that it is given: that of the file, or else any of its name.
   */
  private Set<String> added(String file, String method) {
    return texts.getOrDefault(file + "." + method, texts.getOrDefault(method, Set.of()));
  }

  /** The arguments that message and hint of a code name, at whatever depth. */
  private static Set<String> named(FindingCode code) throws Exception {
    Set<String> names = new TreeSet<>();
    for (String part : List.of("message", "hint")) {
      String text = FindingWordsTest.words(code.getClass()).getProperty(code.id() + "." + part);
      MessagePattern pattern = new MessagePattern(text);
      for (int i = 0; i < pattern.countParts(); i++) {
        if (pattern.getPartType(i) == MessagePattern.Part.Type.ARG_NAME) {
          names.add(pattern.getSubstring(pattern.getPart(i)));
        }
      }
    }
    return names;
  }

  private void scan(CompilationUnitTree unit) {
    String file = JavaSources.place(unit).replace(".java", "");
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethod(MethodTree method, Void nothing) {
        // What a method that is handed a code names, for whoever calls it.
        if (method.getParameters().stream()
            .anyMatch(parameter -> parameter.getType().toString().endsWith("Code"))) {
          Set<String> words = words(method);
          for (String owner : List.of("", file + ".")) {
            texts.computeIfAbsent(owner + method.getName(), any -> new TreeSet<>()).addAll(words);
          }
          onward
              .computeIfAbsent(file + "." + method.getName(), any -> new TreeSet<>())
              .addAll(called(method));
        }
        return super.visitMethod(method, nothing);
      }

      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        String code = code(call);
        // A code that is wrapped is stated where it is taken out again.
        if (code != null && !method(call).equals("Optional.of")) {
          Set<String> names = new TreeSet<>();
          call.getArguments().forEach(argument -> names.addAll(literal(argument)));
          calls.add(new Call(file, code, method(call), names));
        }
        return super.visitMethodInvocation(call, nothing);
      }
    }.scan(unit, null);
  }

  private static Set<String> literal(ExpressionTree argument) {
    return argument instanceof LiteralTree literal && literal.getValue() instanceof String text
        ? Set.of(text)
        : Set.of();
  }

  private static Set<String> words(MethodTree method) {
    Set<String> words = new TreeSet<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitLiteral(LiteralTree literal, Void nothing) {
        if (literal.getValue() instanceof String text) {
          words.add(text);
        }
        return null;
      }
    }.scan(method, null);
    return words;
  }

  private static Set<String> called(MethodTree method) {
    Set<String> called = new TreeSet<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitMethodInvocation(MethodInvocationTree call, Void nothing) {
        called.add(method(call));
        return super.visitMethodInvocation(call, nothing);
      }
    }.scan(method, null);
    return called;
  }

  private String code(MethodInvocationTree call) {
    List<ExpressionTree> candidates = new ArrayList<>(call.getArguments());
    if (call.getMethodSelect() instanceof MemberSelectTree select
        && select.getIdentifier().contentEquals("exception")) {
      candidates.add(select.getExpression());
    }
    return candidates.stream()
        .filter(MemberSelectTree.class::isInstance)
        .map(Object::toString)
        .filter(codes::containsKey)
        .findFirst()
        .orElse(null);
  }

  /** How the called method is known: with its class, if that is named. */
  private static String method(MethodInvocationTree call) {
    if (call.getMethodSelect() instanceof MemberSelectTree select) {
      String owner = select.getExpression().toString();
      return Character.isUpperCase(owner.charAt(0))
          ? owner + "." + select.getIdentifier()
          : select.getIdentifier().toString();
    }
    return ((IdentifierTree) call.getMethodSelect()).getName().toString();
  }
}
