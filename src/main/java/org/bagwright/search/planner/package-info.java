/** OptaPlanner: constraints, moves and solver configuration. Imports {@code model} and {@code score}. */
package org.bagwright.search.planner;
