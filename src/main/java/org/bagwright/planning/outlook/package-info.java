/**
 * How planned carries answer to small changes and how certain carries and gaps are. A planned bag comes in, its outlook goes
 * out. Imports {@code options},
 * {@code sureness}, {@code flight} and {@code domain}.
 */
package org.bagwright.planning.outlook;
