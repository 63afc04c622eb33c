/**
 * The sheet Ladder: tables and charts of carries, gaps and sleeves, golfer by golfer. What a plan has found comes in, a filled
 * sheet goes out. Imports {@code plan}, {@code pen}, {@code schema} and {@code domain}.
 */
package org.bagwright.workbook.ladder;
