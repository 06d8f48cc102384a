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
        while (fill()) {
            if (afterReturn && buffer[at] == '\n') {
                // the second half of one line end
                at++;
                afterReturn = false;
                continue;
            }
            afterReturn = false;
            any = true;
            int stop = lineEnd();
            line.write(buffer, at, Math.min(stop - at, InputText.MOST_BYTES + 1 - line.size()));
            at = stop;
            if (stop < end) {
                afterReturn = buffer[stop] == '\r';
                at++;
                return line.toByteArray();
            }
        }
        return any ? line.toByteArray() : null;
    }

    /** The place of the first line end in the buffer; its end where it has none. */
    private int lineEnd() {
        int stop = at;
        while (stop < end && buffer[stop] != '\n' && buffer[stop] != '\r') {
            stop++;
        }
        return stop;
    }

    /** False at the end of input. */
    private boolean fill() throws IOException {
        if (at == end) {
            at = 0;
            end = Math.max(0, in.read(buffer));
        }
        return at < end;
    }
}
