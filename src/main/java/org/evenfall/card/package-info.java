/** Floor 4: the cab card: content, layout, PDF, QR code, signature. */
@NullMarked
package org.evenfall.card;

import org.jspecify.annotations.NullMarked;
