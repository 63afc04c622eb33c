/**
 * What a search found: bags as they are and as planned, their scores, gaps, steps and outlook. Imports {@code
 * option}.
 */
package org.bagwright.domain.plan;
