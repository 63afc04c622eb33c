package org.bagwright.workbook.result;

import java.nio.file.Path;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.ooxml.POIXMLProperties.CustomProperties;

/**
 * The title and the author that a result has as a document. A title that the fitter has given to the document stays; in place
 * of the title of the blank book comes that on the sheet Start, or the name of the file.
 *
 * @param ofStart the title on the sheet Start, if any
 * @param file the fitter's book
 */
record BookTitle(Optional<String> ofStart, Path file) {
    static final String OF_BLANK_BOOK = "Blank bag workbook";
    static final String TOOL = "Bagwright";
    /** Holds the title that a run has given, so that the next one knows it from the fitter's. */
    private static final String GIVEN = "Bagwright title";

    private static final String ENDING = "(?i)\\.xls[xm]$";

    void giveTo(POIXMLProperties properties) {
        CoreProperties core = properties.getCoreProperties();
        CustomProperties custom = properties.getCustomProperties();
        String before = text(core.getTitle());
        boolean given = custom.contains(GIVEN)
                && before.equals(custom.getProperty(GIVEN).getLpwstr());
        if (before.isEmpty() || before.equals(OF_BLANK_BOOK) || given) {
            String title = ofStart.orElseGet(() -> file.getFileName().toString().replaceFirst(ENDING, ""));
            core.setTitle(title);
            if (custom.contains(GIVEN)) {
                custom.getProperty(GIVEN).setLpwstr(title);
            } else {
                custom.addProperty(GIVEN, title);
            }
        }
        author(core);
    }

    /** The author of the blank book is the tool: who has saved it since comes in its place. */
    private static void author(CoreProperties core) {
        String saved = text(core.getLastModifiedByUser());
        if (!saved.isEmpty() && text(core.getCreator()).equals(TOOL)) {
            core.setCreator(saved);
        }
    }

    private static String text(String property) {
        return property == null ? "" : property.strip();
    }
}
