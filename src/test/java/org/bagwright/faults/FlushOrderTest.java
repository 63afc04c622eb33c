package org.bagwright.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.Needed;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run really asks of the disk, and in which order, where strace can look at it. */
@Tag("analytic")
class FlushOrderTest {
    private static final Pattern CALL = Pattern.compile(
            "\\b(fsync|fdatasync)\\(\\d+<([^>]*)>|\\b(rename|link)\\(\"([^\"]*)\", \"([^\"]*)\"|\\b(write)\\(\\d+<([^>]*)>");

    @TempDir
    Path folder;

    @Test
    void content_isOnTheDiskBeforeItsName_andTheNameBeforeTheEnd() throws Exception {
        Needed.here(isThere(), "strace, and the right to trace");
        Launched launched = new Launched(Files.createDirectories(folder.resolve("program")));
        Path book = Files.write(
                Files.createDirectories(folder.resolve("bag")).resolve("bag.xlsx"), KilledCommand.PLAN.demo());
        ProcessBuilder plan = launched.command(KilledCommand.PLAN.words(book));
        Path trace = folder.resolve("trace");
        List<String> line =
                new ArrayList<>(List.of("strace", "-f", "-qq", "-y", "-s", "300", "-o", trace.toString(), "-e"));
        line.add("trace=fsync,fdatasync,rename,link,write");
        line.addAll(plan.command());
        assertEquals(0, plan.command(line).start().waitFor());
        assertEquals(
                List.of(
                        "write result",
                        "flush result",
                        "write backup",
                        "flush backup",
                        "name bag.backup",
                        "flush folder",
                        "name bag.xlsx",
                        "flush folder"),
                calls(trace, book.getParent().toRealPath()));
    }

    private static boolean isThere() throws InterruptedException {
        try {
            return new ProcessBuilder("strace", "-o", "/dev/null", "true")
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException missing) {
            return false;
        }
    }

    /** The calls on the folder of the book; the first temporary file is the result, the second the backup. */
    private static List<String> calls(Path trace, Path folder) throws IOException {
        List<String> temporary = new ArrayList<>();
        List<String> calls = new ArrayList<>();
        for (String line : Files.readAllLines(trace)) {
            Matcher call = CALL.matcher(line);
            boolean ours = call.find()
                    && (call.group(3) != null || isIn(call.group(2) != null ? call.group(2) : call.group(7), folder));
            if (ours && line.contains(folder.toString())) {
                String told = told(call, folder, temporary);
                if (calls.isEmpty() || !calls.get(calls.size() - 1).equals(told)) {
                    calls.add(told);
                }
            }
        }
        return calls;
    }

    private static boolean isIn(String path, Path folder) {
        return path.equals(folder.toString()) || path.startsWith(folder + "/");
    }

    private static String told(Matcher call, Path folder, List<String> temporary) {
        if (call.group(3) != null) {
            String name = folder.relativize(Path.of(call.group(5))).toString();
            return "name " + name.replaceFirst("(backup).*", "$1");
        }
        String path = call.group(2) != null ? call.group(2) : call.group(7);
        if (path.equals(folder.toString())) {
            return "flush folder";
        }
        assertTrue(path.matches(".*/\\.bagwright-\\d+\\.tmp"), path);
        if (!temporary.contains(path)) {
            temporary.add(path);
        }
        return (call.group(2) != null ? "flush " : "write ") + (temporary.indexOf(path) == 0 ? "result" : "backup");
    }
}
