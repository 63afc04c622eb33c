/** Benchmarks: {@code mvn -Pbench verify}. */
package org.bagwright.bench;
