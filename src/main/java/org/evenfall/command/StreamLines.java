package org.evenfall.command;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.evenfall.store.InputText;
import org.jspecify.annotations.Nullable;

/** Standard input line by line. Of a line that is too long no more is held than shows that it is. */
final class StreamLines {

    private final InputStream in;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int end;
    private boolean afterReturn;

    StreamLines(InputStream in) {
        this.in = in;
    }

    /** The bytes of the next line, one more than the limit at most; null at the end of input. */
    byte @Nullable [] next() throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        boolean any = false;
        for (int next = read(); next >= 0; next = read()) {
            boolean second = afterReturn && next == '\n';
            afterReturn = next == '\r';
            if (second) {
                // the second half of one line end
                continue;
            }
            any = true;
            if (next == '\n' || next == '\r') {
                return line.toByteArray();
            }
            if (line.size() <= InputText.MOST_BYTES) {
                line.write(next);
            }
        }
        return any ? line.toByteArray() : null;
    }

    /** The next byte as 0 to 255; -1 at the end of input. */
    private int read() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(buffer));
            if (end == 0) {
                return -1;
            }
        }
        return buffer[at++] & 0xff;
    }
}
