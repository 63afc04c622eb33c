/**
 * What differs between planned books: golfer by golfer and club by club, in set-up, wishes and points. Planned books come in,
 * fields that differ go out. Imports the other parts of {@code domain}.
 */
package org.bagwright.domain.compare;
