/**
 * A book ready for the search: slots, candidates, stock, limits and the clock. Bags with options come in. Imports
 * {@code score} and {@code exact}.
 */
package org.bagwright.search.model;
