/**
 * How sure the choices of a plan are, and what to measure next. A bag with its options and its plan comes in, the share of
 * likely cases in which each choice is best and the measurements that are worth most go out. Imports {@code domain}.
 */
package org.bagwright.planning.sureness;
