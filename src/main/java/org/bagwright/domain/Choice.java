package org.bagwright.domain;

import java.util.Optional;

/** What a fitter sets on one club: the mark of the setting, where there is a sleeve, and the bend. */
public record Choice(Optional<String> setting, Bend bend) {}
