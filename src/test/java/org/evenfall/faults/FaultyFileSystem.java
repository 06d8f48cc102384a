package org.evenfall.faults;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.FileStore;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.nio.file.WatchService;
import java.nio.file.attribute.UserPrincipalLookupService;
import java.nio.file.spi.FileSystemProvider;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** The usual file system with faults: its paths forward every call to it, except the ones that fail. */
public final class FaultyFileSystem extends FileSystem {

    private final FileSystem usual;
    private final FaultyProvider provider;
    private final Faults faults;

    private FaultyFileSystem(FileSystem usual, Faults faults) {
        this.usual = usual;
        this.faults = faults;
        this.provider = new FaultyProvider(this, usual.provider(), faults);
    }

    /** The same place as a path of the usual file system, in one with these faults. */
    public static Path path(Path real, Faults faults) {
        return new FaultyFileSystem(real.getFileSystem(), faults).wrap(real);
    }

    /** What is behind a path of such a file system. */
    private interface Wrapped {
        Path real();
    }

    static Path real(Path path) {
        return path instanceof Wrapped wrapped ? wrapped.real() : path;
    }

    Path wrap(Path real) {
        return (Path) Proxy.newProxyInstance(
                FaultyFileSystem.class.getClassLoader(),
                new Class<?>[] {Path.class, Wrapped.class},
                (proxy, method, arguments) -> call(real, method, arguments));
    }

    private Object call(Path real, Method method, Object[] arguments) throws Throwable {
        switch (method.getName()) {
            case "real":
                return real;
            case "getFileSystem":
                return this;
            case "iterator":
                List<Path> names = new ArrayList<>();
                real.forEach(name -> names.add(wrap(name)));
                return names.iterator();
            case "toFile":
                throw new UnsupportedOperationException(method.getName());
            case "toRealPath":
                faults.before(FileCall.REAL_PATH, real);
                break;
            default:
                break;
        }
        Object[] given = arguments == null ? new Object[0] : arguments.clone();
        for (int i = 0; i < given.length; i++) {
            given[i] = given[i] instanceof Path path ? real(path) : given[i];
        }
        try {
            Object answer = method.invoke(real, given);
            return answer instanceof Path path ? wrap(path) : answer;
        } catch (InvocationTargetException thrown) {
            throw thrown.getCause();
        }
    }

    @Override
    public FileSystemProvider provider() {
        return provider;
    }

    @Override
    public void close() throws IOException {
        // the usual one stays open
    }

    @Override
    public boolean isOpen() {
        return true;
    }

    @Override
    public boolean isReadOnly() {
        return false;
    }

    @Override
    public String getSeparator() {
        return usual.getSeparator();
    }

    @Override
    public Iterable<Path> getRootDirectories() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Iterable<FileStore> getFileStores() {
        throw new UnsupportedOperationException();
    }

    @Override
    public Set<String> supportedFileAttributeViews() {
        return usual.supportedFileAttributeViews();
    }

    @Override
    public Path getPath(String first, String... more) {
        return wrap(usual.getPath(first, more));
    }

    @Override
    public PathMatcher getPathMatcher(String pattern) {
        PathMatcher matcher = usual.getPathMatcher(pattern);
        return path -> matcher.matches(real(path));
    }

    @Override
    public UserPrincipalLookupService getUserPrincipalLookupService() {
        return usual.getUserPrincipalLookupService();
    }

    @Override
    public WatchService newWatchService() {
        throw new UnsupportedOperationException();
    }
}
