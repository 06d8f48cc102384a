package org.evenfall.faults;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.Path;
import java.util.Optional;

/** A file open in a {@link FaultyFileSystem}. Nothing is forced to the disk, so that tests are quick. */
final class FaultyChannel extends FileChannel {

    private final FileChannel usual;
    private final Faults faults;
    private final Path path;

    FaultyChannel(FileChannel usual, Faults faults, Path path) {
        this.usual = usual;
        this.faults = faults;
        this.path = path;
    }

    @Override
    public int read(ByteBuffer to) throws IOException {
        return faults.before(FileCall.READ, path).isPresent() ? -1 : usual.read(to);
    }

    @Override
    public int write(ByteBuffer from) throws IOException {
        Optional<FaultWay> fault = faults.before(FileCall.WRITE, path);
        if (fault.isEmpty()) {
            return usual.write(from);
        }
        ByteBuffer half = from.slice(from.position(), from.remaining() / 2);
        int written = usual.write(half);
        from.position(from.position() + written);
        fault.get().fail(path.toString());
        return written;
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        faults.before(FileCall.TRUNCATE, path);
        usual.truncate(size);
        return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        faults.before(FileCall.FORCE, path);
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) throws IOException {
        faults.before(FileCall.LOCK, path);
        return usual.lock(position, size, shared);
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) throws IOException {
        faults.before(FileCall.LOCK, path);
        return usual.tryLock(position, size, shared);
    }

    @Override
    protected void implCloseChannel() throws IOException {
        usual.close();
        faults.before(FileCall.CLOSE, path);
    }

    @Override
    public long position() throws IOException {
        return usual.position();
    }

    @Override
    public FileChannel position(long to) throws IOException {
        usual.position(to);
        return this;
    }

    @Override
    public long size() throws IOException {
        return usual.size();
    }

    @Override
    public long read(ByteBuffer[] to, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int read(ByteBuffer to, long position) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] from, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int write(ByteBuffer from, long position) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel to) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel from, long position, long count) {
        throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException();
    }
}
