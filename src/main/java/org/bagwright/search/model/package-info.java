/**
 * A book ready for the search: bags, candidates, slot assignments, stock and the limits of the search. Bags with options
 * come in; a planning problem for the planner and an exact problem for each team go out. Imports {@code exact},
 * {@code score} and {@code domain}.
 */
package org.bagwright.search.model;
