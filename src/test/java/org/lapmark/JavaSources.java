package org.lapmark;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.SwitchExpressionTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The program's own sources, parsed, for tests of what they say. */
final class JavaSources {
  private JavaSources() {}

  static List<CompilationUnitTree> all() throws IOException {
    List<Path> files;
    try (Stream<Path> walk = Files.walk(Path.of("src", "main", "java"))) {
      files = walk.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    List<CompilationUnitTree> units = new ArrayList<>();
    try (StandardJavaFileManager manager =
        compiler.getStandardFileManager(null, Locale.ROOT, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null, manager, null, List.of(), null, manager.getJavaFileObjectsFromPaths(files));
      task.parse().forEach(units::add);
    }
    return units;
  }

  /** A text in the sources. */
  record Literal(String text, boolean whole) {}

  /** The texts that an expression may come to, or begin with where more is appended to them. */
  static List<Literal> literals(ExpressionTree expression) {
    List<Literal> found = new ArrayList<>();
    collect(expression, true, found);
    return found;
  }

  private static void collect(Tree tree, boolean whole, List<Literal> found) {
    if (tree instanceof LiteralTree literal) {
      if (literal.getValue() instanceof String text) {
        found.add(new Literal(text, whole));
      }
    } else if (tree instanceof ConditionalExpressionTree choice) {
      collect(choice.getTrueExpression(), whole, found);
      collect(choice.getFalseExpression(), whole, found);
    } else if (tree instanceof ParenthesizedTree inner) {
      collect(inner.getExpression(), whole, found);
    } else if (tree instanceof BinaryTree sum && sum.getKind() == Tree.Kind.PLUS) {
      collect(sum.getLeftOperand(), false, found);
    } else if (tree instanceof SwitchExpressionTree choice) {
      new TreeScanner<Void, Void>() {
        @Override
        public Void visitCase(com.sun.source.tree.CaseTree one, Void nothing) {
          if (one.getBody() instanceof ExpressionTree value) {
            collect(value, whole, found);
          }
          return null;
        }
      }.scan(choice, null);
    }
  }

  static String place(CompilationUnitTree unit) {
    String name = unit.getSourceFile().getName();
    return name.substring(name.lastIndexOf('/') + 1);
  }
}
