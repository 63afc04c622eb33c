/**
 * Whole files: written in one step or not at all, backed up, locked, watched. Paths and bytes come in, paths and
 * bytes go out; this package knows nothing of workbooks. Imports {@code domain.book} and {@code domain.units}.
 */
package org.bagwright.files;
