package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * Who may read and write a file, handed on to the one that takes its place.
 *
 * @param found its owner, group and permissions; empty where the system has none
 */
record FileRights(Optional<PosixFileAttributes> found) {
    static FileRights of(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        return new FileRights(view == null ? Optional.empty() : Optional.of(view.readAttributes()));
    }

    /** Gives a new file the same owner, group and permissions, as far as the system lets us. */
    void giveTo(Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view == null || found.isEmpty()) {
            return;
        }
        PosixFileAttributes before = found.get();
        Set<PosixFilePermission> rights = EnumSet.noneOf(PosixFilePermission.class);
        rights.addAll(before.permissions());
        if (!isGroupKept(view, before)) {
            rights.removeAll(EnumSet.of(
                    PosixFilePermission.GROUP_READ,
                    PosixFilePermission.GROUP_WRITE,
                    PosixFilePermission.GROUP_EXECUTE));
        }
        keepOwner(view, before);
        view.setPermissions(rights);
    }

    /** Where the group cannot be kept, another group shall not get its rights. */
    private static boolean isGroupKept(PosixFileAttributeView view, PosixFileAttributes before) throws IOException {
        if (view.readAttributes().group().equals(before.group())) {
            return true;
        }
        try {
            view.setGroup(before.group());
            return true;
        } catch (IOException notAllowed) {
            return false;
        }
    }

    private static void keepOwner(PosixFileAttributeView view, PosixFileAttributes before) throws IOException {
        if (view.readAttributes().owner().equals(before.owner())) {
            return;
        }
        try {
            view.setOwner(before.owner());
        } catch (IOException notAllowed) {
            // Only an administrator may give a file away; it is ours then.
        }
    }

    /** Whether a file is marked as not to be written, whoever tries. */
    static boolean isProtected(Path file) throws IOException {
        boolean marked = of(file).found.stream()
                .anyMatch(rights -> !rights.permissions().contains(PosixFilePermission.OWNER_WRITE));
        return marked || !Files.isWritable(file);
    }
}
