package org.bagwright.structure;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * How long the files and methods of a source root are, in lines, and how many parameters its methods take. A method counts
 * from the line of its name to its closing brace, without annotations and Javadoc; descriptions of packages are left out.
 *
 * @param files lines of each file
 * @param methods lines of each method and constructor with a body
 * @param mostParameters the most parameters of a method or components of a record
 */
record SourceLengths(List<Integer> files, List<Integer> methods, int mostParameters) {

    SourceLengths {
        files = files.stream().sorted().toList();
        methods = methods.stream().sorted().toList();
    }

    /**
     * @param root a folder of sources
     * @throws IOException if it cannot be read
     */
    static SourceLengths of(Path root) throws IOException {
        List<Path> paths;
        try (Stream<Path> walk = Files.walk(root)) {
            paths = walk.filter(path -> path.toString().endsWith(".java") && !path.endsWith("package-info.java"))
                    .toList();
        }
        List<Integer> files = new ArrayList<>();
        for (Path path : paths) {
            files.add(Files.readAllLines(path).size());
        }
        Scanner scanner = Scanner.over(paths);
        return new SourceLengths(files, scanner.methods, scanner.mostParameters);
    }

    /** The value that a share of sorted numbers does not exceed; 0 of none. */
    static int quantile(List<Integer> sorted, double shareRatio) {
        return sorted.isEmpty() ? 0 : sorted.get(Math.min(sorted.size() - 1, (int) (sorted.size() * shareRatio)));
    }

    private static final class Scanner extends TreeScanner<Void, CompilationUnitTree> {
        private final SourcePositions positions;
        private final List<Integer> methods = new ArrayList<>();
        private int mostParameters;

        private Scanner(SourcePositions positions) {
            this.positions = positions;
        }

        static Scanner over(List<Path> paths) throws IOException {
            JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
            try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
                JavacTask task = (JavacTask) compiler.getTask(
                        null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(paths));
                Scanner scanner = new Scanner(Trees.instance(task).getSourcePositions());
                for (CompilationUnitTree unit : task.parse()) {
                    scanner.scan(unit, unit);
                }
                return scanner;
            }
        }

        @Override
        public Void visitClass(ClassTree type, CompilationUnitTree unit) {
            if (type.getKind() == Tree.Kind.RECORD) {
                long components = type.getMembers().stream()
                        .filter(member -> member instanceof VariableTree field
                                && !field.getModifiers().getFlags().contains(Modifier.STATIC))
                        .count();
                mostParameters = Math.max(mostParameters, (int) components);
            }
            return super.visitClass(type, unit);
        }

        @Override
        public Void visitMethod(MethodTree method, CompilationUnitTree unit) {
            mostParameters = Math.max(mostParameters, method.getParameters().size());
            if (method.getBody() != null) {
                methods.add(lines(method, unit));
            }
            return super.visitMethod(method, unit);
        }

        private int lines(MethodTree method, CompilationUnitTree unit) {
            LineMap map = unit.getLineMap();
            ModifiersTree modifiers = method.getModifiers();
            long start = Math.max(positions.getStartPosition(unit, method), positions.getEndPosition(unit, modifiers));
            long end = positions.getEndPosition(unit, method.getBody());
            return (int) (map.getLineNumber(end) - map.getLineNumber(start) + 1);
        }
    }
}
