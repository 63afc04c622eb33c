/**
 * One golfer learned from all his shots at once: what is unknown of him, how his shots depend on it, and what is known after
 * the shots. Clubs as they are and shots come in; the likeliest golfer and how far he may be off go out. Read {@code Unknown}
 * first, then {@code Learning}. Imports {@code flight} and {@code domain}.
 */
package org.bagwright.flight.learning;
