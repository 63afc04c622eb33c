/**
 * The page of a book for the bench: one HTML file with everything in it. A planned book comes in, the file's text goes out.
 * The scripts and styles are under {@code src/main/resources}; they add up what the options cost and compute no physics.
 * Imports {@code domain}.
 */
package org.bagwright.page;
