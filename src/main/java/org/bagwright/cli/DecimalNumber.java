package org.bagwright.cli;

import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A number with a decimal point or comma. */
final class DecimalNumber implements ITypeConverter<Double> {
    private static final Pattern SHAPE = Pattern.compile("[+-]?(\\d+([.,]\\d*)?|[.,]\\d+)");
    /** May be one thousand or one. */
    private static final Pattern EITHER = Pattern.compile("[+-]?[1-9]\\d{0,2},\\d{3}");

    @Override
    public Double convert(String typed) {
        String text = typed.strip();
        if (!SHAPE.matcher(text).matches() || EITHER.matcher(text).matches()) {
            throw new TypeConversionException("expected a number such as 2.5");
        }
        return Double.valueOf(text.replace(',', '.'));
    }
}
