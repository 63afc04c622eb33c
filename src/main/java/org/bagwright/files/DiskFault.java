package org.bagwright.files;

import java.io.IOException;

/** The disk did not take what was written; a fault of whoever writes is not one. */
final class DiskFault extends IOException {
    private static final long serialVersionUID = 1;

    DiskFault(IOException fault) {
        super(fault.getMessage(), fault);
    }

    IOException fault() {
        return (IOException) getCause();
    }
}
