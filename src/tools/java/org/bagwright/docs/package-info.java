/**
 * The pages for readers in src/docs: their pictures and numbers, made by the program's own code.
 *
 * <p>{@link org.bagwright.docs.WhyPage} makes them; its test compares what is committed with what the code makes.
 */
package org.bagwright.docs;
