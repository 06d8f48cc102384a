/** The program's entry: {@code Main} builds the object graph by hand and opens one of the two faces. */
@org.jspecify.annotations.NullMarked
package org.evenfall;
