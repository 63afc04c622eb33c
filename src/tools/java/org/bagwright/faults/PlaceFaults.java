package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.cli.text.Terminal;

/** Places that cannot be written to, and books that are open elsewhere. */
final class PlaceFaults {
    private final Path root;
    private final byte[] demo;
    private int folders;

    PlaceFaults(Path root) throws IOException {
        this.root = root;
        this.demo = Files.readAllBytes(Path.of("demo-data", "trio.xlsx"));
    }

    /** Something done to the folder of a book. */
    private interface Fault {
        /** Gives the arguments after {@code plan BOOK}. */
        List<Object> prepare(Path book) throws IOException;
    }

    List<FaultRow> all() throws IOException {
        List<FaultRow> rows = new ArrayList<>();
        rows.add(tried("book write-protected, --in-place", 1, "write-protected", book -> {
            Files.setPosixFilePermissions(book, PosixFilePermissions.fromString("r--r--r--"));
            return List.of("--in-place");
        }));
        rows.add(
                tried("output folder gone", 2, "no folder", book -> List.of("-o", book.resolveSibling("gone/x.xlsx"))));
        rows.add(tried(
                "a file in place of the output folder", 2, "no folder", book -> List.of("-o", book.resolve("x.xlsx"))));
        rows.add(tried(
                "output is a folder",
                2,
                "is a folder",
                book -> List.of("-o", Files.createDirectories(outside("folder.xlsx")))));
        rows.add(tried("output is a link to itself", 2, "broken link", book -> {
            Path loop = outside("loop.xlsx");
            return List.of("-o", Files.createSymbolicLink(loop, loop));
        }));
        for (String owner : List.of("~$bag.xlsx", ".~lock.bag.xlsx#")) {
            rows.add(tried(
                    "book open in a spreadsheet program (" + owner + " next to it), --in-place", 3, owner, book -> {
                        Files.writeString(book.resolveSibling(owner), "Golfer A");
                        return List.of("--in-place");
                    }));
        }
        rows.add(locked());
        return rows;
    }

    private Path outside(String name) throws IOException {
        return Files.createDirectories(root.resolve("outside" + folders++)).resolve(name);
    }

    private Path book() throws IOException {
        Path folder = Files.createDirectories(root.resolve("place" + folders++));
        return Files.write(folder.resolve("bag.xlsx"), demo);
    }

    private FaultRow tried(String name, int code, String words, Fault fault) throws IOException {
        FaultRow row = new FaultRow(name);
        Path book = book();
        List<Object> arguments = new ArrayList<>(List.of("plan", book));
        arguments.addAll(fault.prepare(book));
        judge(row, book, code, words, Terminal.run(arguments.toArray()));
        return row;
    }

    private void judge(FaultRow row, Path book, int code, String words, Terminal run) throws IOException {
        List<String> losses = new ArrayList<>();
        Aftermath after = Aftermath.of(book, demo);
        if (!after.isOld() || !after.leftovers().isEmpty() || !after.backups().isEmpty()) {
            losses.add("the folder is not as it was");
        }
        if (run.code() != code || !run.err().contains(words)) {
            losses.add("expected " + code + " and \"" + words + "\", found " + run.code() + ": " + run.err());
        }
        row.tried("exit code " + run.code(), losses);
    }

    private FaultRow locked() throws IOException {
        FaultRow row = new FaultRow("book locked by another process, --in-place");
        Path book = book();
        Process holder = FileHolder.hold(book);
        try {
            judge(row, book, 3, "another program has the book open", Terminal.run("plan", book, "--in-place"));
        } finally {
            holder.destroy();
        }
        return row;
    }

    /** Some runs on one book at the same time: each result is whole, each old book kept. */
    FaultRow atOnce(Launched launched, int runs, int tries) throws IOException, InterruptedException {
        FaultRow row = new FaultRow(runs + " runs of plan --in-place on one book at once");
        for (int index = 0; index < tries; index++) {
            Path book = book();
            List<Process> started = new ArrayList<>();
            for (int run = 0; run < runs; run++) {
                started.add(launched.command(KilledCommand.PLAN.words(book)).start());
            }
            List<Integer> codes = new ArrayList<>();
            for (Process run : started) {
                codes.add(run.waitFor());
            }
            codes.sort(null);
            Aftermath after = Aftermath.of(book, demo);
            List<String> losses = new ArrayList<>(after.losses());
            if (after.isOld() || !after.leftovers().isEmpty() || !codes.contains(0)) {
                losses.add("no result, or a temporary file left");
            }
            row.tried("exit codes " + codes, losses);
        }
        return row;
    }
}
