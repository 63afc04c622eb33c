/** Measures of the code's structure: the table that DEVELOPERS.md asks for, and what ArchitectureTest holds of it. */
package org.bagwright.structure;
