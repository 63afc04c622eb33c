package org.bagwright.speed;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Plans random books with two builds of the program and compares what {@code plan --json} prints: numbers to 1e-9, all else to
 * the letter, but for the time that the search took. The arguments: the {@code target} folders of both builds, how many books, and
 * the seed of the first.
 */
public final class SamePlans {
    private static final double NEAR = 1e-9;
    private static final Set<String> LEFT_OUT = Set.of("seconds", "searchSeconds");
    private static final int MOST_SHOWN = 20;

    private final ObjectMapper json = new ObjectMapper();
    private int numbers;
    private int different;
    private double furthest;

    public static void main(String[] arguments) throws Exception {
        new SamePlans()
                .compare(
                        new Build(Path.of(arguments[0])),
                        new Build(Path.of(arguments[1])),
                        Integer.parseInt(arguments[2]),
                        Long.parseLong(arguments[3]));
    }

    /** A build of the program, loaded apart from all others. */
    private static final class Build {
        private final ClassLoader loader;

        Build(Path target) throws IOException {
            List<URL> places = new ArrayList<>();
            places.add(target.resolve("bagwright.jar").toUri().toURL());
            try (Stream<Path> files = Files.list(target.resolve("lib"))) {
                for (Path file : files.sorted().toList()) {
                    places.add(file.toUri().toURL());
                }
            }
            loader = new URLClassLoader(places.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        }

        /** What a command prints, after its exit code. */
        String run(String... command) throws ReflectiveOperationException {
            Thread.currentThread().setContextClassLoader(loader);
            Class<?> style = loader.loadClass("org.bagwright.cli.text.AnsiStyle");
            Method run = loader.loadClass("org.bagwright.cli.Main")
                    .getMethod("run", PrintWriter.class, PrintWriter.class, style, String[].class);
            StringWriter out = new StringWriter();
            StringWriter err = new StringWriter();
            Object code = run.invoke(
                    null,
                    new PrintWriter(out),
                    new PrintWriter(err),
                    style.getField("NONE").get(null),
                    command);
            if (!Set.of(0, 4).contains(code)) {
                throw new IllegalStateException(Arrays.toString(command) + " ends with " + code + ": " + err);
            }
            return out.toString();
        }
    }

    private void compare(Build one, Build other, int books, long seed) throws Exception {
        Path folder = Files.createTempDirectory("same-plans-");
        Path book = folder.resolve("book.xlsx");
        Path plan = folder.resolve("plan.xlsx");
        String[] command = {"plan", book.toString(), "-o", plan.toString(), "--json"};
        for (int number = 0; number < books; number++) {
            new RandomBook(seed + number).write(book);
            String before = one.run(command);
            Files.delete(plan);
            String after = other.run(command);
            Files.delete(plan);
            compare("book " + (seed + number), json.readTree(before), json.readTree(after));
        }
        Files.delete(book);
        Files.delete(folder);
        System.out.println(
                books + " books, " + numbers + " numbers, " + different + " differences, furthest " + furthest);
    }

    private void compare(String place, JsonNode one, JsonNode other) {
        if (one.isNumber() && other.isNumber()) {
            numbers++;
            double apart = Math.abs(one.doubleValue() - other.doubleValue()) / Math.max(1, Math.abs(one.doubleValue()));
            furthest = Math.max(furthest, apart);
            tell(apart <= NEAR, place, one, other);
        } else if (one.isObject() && other.isObject()) {
            Set<String> names = new TreeSet<>();
            one.fieldNames().forEachRemaining(names::add);
            other.fieldNames().forEachRemaining(names::add);
            names.removeAll(LEFT_OUT);
            names.forEach(name -> compare(place + "." + name, one.path(name), other.path(name)));
        } else if (one.isArray() && other.isArray() && one.size() == other.size()) {
            Iterator<JsonNode> others = other.iterator();
            int index = 0;
            for (JsonNode element : one) {
                compare(place + "[" + index++ + "]", element, others.next());
            }
        } else {
            tell(one.equals(other), place, one, other);
        }
    }

    private void tell(boolean same, String place, JsonNode one, JsonNode other) {
        if (!same && different++ < MOST_SHOWN) {
            System.out.println(place + ": " + one + " and " + other);
        }
    }
}
