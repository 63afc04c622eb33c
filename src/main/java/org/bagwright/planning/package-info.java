/** The use cases in order: read, compute options, search, write. */
package org.bagwright.planning;
