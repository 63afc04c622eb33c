/**
 * The exact search of one bag: chain, intervals of group means, labels, branch and bound. An exact bag comes in, the
 * best choice and its bound go out. Imports {@code score}.
 */
package org.bagwright.search.exact;
