/**
 * The use cases in order: read, compute options, search, write. A file comes in, a result and its file go out. Imports
 * everything but {@code cli}.
 */
package org.bagwright.planning;
