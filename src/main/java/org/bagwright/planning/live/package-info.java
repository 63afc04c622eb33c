/**
 * What a person chose on the sheet Plan: checked against the options, or taken as today. Imports
 * {@code options} and {@code domain}.
 */
package org.bagwright.planning.live;
