package org.bagwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LiteralTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePathScanner;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Who compares two numbers more loosely than their last digits says why: in a comment of the test, before or at the check. */
@Tag("regression")
class TolerancesTest {
    /** Up to here a tolerance is for rounding. */
    private static final double ROUNDING = 1e-6;

    private final List<String> unsaid = new ArrayList<>();
    private int loose;

    @Test
    void looseTolerance_hasItsReason() throws IOException {
        List<Path> files;
        try (Stream<Path> walk = Files.walk(Path.of("src/test/java"))) {
            files = walk.filter(file -> file.toString().endsWith(".java")).toList();
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask)
                    compiler.getTask(null, manager, null, null, null, manager.getJavaFileObjectsFromPaths(files));
            DocTrees trees = DocTrees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new Checks(
                                unit,
                                trees,
                                unit.getSourceFile().getCharContent(true).toString())
                        .scan(unit, null);
            }
        }
        assertEquals(List.of(), unsaid);
        assertTrue(loose > 100, "loose tolerances found: " + loose);
    }

    /** The checks of one file. */
    private final class Checks extends TreePathScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final DocTrees trees;
        private final String source;
        private final Map<String, Boolean> constantsSaid = new HashMap<>();
        private String method = "";
        private long methodStart;
        private boolean methodSaid;

        Checks(CompilationUnitTree unit, DocTrees trees, String source) {
            this.unit = unit;
            this.trees = trees;
            this.source = source;
        }

        @Override
        public Void visitMethod(MethodTree node, Void none) {
            method = node.getName().toString();
            methodStart = start(node);
            methodSaid = trees.getDocComment(getCurrentPath()) != null;
            return super.visitMethod(node, null);
        }

        /** A number with a name of its own has its reason at its name. */
        @Override
        public Void visitVariable(VariableTree node, Void none) {
            if (node.getInitializer() instanceof LiteralTree number && isLoose(number)) {
                constantsSaid.put(node.getName().toString(), trees.getDocComment(getCurrentPath()) != null);
            }
            return super.visitVariable(node, null);
        }

        @Override
        public Void visitMethodInvocation(MethodInvocationTree node, Void none) {
            List<? extends ExpressionTree> arguments = node.getArguments();
            if (node.getMethodSelect().toString().matches("(Assertions\\.)?assert(Array)?Equals")
                    && arguments.size() > 2) {
                check(node, arguments.get(2));
            }
            return super.visitMethodInvocation(node, null);
        }

        private void check(Tree call, ExpressionTree tolerance) {
            boolean named = tolerance instanceof IdentifierTree && constantsSaid.containsKey(tolerance.toString());
            if (named || isLoose(tolerance)) {
                loose++;
                boolean said = methodSaid
                        || (named && constantsSaid.get(tolerance.toString()))
                        || hasComment(source.substring((int) methodStart, (int) end(call)));
                if (!said) {
                    unsaid.add(
                            Path.of(unit.getSourceFile().getName()).getFileName() + ", " + method + ": " + tolerance);
                }
            }
        }

        private static boolean isLoose(ExpressionTree tolerance) {
            return tolerance instanceof LiteralTree literal
                    && literal.getValue() instanceof Number number
                    && number.doubleValue() > ROUNDING;
        }

        private static boolean hasComment(String code) {
            String withoutTexts = code.replaceAll("\"(\\\\.|[^\"\\\\])*\"", "");
            return withoutTexts.contains("//") || withoutTexts.contains("/*");
        }

        private long start(Tree tree) {
            return trees.getSourcePositions().getStartPosition(unit, tree);
        }

        private long end(Tree tree) {
            return trees.getSourcePositions().getEndPosition(unit, tree);
        }
    }
}
