/**
 * What a search found: bags as they are and as planned, their scores, gaps, steps and outlook, and the comparison of planned
 * books. Imports {@code option}, {@code book}, {@code club}, {@code units} and {@code text}.
 */
package org.bagwright.domain.plan;
