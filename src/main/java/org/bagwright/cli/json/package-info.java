/** What other programs read: one document on standard output; the field names are fixed. Imports {@code text} and {@code domain}. */
package org.bagwright.cli.json;
