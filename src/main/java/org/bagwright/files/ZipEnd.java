package org.bagwright.files;

/** A workbook is a zip, and the last thing written of a zip is a mark near its end: without it the file is cut short. */
final class ZipEnd {
    private static final byte[] MARK = {'P', 'K', 5, 6};
    /** From the mark to the end of the file, at least, and with the longest comment. */
    private static final int LEAST_BYTES = 22;

    private static final int MOST_BYTES = LEAST_BYTES + 0xFFFF;

    private ZipEnd() {}

    static boolean isThere(byte[] bytes) {
        for (int at = bytes.length - LEAST_BYTES; at >= Math.max(0, bytes.length - MOST_BYTES); at--) {
            if (isMark(bytes, at)) {
                return true;
            }
        }
        return false;
    }

    private static boolean isMark(byte[] bytes, int at) {
        for (int index = 0; index < MARK.length; index++) {
            if (bytes[at + index] != MARK[index]) {
                return false;
            }
        }
        return true;
    }
}
