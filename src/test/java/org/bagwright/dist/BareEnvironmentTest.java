package org.bagwright.dist;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.bagwright.Needed;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shell launcher where no language is set, as in a job of the system, and where the output cannot be written. */
@Tag("analytic")
class BareEnvironmentTest {
    /** Makes a short run quicker. */
    private static final String QUICK_START = "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC ";

    @TempDir
    Path folder;

    /** A launcher next to an empty jar: a script in the place of Java runs the classes of this test. */
    @BeforeEach
    void install() throws IOException {
        Needed.notWindows();
        Files.copy(Path.of("bagwright"), folder.resolve("bagwright"));
        Files.createDirectories(folder.resolve("target/lib"));
        Files.createFile(folder.resolve("target/bagwright.jar"));
        Files.createFile(folder.resolve("target/bagwright.jsa"));
        Files.copy(Path.of("demo-data", "trio.xlsx"), folder.resolve("a.xlsx"));
    }

    /** Runs Java on the classes of this test, under what the launcher exports. */
    private void java(String options) throws IOException {
        Path bin = Files.createDirectories(folder.resolve("jdk/bin"));
        String script = "#!/bin/sh\nwhile [ \"$1\" != org.bagwright.cli.Main ]; do shift; done\n"
                + "exec '" + Path.of(System.getProperty("java.home"), "bin", "java") + "' " + QUICK_START + options
                + " -cp '"
                + classPath() + "' \"$@\"\n";
        Path java = Files.writeString(bin.resolve("java"), script);
        Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(place -> Path.of(place).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private record Ended(int code, String out, String err) {}

    private Ended run(Map<String, String> environment, String shell) throws IOException, InterruptedException {
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        ProcessBuilder start = new ProcessBuilder("sh", "-c", shell)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        start.environment().clear();
        start.environment().put("PATH", "/usr/bin:/bin");
        start.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
        start.environment().putAll(environment);
        Process process = start.start();
        assertTrue(process.waitFor(100, TimeUnit.SECONDS));
        return new Ended(process.exitValue(), read(out), read(err));
    }

    private static String read(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @Test
    void nameWithUmlaut_isFoundWithoutALanguage() throws Exception {
        java("");
        for (Map<String, String> environment :
                List.of(Map.<String, String>of(), Map.of("LC_ALL", "C"), Map.of("LANG", "xx_XX.UTF-8"))) {
            Ended check =
                    run(environment, "cp a.xlsx \"$(printf 'Schl\\303\\244ger.xlsx')\"; ./bagwright check Schl*.xlsx");
            assertEquals(0, check.code(), environment + check.out() + check.err());
        }
    }

    @Test
    void nameWithUmlaut_isFoundByTheStartScriptOfTheImage() throws Exception {
        java("");
        Path image = Files.createDirectories(folder.resolve("image"));
        Path start = Files.createDirectories(image.resolve("bin")).resolve("bagwright");
        Files.copy(Path.of("src", "dist", "start.sh"), start);
        Path program = Files.createDirectories(image.resolve("lib")).resolve("bagwright");
        Files.writeString(program, "#!/bin/sh\nexec ../jdk/bin/java org.bagwright.cli.Main \"$@\"\n");
        Files.setPosixFilePermissions(program, PosixFilePermissions.fromString("rwxr-xr-x"));
        for (String called : List.of("bin/bagwright", "./link", folder + "/image/link")) {
            Ended check = run(
                    Map.of(),
                    "cd image; ln -sf bin/bagwright link; cp ../a.xlsx \"$(printf 'Schl\\303\\244ger.xlsx')\"; env -i "
                            + called + " check Schl*.xlsx");
            assertEquals(0, check.code(), called + check.out() + check.err());
        }
    }

    @Test
    void fullOutput_endsEveryCommandWith1AndOneSentence() throws Exception {
        java("");
        List<String> commands = List.of(
                "check a.xlsx",
                "chart a.xlsx",
                "plan a.xlsx",
                "completion",
                "help",
                "new b.xlsx",
                "--version",
                "check a.xlsx --json");
        for (String command : commands) {
            Ended full = run(Map.of(), "./bagwright " + command + " > /dev/full");
            assertEquals(1, full.code(), command + full.err());
            assertOneSentence(full.err());
        }
    }

    @Test
    void closedPipe_endsWith1AndOneSentence() throws Exception {
        java("");
        Ended cut = run(Map.of(), "{ ./bagwright chart a.xlsx; echo code $? >&2; } | true");
        assertTrue(cut.err().endsWith("code 1\n"), cut.err());
        assertOneSentence(cut.err());
    }

    private static void assertOneSentence(String err) {
        Matcher said = Pattern.compile("(?m)^bagwright: .*").matcher(err);
        assertTrue(said.find() && said.group().contains("what was printed is lost or not whole"), err);
        assertTrue(!said.find() && !err.contains("\tat ") && !err.contains("Exception"), err);
    }

    @Test
    void tooLittleMemory_isSaidInPlainWords() throws Exception {
        java("-Xmx12m");
        Ended full = run(Map.of(), "./bagwright plan a.xlsx");
        assertTrue(full.code() == 1 || full.code() == 3, full.err());
        assertTrue(full.err().contains("memory"), full.err());
        assertTrue(!full.err().contains("\tat "), full.err());
        assertTrue(!Files.exists(folder.resolve("a-plan.xlsx")));
    }

    @Test
    void limitOfTheSizeOfFiles_isSaidInPlainWords() throws Exception {
        java("-XX:-UsePerfData");
        Ended full = run(Map.of(), "ulimit -f 8; ./bagwright plan a.xlsx > /dev/null");
        assertEquals(1, full.code(), full.err());
        assertTrue(full.err().contains("larger than the system lets"), full.err());
        assertTrue(!Files.exists(folder.resolve("a-plan.xlsx")));
    }
}
