package org.bagwright.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** By what two contents of a file are told apart. */
public final class Sha256 {
    private Sha256() {}

    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException never) {
            throw new IllegalStateException("every Java has SHA-256", never);
        }
    }

    public static String of(byte[] bytes) {
        return text(digest().digest(bytes));
    }

    public static String text(byte[] sum) {
        return HexFormat.of().formatHex(sum);
    }
}
