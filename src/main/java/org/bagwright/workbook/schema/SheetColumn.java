package org.bagwright.workbook.schema;

import java.util.List;
import java.util.Optional;
import org.bagwright.domain.units.Limit;
import org.bagwright.workbook.text.Quantity;

/** A column that the reader of its sheet knows by name. */
public interface SheetColumn extends Column {
    ColumnSpec spec();

    @Override
    default String header() {
        return spec().header();
    }

    @Override
    default Kind kind() {
        return spec().kind();
    }

    @Override
    default List<String> alsoCalled() {
        return spec().alsoCalled();
    }

    @Override
    default Quantity quantity() {
        return spec().quantity();
    }

    @Override
    default Optional<Limit> limit() {
        return spec().limit();
    }

    @Override
    default List<String> words() {
        return spec().words();
    }

    @Override
    default String help() {
        return spec().help();
    }

    @Override
    default String blank() {
        return spec().blank();
    }

    @Override
    default boolean needed() {
        return spec().needed();
    }
}
