/** Names and numbers as people write and read them, the same in every locale. Imports nothing of the program. */
package org.bagwright.domain.text;
