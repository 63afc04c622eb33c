package org.bagwright.planning;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.Optional;
import org.apache.commons.codec.binary.Hex;
import org.apache.commons.codec.digest.DigestUtils;
import org.bagwright.domain.plan.BookResult;
import org.bagwright.files.ContentWriter;
import org.bagwright.files.KeptFile;
import org.bagwright.files.SafeFile;
import org.bagwright.files.SourceFile;
import org.bagwright.workbook.result.ResultBook;

/**
 * A file that takes one plan after another. A file that is not the last plan written is kept as a backup, once;
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
     * @return the backup of the file that was replaced, if it was not the last plan written
     * @throws IOException if the target cannot be written, as when another program holds it
     */
    public Optional<KeptFile> write(SourceFile source, BookResult result) throws IOException {
        SafeFile file = new SafeFile(target);
        MessageDigest digest = DigestUtils.getSha256Digest();
        ContentWriter writer = output -> new ResultBook(source, result).write(new DigestOutputStream(output, digest));
        Optional<KeptFile> backup = Optional.empty();
        if (isOwn()) {
            file.replaceOwn(writer);
        } else {
            backup = file.replace(writer);
        }
        written = Hex.encodeHexString(digest.digest());
        return backup;
    }

    private boolean isOwn() throws IOException {
        return Files.exists(target)
                && DigestUtils.sha256Hex(Files.readAllBytes(target)).equals(written);
    }
}
