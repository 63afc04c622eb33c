/**
 * Costs in whole numbers and the rules that make them. Points and tolerances come in, costs that add up in any order
 * go out. Imports {@code domain}.
 */
package org.bagwright.search.score;
