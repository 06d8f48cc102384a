package org.evenfall.faults;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.net.URI;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.AccessMode;
import java.nio.file.CopyOption;
import java.nio.file.DirectoryStream;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileAttributeView;
import java.nio.file.spi.FileSystemProvider;
import java.util.Map;
import java.util.Set;

/** The calls of a {@link FaultyFileSystem}. */
final class FaultyProvider extends FileSystemProvider {

    private final FaultyFileSystem system;
    private final FileSystemProvider usual;
    private final Faults faults;

    FaultyProvider(FaultyFileSystem system, FileSystemProvider usual, Faults faults) {
        this.system = system;
        this.usual = usual;
        this.faults = faults;
    }

    private Path before(FileCall call, Path path) throws IOException {
        Path real = FaultyFileSystem.real(path);
        faults.before(call, real);
        return real;
    }

    @Override
    public FileChannel newFileChannel(Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        boolean write = options.contains(StandardOpenOption.WRITE) || options.contains(StandardOpenOption.APPEND);
        Path real = before(write ? FileCall.OPEN_TO_WRITE : FileCall.OPEN_TO_READ, path);
        return new FaultyChannel(usual.newFileChannel(real, options, attributes), faults, real);
    }

    @Override
    public SeekableByteChannel newByteChannel(
            Path path, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException {
        return newFileChannel(path, options, attributes);
    }

    @Override
    public DirectoryStream<Path> newDirectoryStream(Path folder, DirectoryStream.Filter<? super Path> filter)
            throws IOException {
        Path real = before(FileCall.LIST_FOLDER, folder);
        DirectoryStream<Path> stream = usual.newDirectoryStream(real, one -> filter.accept(system.wrap(one)));
        return new FaultyFolder(stream, system, faults, real);
    }

    @Override
    public void createDirectory(Path folder, FileAttribute<?>... attributes) throws IOException {
        usual.createDirectory(before(FileCall.CREATE_FOLDER, folder), attributes);
    }

    @Override
    public void delete(Path path) throws IOException {
        usual.delete(before(FileCall.DELETE, path));
    }

    @Override
    public void copy(Path source, Path target, CopyOption... options) throws IOException {
        usual.copy(before(FileCall.COPY, source), FaultyFileSystem.real(target), options);
    }

    @Override
    public void move(Path source, Path target, CopyOption... options) throws IOException {
        usual.move(before(FileCall.MOVE, source), FaultyFileSystem.real(target), options);
    }

    @Override
    public void checkAccess(Path path, AccessMode... modes) throws IOException {
        usual.checkAccess(before(FileCall.CHECK_ACCESS, path), modes);
    }

    @Override
    public <A extends BasicFileAttributes> A readAttributes(Path path, Class<A> type, LinkOption... options)
            throws IOException {
        return usual.readAttributes(before(FileCall.READ_ATTRIBUTES, path), type, options);
    }

    @Override
    public Map<String, Object> readAttributes(Path path, String attributes, LinkOption... options) throws IOException {
        return usual.readAttributes(before(FileCall.READ_ATTRIBUTES, path), attributes, options);
    }

    @Override
    public void setAttribute(Path path, String attribute, Object value, LinkOption... options) throws IOException {
        usual.setAttribute(before(FileCall.SET_ATTRIBUTES, path), attribute, value, options);
    }

    @Override
    public <V extends FileAttributeView> V getFileAttributeView(Path path, Class<V> type, LinkOption... options) {
        Path real = FaultyFileSystem.real(path);
        V view = usual.getFileAttributeView(real, type, options);
        return view == null
                ? null
                : type.cast(Proxy.newProxyInstance(
                        type.getClassLoader(), new Class<?>[] {type}, (proxy, method, arguments) -> {
                            faults.before(
                                    method.getName().startsWith("set")
                                            ? FileCall.SET_ATTRIBUTES
                                            : FileCall.READ_ATTRIBUTES,
                                    real);
                            try {
                                return method.invoke(view, arguments);
                            } catch (InvocationTargetException thrown) {
                                throw thrown.getCause();
                            }
                        }));
    }

    @Override
    public boolean isSameFile(Path one, Path other) throws IOException {
        return usual.isSameFile(before(FileCall.READ_ATTRIBUTES, one), FaultyFileSystem.real(other));
    }

    @Override
    public boolean isHidden(Path path) throws IOException {
        return usual.isHidden(before(FileCall.READ_ATTRIBUTES, path));
    }

    @Override
    public FileStore getFileStore(Path path) throws IOException {
        return usual.getFileStore(before(FileCall.READ_ATTRIBUTES, path));
    }

    @Override
    public String getScheme() {
        return "faulty";
    }

    @Override
    public FileSystem newFileSystem(URI uri, Map<String, ?> environment) {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileSystem getFileSystem(URI uri) {
        return system;
    }

    @Override
    public Path getPath(URI uri) {
        throw new UnsupportedOperationException();
    }
}
