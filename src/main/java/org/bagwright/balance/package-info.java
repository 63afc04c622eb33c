/** Mass and balance of heads and whole clubs. */
package org.bagwright.balance;
