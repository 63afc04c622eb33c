/**
 * The exact search of one bag: chain, intervals of group means, labels, branch and bound; also the clock and the meter
 * that end it, and the problem and the result of bags searched together. An exact bag comes in, the best choice and its
 * bound go out. Imports {@code score} and {@code domain}.
 */
package org.bagwright.search.exact;
