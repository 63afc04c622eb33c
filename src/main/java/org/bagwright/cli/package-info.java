/** Arguments, printing and exit codes. */
package org.bagwright.cli;
