/** What is given to people: the launchers, the libraries and their licences. */
package org.bagwright.dist;
