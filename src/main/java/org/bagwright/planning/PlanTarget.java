package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Optional;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SafeFile;
import org.bagwright.files.Sha256;
import org.bagwright.workbook.result.ResultBook;

/**
 * A file that takes one plan after another. What stands there and is not the last plan written is kept as a backup, once;
 * the plans themselves replace one another.
 */
public final class PlanTarget {
    private final Path target;
    private String written = "";

    public PlanTarget(Path target) {
        this.target = target;
    }

    public Path file() {
        return target;
    }

    /**
     * Writes a plan into a copy of its book.
     *
     * @return the backup of what stood there, if that was of another hand
     * @throws IOException if the target cannot be written, as when another program holds it
     */
    public Optional<KeptFile> write(Path source, BookResult result) throws IOException {
        MessageDigest digest = Sha256.digest();
        SafeFile.IoWriter writer =
                output -> new ResultBook(source, result).write(new DigestOutputStream(output, digest));
        Optional<KeptFile> backup = Optional.empty();
        if (isOwn()) {
            SafeFile.replaceOwn(target, writer);
        } else {
            backup = SafeFile.replace(target, writer);
        }
        written = Sha256.text(digest.digest());
        return backup;
    }

    private boolean isOwn() throws IOException {
        return Files.exists(target) && Sha256.of(Files.readAllBytes(target)).equals(written);
    }
}
