package org.bagwright.files;

import java.nio.file.Path;
import org.bagwright.domain.units.Checks;

/**
 * What was kept of a file before another took its place.
 *
 * @param backup the whole copy next to it
 * @param removed how many older backups of the same file were removed, by the rule in README
 */
public record KeptFile(Path backup, int removed) {
    public KeptFile {
        Checks.that(removed >= 0, "removed backups must be 0 or more, found " + removed);
    }
}
