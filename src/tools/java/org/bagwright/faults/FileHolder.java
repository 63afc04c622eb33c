package org.bagwright.faults;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.bagwright.ChildJava;

/** Another program: locks a file, says so, and holds it until it is told to end. */
public final class FileHolder {
    private FileHolder() {}

    /** Takes the file. */
    public static void main(String[] args) throws IOException {
        try (FileChannel channel = FileChannel.open(Path.of(args[0]), StandardOpenOption.WRITE);
                FileLock lock = channel.lock()) {
            System.out.println(lock.isValid() ? "locked" : "not locked");
            int told = System.in.read();
            System.out.println("told " + told);
        }
    }

    /** Starts it and waits until it holds the file. */
    public static Process hold(Path file) throws IOException {
        Process process = ChildJava.of(FileHolder.class.getName(), file)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = process.inputReader().readLine();
        if (!"locked".equals(said)) {
            throw new IOException("the other program said " + said);
        }
        return process;
    }
}
