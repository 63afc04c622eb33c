/** How fast whole runs are, on books from small to large, and whether two versions of the program plan alike. */
package org.bagwright.speed;
