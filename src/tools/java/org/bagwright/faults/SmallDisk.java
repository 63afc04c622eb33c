package org.bagwright.faults;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** A disk in memory of a stated size, where this process may mount one. */
final class SmallDisk implements AutoCloseable {
    private final Path folder;
    private final Thread atTheLatest = new Thread(this::unmount);

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /** Whether disks can be mounted here. */
    static boolean isPossible(Path root) {
        try (SmallDisk disk = of(root, "size=64k")) {
            return Files.isWritable(disk.folder());
        } catch (IOException notPossible) {
            return false;
        }
    }

    static SmallDisk of(Path root, String options) throws IOException {
        Path folder = Files.createDirectories(root.resolve("disk"));
        run("mount", "-t", "tmpfs", "-o", options, "tmpfs", folder.toString());
        SmallDisk disk = new SmallDisk(folder);
        Runtime.getRuntime().addShutdownHook(disk.atTheLatest);
        return disk;
    }

    /** Unmounts it when this process is ended in between. */
    private void unmount() {
        try {
            run("umount", folder.toString());
        } catch (IOException stays) {
            System.err.println("still mounted: " + folder);
        }
    }

    Path folder() {
        return folder;
    }

    void makeReadOnly() throws IOException {
        run("mount", "-o", "remount,ro", folder.toString());
    }

    @Override
    public void close() throws IOException {
        Runtime.getRuntime().removeShutdownHook(atTheLatest);
        run("umount", folder.toString());
    }

    private static void run(String... command) throws IOException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        try {
            if (!process.waitFor(20, TimeUnit.SECONDS) || process.exitValue() != 0) {
                throw new IOException("cannot " + String.join(" ", command));
            }
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException(interrupted);
        }
    }
}
