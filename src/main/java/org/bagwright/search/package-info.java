/**
 * The choice of one option for every club of a bag. A book of options comes in, a plan with its bound goes out. The only
 * user of OptaPlanner; only looks numbers up. Imports {@code domain} and its subpackages, of which each imports only
 * those before it: {@code score}, {@code exact}, {@code team}, {@code model}, {@code planner}.
 */
package org.bagwright.search;
