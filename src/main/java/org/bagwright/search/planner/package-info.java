/**
 * OptaPlanner: constraints, moves, and one solver that plans a team from start to end, with the exact search as one of its
 * phases ({@code SolverSettings} has all of its configuration). A team comes in, a choice with its bound goes out. Imports
 * {@code model}, {@code team}, {@code exact} and {@code score}.
 */
package org.bagwright.search.planner;
