package org.bagwright.planning;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By what two contents of a file are told apart. */
final class Sha256 {
    private Sha256() {}

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    static String of(byte[] bytes) {
        return text(digest().digest(bytes));
    }

    static String text(byte[] sum) {
        return HexFormat.of().formatHex(sum);
    }
}
