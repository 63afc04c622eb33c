/**
 * OptaPlanner: constraints, moves and solver configuration. A team and a choice to start from come in, a better choice
 * goes out. Imports {@code model}, {@code exact} (the clock) and {@code score}.
 */
package org.bagwright.search.planner;
