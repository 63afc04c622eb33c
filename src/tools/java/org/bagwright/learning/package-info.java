/** Hidden golfers, whose truth is known, against what the program learns of them from their shots. */
package org.bagwright.learning;
