package org.bagwright.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Puts into a book's file what the library cannot make: whole parts, relations, pieces of XML. */
final class PartEditor {
    static final String OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final Path file;
    private final BookPackage old;
    private final Map<String, byte[]> parts;

    PartEditor(Path file) throws IOException {
        this.file = file;
        this.old = BookPackage.of(file);
        this.parts = new LinkedHashMap<>(old.parts());
    }

    BookPackage old() {
        return old;
    }

    PartEditor edit(String part, UnaryOperator<String> change) {
        String before = new String(parts.get(part), StandardCharsets.UTF_8);
        String after = change.apply(before);
        if (after.equals(before)) {
            throw new AssertionError("nothing to change in " + part + ": " + before);
        }
        return put(part, after);
    }

    /** As {@link #edit} for one piece of text, which must be there. */
    PartEditor replace(String part, String piece, String by) {
        return edit(part, xml -> xml.replace(piece, by));
    }

    PartEditor put(String part, String content) {
        return put(part, content.getBytes(StandardCharsets.UTF_8));
    }

    PartEditor put(String part, byte[] content) {
        parts.put(part, content);
        return this;
    }

    /** Adds a part with its content type. */
    PartEditor add(String part, String type, String content) {
        replace(
                BookPackage.CONTENT_TYPES,
                "</Types>",
                "<Override PartName=\"/" + part + "\" ContentType=\"" + type + "\"/></Types>");
        return put(part, content);
    }

    PartEditor relate(String owner, String id, String type, String target) {
        int slash = owner.lastIndexOf('/') + 1;
        String list = owner.substring(0, slash) + "_rels/" + owner.substring(slash) + ".rels";
        parts.computeIfAbsent(
                list,
                none ->
                        "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\"></Relationships>"
                                .getBytes(StandardCharsets.UTF_8));
        String mode = target.contains("://") ? "\" TargetMode=\"External\"/>" : "\"/>";
        return replace(
                list,
                "</Relationships>",
                "<Relationship Id=\"" + id + "\" Type=\"" + type + "\" Target=\"" + target + mode + "</Relationships>");
    }

    void write() throws IOException {
        try (OutputStream output = Files.newOutputStream(file);
                ZipOutputStream zip = new ZipOutputStream(output)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue());
                zip.closeEntry();
            }
        }
    }
}
