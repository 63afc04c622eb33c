/**
 * The exact search of several bags that share a stock: prices, columns and their combination. Imports {@code exact}.
 */
package org.bagwright.search.team;
