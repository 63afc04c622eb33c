/**
 * The pages for readers in src/docs: their pictures and numbers, made by the program's own code.
 *
 * <p>{@link org.bagwright.docs.WhyPage} makes them anew; its test holds what is committed to what the code makes.
 */
package org.bagwright.docs;
