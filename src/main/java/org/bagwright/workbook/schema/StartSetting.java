package org.bagwright.workbook.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.bagwright.domain.text.CloseNames;

/** One labelled value of the sheet Start, in the template's order. */
public enum StartSetting {
    TITLE("Title", "", "Your own title for this book.", "no title"),
    DISTANCE("Distance", "yd", "Unit of carries and gaps: yd or m.", "yd", "yd", "m"),
    SPEED("Speed", "mph", "Unit of head and ball speeds: mph, m/s or km/h.", "mph", "mph", "m/s", "km/h"),
    LENGTH("Length", "in", "Unit of club lengths: in or mm.", "in", "in", "mm"),
    TEMPERATURE("Temperature", "C", "Unit of the air temperature: C or F.", "C", "C", "F"),
    AIR_TEMPERATURE("Air temperature", "20", "Temperature where the shots fly, in the unit above.", "20 C (68 F)"),
    ALTITUDE("Altitude", "0", "Height above sea level in metres, or in feet written as 300 ft.", "sea level"),
    HUMIDITY("Humidity", "50", "Relative humidity in percent.", "50"),
    HEAD_WIND("Head wind", "0", "Wind against the shot in the speed unit above; negative is a tail wind.", "0"),
    CROSS_WIND("Cross wind", "0", "Wind from the left, seen towards the target; negative is from the right.", "0"),
    BALL_MODEL(
            "Ball model",
            "Bearman-Harvey",
            "Bearman-Harvey, or Smits-Smith (fitted to drivers: it flies irons 10 to 20 yd too far).",
            "Bearman-Harvey",
            "Bearman-Harvey",
            "Smits-Smith"),
    LENGTH_LIMIT(
            "Rules length limit",
            "48",
            "Longest club allowed, inches: 48, or 46 under the local rule.",
            "48",
            "48",
            "46"),
    MATCH_BY(
            "Match by",
            "swingweight",
            "What should be alike where the sheet Aims counts spread: swingweight or inertia.",
            "swingweight",
            "swingweight",
            "inertia"),
    MATCH_OVER(
            "Match over",
            "kind",
            "Among which clubs: kind (each kind by itself), irons (with wedges) or bag. Never the putter.",
            "kind",
            "kind",
            "irons",
            "bag"),
    PLAN_FOR(
            "Plan for",
            "what is likely",
            "what is likely: what is not known counts too. best guess: every carry counts as known.",
            "what is likely",
            "what is likely",
            "best guess"),
    SHOT_HEADINGS(
            "Shot headings",
            "",
            "What headings of your files of shots mean, as add-shots --column has learnt: Flight = Carry.",
            "none");

    /** The name of the sheet. */
    public static final String SHEET = "Start";

    private final String label;
    private final String usual;
    private final String help;
    private final String blank;

    @SuppressWarnings("ImmutableEnumChecker") // List.of gives a list that cannot change
    private final List<String> words;

    StartSetting(String label, String usual, String help, String blank, String... words) {
        this.label = label;
        this.usual = usual;
        this.help = help;
        this.blank = blank;
        this.words = List.of(words);
    }

    public String label() {
        return label;
    }

    /** What the template fills in. */
    public String usual() {
        return usual;
    }

    public String help() {
        return help;
    }

    /** What a blank cell means. */
    public String blank() {
        return blank;
    }

    /** The values it may have, where they are few. */
    public List<String> words() {
        return words;
    }

    /** The setting with this label, whatever its letter case, spaces, hyphens and plural. */
    public static Optional<StartSetting> labelled(String text) {
        String letters = SheetSchema.letters(text);
        return Arrays.stream(values())
                .filter(setting -> SheetSchema.letters(setting.label).equals(letters))
                .findFirst();
    }

    /** The setting whose label a text, which is none, is probably a slip of. */
    public static Optional<StartSetting> closest(String text) {
        List<String> labels = Arrays.stream(values()).map(StartSetting::label).toList();
        return CloseNames.closest(text, labels).flatMap(StartSetting::labelled);
    }
}
