package org.bagwright.workbook.cells;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.bagwright.domain.text.CloseNames;

/**
 * The workbooks in the folder of a file that is missing.
 *
 * @param missing the file that is not there
 */
record NearbyBooks(Path missing) {
    private static final int MOST_BOOKS = 2000;

    /** {@code " Maybe \"X\"?"} for the workbook of the closest name in the same folder, or nothing. */
    String maybe() {
        Path folder = missing.toAbsolutePath().getParent();
        if (folder == null || missing.getFileName() == null) {
            return "";
        }
        if (!Files.isDirectory(folder)) {
            return " There is no folder \"" + missing.getParent() + "\".";
        }
        return CloseNames.closest(missing.getFileName().toString(), books(folder))
                .map(name -> " Maybe \"" + missing.resolveSibling(name) + "\"?")
                .orElse("");
    }

    private static List<String> books(Path folder) {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "[!.~]*.{xlsx,xlsm,XLSX,XLSM}")) {
            for (Path file : files) {
                names.add(file.getFileName().toString());
                if (names.size() >= MOST_BOOKS) {
                    break;
                }
            }
        } catch (IOException | DirectoryIteratorException unreadable) {
            return List.of();
        }
        names.sort(null);
        return names;
    }
}
