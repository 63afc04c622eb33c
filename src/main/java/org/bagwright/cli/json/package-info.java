/** What other programs read: one document on standard output; the field names are fixed. Imports {@code domain}. */
package org.bagwright.cli.json;
