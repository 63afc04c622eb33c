package org.bagwright.structure;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.bagwright.cli.Main;

/** Prints the measures of the code's structure. Run it in the folder of the project. */
public final class StructureTable {
    private StructureTable() {}

    /**
     * Prints the table.
     *
     * @param arguments none
     * @throws IOException if the sources cannot be read
     */
    public static void main(String[] arguments) throws IOException {
        PrintStream out = System.out;
        SourceLengths main = SourceLengths.of(Path.of("src/main/java"));
        SourceLengths test = SourceLengths.of(Path.of("src/test/java"));
        SourceLengths tools = SourceLengths.of(Path.of("src/tools/java"));
        JavaClasses classes = new ClassFileImporter()
                .importUrl(Main.class.getProtectionDomain().getCodeSource().getLocation());
        long types = OnlyStatics.topLevel(classes).count();
        List<String> statics = OnlyStatics.among(classes);
        List<List<String>> circles = Circles.among(classes);
        out.printf("files, 90 %% / most lines            %s%n", ends(main.files()));
        out.printf("methods, median / 90 %% / most lines %d / %s%n", half(main.methods()), ends(main.methods()));
        out.printf(
                "types that are only statics         %.1f %% (%d of %d)%n",
                100.0 * statics.size() / types, statics.size(), types);
        out.printf("largest package                     %s%n", largest(classes));
        out.printf("most parameters                     %d%n", main.mostParameters());
        out.printf("circles between classes             %d %s%n", circles.size(), circles);
        out.printf(
                "lines of main, tests, tools         %d, %d, %d%n",
                sum(main.files()), sum(test.files()), sum(tools.files()));
        out.printf(
                "tests and tools to main             %.2f%n",
                (double) (sum(test.files()) + sum(tools.files())) / sum(main.files()));
        statics.forEach(name -> out.println("  only statics: " + name));
    }

    private static int half(List<Integer> lines) {
        return SourceLengths.quantile(lines, 0.5);
    }

    private static String ends(List<Integer> lines) {
        return SourceLengths.quantile(lines, 0.9) + " / " + SourceLengths.quantile(lines, 1);
    }

    private static int sum(List<Integer> lines) {
        return lines.stream().mapToInt(count -> count).sum();
    }

    private static String largest(JavaClasses classes) {
        Map<String, Long> types = OnlyStatics.topLevel(classes)
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
        return types.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(room -> room.getValue() + " types, " + room.getKey())
                .orElse("none");
    }
}
