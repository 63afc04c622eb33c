/**
 * Why a plan is as it is: steps, other plans, what holds it back, musts in conflict. Imports {@code options},
 * {@code search} and {@code domain}.
 */
package org.bagwright.planning.reasons;
