/** Floor 4: pages of any content: layout, tagged PDF/A, typefaces, QR code, page pictures, printer. Knows no content. */
@NullMarked
package org.evenfall.page;

import org.jspecify.annotations.NullMarked;
