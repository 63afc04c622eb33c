/** The choice of one option for every club of a bag. The only user of OptaPlanner; it only looks numbers up. */
package org.bagwright.search;
