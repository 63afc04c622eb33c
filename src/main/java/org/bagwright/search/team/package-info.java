/**
 * The exact search of bags that share a stock: prices, columns and their combination. A problem of exact bags comes in, a
 * choice with its bound goes out. Imports {@code exact} and {@code score}.
 */
package org.bagwright.search.team;
