/** Books with something wrong or odd in them, and random ones. */
package org.bagwright.badbooks;
