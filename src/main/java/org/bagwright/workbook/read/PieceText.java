package org.bagwright.workbook.read;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bagwright.workbook.text.NumberText;
import org.bagwright.workbook.text.Quantity;

/**
 * A piece as people write it: {@code Kit: 12}, {@code Kit 12 g}, {@code Kit: 12 g}, or {@code 12 g}.
 *
 * @param text all that was written
 * @param kit what is written before the mass, if anything
 * @param massKg the mass, kilograms
 * @param hasUnit whether a unit is written behind the mass; grams are meant without one
 */
record PieceText(String text, Optional<String> kit, double massKg, boolean hasUnit) {
    private static final Pattern SHAPE = Pattern.compile("(.*?)\\s*:?\\s*([+-]?\\d[\\d.,]*\\s*\\p{L}*)");

    static Optional<PieceText> parse(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            return Optional.empty();
        }
        Optional<String> kit = Optional.of(shape.group(1)).filter(name -> !name.isEmpty());
        return NumberText.parse(shape.group(2), Quantity.MASS)
                .map(mass -> new PieceText(
                        text,
                        kit,
                        mass.toDomain(Quantity.MASS.unit("g").orElseThrow()),
                        mass.unit().isPresent()));
    }
}
