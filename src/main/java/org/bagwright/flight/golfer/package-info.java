/**
 * One golfer: how he delivers each club, fitted to his shots, and the shots that options give him. Shots and clubs
 * come in, predictions go out. Imports {@code flight}.
 */
package org.bagwright.flight.golfer;
