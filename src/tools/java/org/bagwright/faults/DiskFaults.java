package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.cli.text.Terminal;

/** Disks that are full or may not be written to. */
final class DiskFaults {
    private static final int PAGE_KIB = 4;

    private final Path root;
    private final byte[] demo;
    private final int resultKib;

    DiskFaults(Path root) throws IOException {
        this.root = root;
        this.demo = Files.readAllBytes(Path.of("demo-data", "trio.xlsx"));
        Path book = Files.write(root.resolve("ample.xlsx"), demo);
        Terminal.run("plan", book, "-o", root.resolve("ample-result.xlsx"));
        this.resultKib = kib(Files.size(root.resolve("ample-result.xlsx")));
    }

    private static int kib(long bytes) {
        return (int) ((bytes + 4095) / 4096) * PAGE_KIB;
    }

    /** Every fault of a disk; where disks cannot be mounted, rows that say so. */
    List<FaultRow> all(int fullDisks) throws IOException {
        FaultRow result = new FaultRow("disk full while the result is written");
        FaultRow backup = new FaultRow("disk full while the backup is made");
        FaultRow enough = new FaultRow("disk with just enough room");
        FaultRow names = new FaultRow("disk without room for another file name");
        FaultRow readOnly = new FaultRow("folder on a disk mounted read-only");
        List<FaultRow> rows = List.of(result, backup, enough, names, readOnly);
        if (!SmallDisk.isPossible(root)) {
            rows.forEach(row -> row.note("not tried: needs the right to mount a disk"));
            return rows;
        }
        int bookKib = kib(demo.length);
        for (int index = 0; index < fullDisks; index++) {
            int roomKib = (int) ((resultKib - PAGE_KIB) * (double) index / fullDisks);
            full(result, "size=" + (bookKib + roomKib) + "k");
            full(
                    backup,
                    "size=" + (bookKib + resultKib + PAGE_KIB + (bookKib - 3 * PAGE_KIB) * index / fullDisks) + "k");
        }
        full(enough, "size=" + (2 * bookKib + resultKib + 2 * PAGE_KIB) + "k");
        full(names, "size=4m,nr_inodes=2");
        full(names, "size=4m,nr_inodes=3");
        readOnly(readOnly);
        return rows;
    }

    private void full(FaultRow row, String options) throws IOException {
        try (SmallDisk disk = SmallDisk.of(root, options)) {
            Path book = Files.write(disk.folder().resolve("bag.xlsx"), demo);
            Terminal run = Terminal.run("plan", book, "--in-place");
            judge(row, run, book, "the disk is full");
        }
    }

    private void readOnly(FaultRow row) throws IOException {
        try (SmallDisk disk = SmallDisk.of(root, "size=4m")) {
            Path book = Files.write(disk.folder().resolve("bag.xlsx"), demo);
            disk.makeReadOnly();
            judge(row, Terminal.run("plan", book, "--in-place"), book, "may not write into the folder");
        }
    }

    /** A run that failed has said why, left the old book and nothing else; one that did its work has kept it. */
    private void judge(FaultRow row, Terminal run, Path book, String words) throws IOException {
        Aftermath after = Aftermath.of(book, demo);
        List<String> losses = new ArrayList<>(after.losses());
        boolean done = run.code() == 0 && !after.isOld();
        boolean refused = run.code() == 1 && after.isOld() && run.err().contains(words);
        if (!done && !refused) {
            losses.add("said " + run.code() + ": " + run.err());
        }
        if (!after.leftovers().isEmpty() || (refused && !after.backups().isEmpty())) {
            losses.add("left behind: " + after.leftovers() + after.backups());
        }
        row.tried("exit code " + run.code(), losses);
    }
}
