package org.bagwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/** Who may read and write a file, handed on to the one that takes its place. */
final class FileRights {
    private FileRights() {}

    /** Gives a new file the owner, group and rights of an old one, as far as the system lets us. */
    static void keep(Path old, Path fresh) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        PosixFileAttributes before = Files.readAttributes(old, PosixFileAttributes.class);
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

    /** Whether a file is marked as not to be written, whoever asks. */
    static boolean isProtected(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        boolean marked = view != null && !view.readAttributes().permissions().contains(PosixFilePermission.OWNER_WRITE);
        return marked || !Files.isWritable(file);
    }
}
