package org.evenfall.network;

import java.net.InetAddress;
import java.security.Permission;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * Refuses and records every connection and every look-up of a name, as the JDK asks before each of them; allows all else.
 * The end of the process is caught too, so that one process runs several commands.
 */
@SuppressWarnings({"removal", "deprecation"})
final class NoNetwork extends SecurityManager {

    private final List<String> tried = new CopyOnWriteArrayList<>();
    private volatile boolean mayEnd;

    /** A command has ended, with this exit code. */
    static final class Ended extends SecurityException {

        private static final long serialVersionUID = 1;
        private final int code;

        private Ended(int code) {
            super("ended");
            this.code = code;
        }

        int code() {
            return code;
        }
    }

    List<String> tried() {
        return tried;
    }

    void letEnd() {
        mayEnd = true;
    }

    private void refuse(String what) {
        tried.add(what);
        throw new SecurityException("no network: " + what);
    }

    @Override
    public void checkExit(int status) {
        if (!mayEnd) {
            throw new Ended(status);
        }
    }

    @Override
    public void checkConnect(String host, int port) {
        refuse("connect " + host + " " + port);
    }

    @Override
    public void checkConnect(String host, int port, Object context) {
        refuse("connect " + host + " " + port);
    }

    @Override
    public void checkListen(int port) {
        refuse("listen " + port);
    }

    @Override
    public void checkAccept(String host, int port) {
        refuse("accept " + host + " " + port);
    }

    @Override
    public void checkMulticast(InetAddress address) {
        refuse("multicast " + address);
    }

    @Override
    public void checkPermission(Permission permission) {
        // all else is allowed
    }

    @Override
    public void checkPermission(Permission permission, Object context) {
        // all else is allowed
    }
}
