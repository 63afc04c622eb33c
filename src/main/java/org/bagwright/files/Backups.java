package org.bagwright.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The backups of one file, next to it: how they are named, made and removed. */
final class Backups {
    /** How many of the newest stay in any case. */
    static final int NEWEST = 10;

    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("uuuuMMdd-HHmmss", Locale.ROOT);
    private static final int MOST_A_SECOND = 100;

    private final Path file;
    private final DiskCalls disk;
    private final String start;
    private final String end;
    private final Pattern pattern;

    /** What the name of a backup says. */
    private record Backup(Path path, LocalDateTime when, int copy) {}

    Backups(Path file, DiskCalls disk) {
        this.file = file;
        this.disk = disk;
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        int stem = dot > 0 ? dot : name.length();
        this.start = name.substring(0, stem) + ".backup-";
        this.end = name.substring(stem);
        this.pattern = Pattern.compile(Pattern.quote(start) + "(\\d{8}-\\d{6})(?:-(\\d{1,3}))?" + Pattern.quote(end));
    }

    /**
     * Copies the file next to itself, as {@code bag.backup-20260131-120000.xlsx} for {@code bag.xlsx}. The copy has its
     * name only once it is whole and on the disk, and never takes the name of another file.
     *
     * @return the copy
     * @throws OpenElsewhereException if another program writes the file at the same time
     * @throws IOException if there is no such file or it cannot be copied
     */
    Path make(LocalDateTime when) throws IOException {
        try (TemporaryFile copy = TemporaryFile.in(file.getParent(), disk)) {
            FileMark before = FileMark.of(file);
            copy.write(out -> Files.copy(file, out));
            before.requireSame(file);
            new FileLabels(file).giveTo(copy.path());
            FileRights.of(file).giveTo(copy.path());
            Files.setLastModifiedTime(copy.path(), Files.getLastModifiedTime(file));
            return named(copy, when);
        }
    }

    private Path named(TemporaryFile copy, LocalDateTime when) throws IOException {
        FileAlreadyExistsException taken = new FileAlreadyExistsException(file.toString());
        for (int number = 1; number <= MOST_A_SECOND; number++) {
            String again = number == 1 ? "" : "-" + number;
            Path backup = file.resolveSibling(start + STAMP.format(when) + again + end);
            try {
                copy.become(backup);
                return backup;
            } catch (FileAlreadyExistsException thisOne) {
                taken = thisOne;
            }
        }
        throw taken;
    }

    /**
     * Removes older backups: all but the newest ten, the first of each day, and whatever a person may have changed
     * since, that is, files newer than their name or open in another program.
     *
     * @return how many
     */
    int removeOlder() {
        int removed = 0;
        Set<LocalDate> days = new HashSet<>();
        List<Backup> oldestFirst = all();
        for (Backup backup : oldestFirst.subList(0, Math.max(0, oldestFirst.size() - NEWEST))) {
            boolean firstOfDay = days.add(backup.when().toLocalDate());
            if (!firstOfDay && isUntouched(backup) && isRemoved(backup)) {
                removed++;
            }
        }
        return removed;
    }

    private List<Backup> all() {
        List<Backup> found = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(file.getParent())) {
            for (Path path : files) {
                Matcher name = pattern.matcher(path.getFileName().toString());
                if (name.matches() && Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)) {
                    int copy = name.group(2) == null ? 1 : Integer.parseInt(name.group(2));
                    found.add(new Backup(path, LocalDateTime.parse(name.group(1), STAMP), copy));
                }
            }
        } catch (IOException | DirectoryIteratorException | DateTimeParseException unclear) {
            return List.of();
        }
        found.sort(Comparator.comparing(Backup::when).thenComparing(Backup::copy));
        return found;
    }

    private static boolean isUntouched(Backup backup) {
        try {
            Instant made = backup.when().atZone(ZoneId.systemDefault()).toInstant();
            Instant changed = Files.getLastModifiedTime(backup.path()).toInstant();
            return !changed.isAfter(made.plusSeconds(1))
                    && new OtherProgram(backup.path()).ownersFile().isEmpty();
        } catch (IOException unclear) {
            return false;
        }
    }

    private static boolean isRemoved(Backup backup) {
        try {
            return Files.deleteIfExists(backup.path());
        } catch (IOException stays) {
            return false;
        }
    }
}
