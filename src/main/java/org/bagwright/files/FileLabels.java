package org.bagwright.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserDefinedFileAttributeView;

/**
 * What a person or another program has attached to a file, such as tags: its extended attributes.
 *
 * @param file the file that has them
 */
record FileLabels(Path file) {

    /** Gives them to the file that takes its place or keeps its content, as far as the disk knows such a thing. */
    void giveTo(Path fresh) {
        try {
            UserDefinedFileAttributeView from = Files.getFileAttributeView(file, UserDefinedFileAttributeView.class);
            UserDefinedFileAttributeView to = Files.getFileAttributeView(fresh, UserDefinedFileAttributeView.class);
            if (from != null && to != null) {
                for (String name : from.list()) {
                    ByteBuffer value = ByteBuffer.allocate(from.size(name));
                    from.read(name, value);
                    to.write(name, value.flip());
                }
            }
        } catch (IOException notKnown) {
            // The content is what counts.
        }
    }
}
