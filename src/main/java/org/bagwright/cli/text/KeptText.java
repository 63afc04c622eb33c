package org.bagwright.cli.text;

import org.bagwright.files.KeptFile;

/** What was kept of a file that was replaced, in words. */
public record KeptText(KeptFile kept) {
    /** The rule by which backups stay, for the help of every command that makes some. */
    public static final String RULE = "Backups: a replaced file is kept next to it, as bag.backup-20260131-120000.xlsx."
            + " For each file, the 10 newest backups stay, the first of each day, and every one that was changed"
            + " later. Older ones are removed.";

    public String line() {
        String removed = kept.removed() == 0
                ? ""
                : " (and removed " + kept.removed() + (kept.removed() == 1 ? " older backup" : " older backups")
                        + "; the 10 newest and the first of each day stay)";
        return "Kept the previous file: " + kept.backup() + removed;
    }
}
