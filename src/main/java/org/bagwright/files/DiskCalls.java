package org.bagwright.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The calls of the disk that make a file safe. Their order matters; a test records it. */
class DiskCalls {
    /** Forces what was written to the disk. */
    void force(FileChannel written) throws IOException {
        written.force(true);
    }

    /** Forces the names in a folder to the disk where the system lets a folder be opened, as Windows does not. */
    void forceFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            force(channel);
        } catch (IOException notPossible) {
            // The content itself is already on the disk; only the renaming may be lost with the power.
        }
    }

    /** Lets a file take the place of another in the same folder, in one step. */
    void replace(Path fresh, Path target) throws IOException {
        Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Gives a file a second name.
     *
     * @throws java.nio.file.FileAlreadyExistsException if the name is not free
     */
    void link(Path name, Path file) throws IOException {
        Files.createLink(name, file);
    }
}
