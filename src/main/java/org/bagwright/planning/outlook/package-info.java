/**
 * How planned carries answer to small changes and how certain gaps are. Imports {@code options} and {@code flight}.
 */
package org.bagwright.planning.outlook;
