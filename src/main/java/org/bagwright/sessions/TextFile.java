package org.bagwright.sessions;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A file of text in an encoding that is found out: UTF-8, UTF-16 with its mark, or Windows-1252.
 *
 * @param path the file
 */
record TextFile(Path path) {
    private static final int MOST_BYTES = 32 << 20;
    private static final int MOST_LINE_CHARS = 20_000;
    private static final char BYTE_ORDER_MARK = '\uFEFF';
    private static final String EXPECTED = "; expected a table of shots as text (.csv) or a workbook (.xlsx, .xls).";

    /** The text, without a mark of its encoding. */
    String text() throws SessionFileException {
        String text = decoded(bytes());
        String plain = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
        checkCharacters(plain);
        if (plain.isBlank()) {
            throw bad("the file is empty" + EXPECTED);
        }
        return plain;
    }

    /** The name of the file alone. */
    String name() {
        return String.valueOf(path.getFileName() == null ? path : path.getFileName());
    }

    SessionFileException bad(String text) {
        return new SessionFileException(name(), text);
    }

    private byte[] bytes() throws SessionFileException {
        if (Files.isDirectory(path)) {
            throw bad("this is a folder" + EXPECTED);
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw bad("this is a device or a pipe" + EXPECTED);
        }
        try (InputStream input = Files.newInputStream(path)) {
            byte[] bytes = Files.size(path) > MOST_BYTES ? new byte[0] : input.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES || (bytes.length == 0 && Files.size(path) > 0)) {
                throw bad("the file is larger than " + (MOST_BYTES >> 20) + " MB; split it, or save only the table of"
                        + " shots.");
            }
            return bytes;
        } catch (NoSuchFileException missing) {
            throw bad("there is no such file" + EXPECTED);
        } catch (AccessDeniedException denied) {
            throw bad("you have no permission to read the file, or another program has locked it.");
        } catch (IOException failed) {
            throw bad("the file cannot be read: " + failed.getMessage());
        }
    }

    private String decoded(byte[] bytes) throws SessionFileException {
        if (startsWith(bytes, 0xFF, 0xFE) || startsWith(bytes, 0xFE, 0xFF)) {
            return decoded(bytes, StandardCharsets.UTF_16, "UTF-16");
        }
        try {
            return decoder(StandardCharsets.UTF_8, bytes);
        } catch (CharacterCodingException other) {
            return decoded(bytes, Charset.forName("windows-1252"), "UTF-8, UTF-16 or Windows-1252");
        }
    }

    private static boolean startsWith(byte[] bytes, int first, int second) {
        return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private String decoded(byte[] bytes, Charset charset, String called) throws SessionFileException {
        try {
            return decoder(charset, bytes);
        } catch (CharacterCodingException broken) {
            throw bad("this is no text in " + called + EXPECTED);
        }
    }

    private static String decoder(Charset charset, byte[] bytes) throws CharacterCodingException {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes))
                .toString();
    }

    /** Refuses what no table of text has: control characters, and lines that no person writes. */
    private void checkCharacters(String text) throws SessionFileException {
        int line = 1;
        int length = 0;
        for (int index = 0; index < text.length(); index++) {
            char found = text.charAt(index);
            if (found < ' ' && "\t\r\n\f".indexOf(found) < 0) {
                throw bad(String.format(
                        Locale.ROOT,
                        "line %d has the character 0x%02X, so this is no text (a picture, a zip file, or UTF-16 without"
                                + " its mark)%s",
                        line,
                        (int) found,
                        EXPECTED));
            }
            boolean ends = found == '\n' || found == '\r';
            length = ends ? 0 : length + 1;
            line += found == '\n' ? 1 : 0;
            if (length > MOST_LINE_CHARS) {
                throw bad("line " + line + " is longer than " + MOST_LINE_CHARS + " characters" + EXPECTED);
            }
        }
    }
}
