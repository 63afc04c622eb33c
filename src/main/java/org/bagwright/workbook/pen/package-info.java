/** How the tool writes: styles, cells, blocks and charts. Imports {@code domain}. */
package org.bagwright.workbook.pen;
