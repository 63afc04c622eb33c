package org.bagwright.docs;

/** The colours of the result sheets, which stay apart in grey print too. */
final class Palette {
    static final String INK = "#22313A";
    static final String SLATE = "#3D5A66";
    static final String FAINT = "#6B7B83";
    static final String RULE = "#B9C6CB";
    static final String MIST = "#E4EBED";
    static final String SAND = "#FBF3DC";
    static final String AMBER = "#C98A2D";
    static final String PAPER = "#FFFFFF";
    static final String NONE = "none";

    private Palette() {}
}
