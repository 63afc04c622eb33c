/**
 * One golfer: how he delivers each club, fitted to his shots, and the shots that options give him. Shots and clubs come in,
 * predictions and messages go out. Imports {@code flight.learning}, {@code flight} and {@code domain}.
 */
package org.bagwright.flight.golfer;
