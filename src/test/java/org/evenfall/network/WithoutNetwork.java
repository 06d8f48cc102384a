package org.evenfall.network;

import java.lang.reflect.InvocationTargetException;
import java.net.DatagramSocket;
import java.net.HttpURLConnection;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URL;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.channels.SocketChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** Runs main methods in a process in which every use of the network is refused and reported. */
final class WithoutNetwork {

    static final String THEN = "--then";
    static final String TRIED = "NETWORK ";

    private WithoutNetwork() {}

    /** Arguments: name of a class and its arguments, after each {@value #THEN} another one. */
    @SuppressWarnings("removal")
    public static void main(String[] args) throws Exception {
        NoNetwork guard = new NoNetwork();
        System.setSecurityManager(guard);
        List<String> call = new ArrayList<>();
        for (String argument : args) {
            if (argument.equals(THEN)) {
                run(call);
                call.clear();
            } else {
                call.add(argument);
            }
        }
        run(call);
        guard.tried().forEach(one -> System.out.println(TRIED + one));
        guard.letEnd();
        System.exit(0);
    }

    private static void run(List<String> call) throws Exception {
        int code = 0;
        try {
            Class.forName(call.get(0)).getMethod("main", String[].class).invoke(null, (Object)
                    call.subList(1, call.size()).toArray(new String[0]));
        } catch (InvocationTargetException thrown) {
            if (!(thrown.getCause() instanceof NoNetwork.Ended ended)) {
                throw thrown;
            }
            code = ended.code();
        }
        System.out.println("CODE " + code + " " + String.join(" ", call.subList(1, call.size())));
    }

    /** Uses the network in each way that the JDK has, to a host on this computer or one that does not exist. */
    public static final class Uses {

        private Uses() {}

        /** No arguments. */
        public static void main(String[] args) {
            InetSocketAddress here = new InetSocketAddress(InetAddress.getLoopbackAddress(), 9);
            attempt(() -> new Socket(here.getAddress(), here.getPort()));
            attempt(() -> SocketChannel.open(here));
            attempt(() -> new ServerSocket(0));
            attempt(() -> {
                try (DatagramSocket socket = new DatagramSocket(null)) {
                    socket.connect(here);
                    return socket;
                }
            });
            attempt(() -> InetAddress.getByName("nowhere.invalid"));
            attempt(() -> ((HttpURLConnection) new URL("http://127.0.0.1:9/").openConnection()).getResponseCode());
            attempt(() -> HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(java.net.URI.create("http://127.0.0.1:9/"))
                                    .build(),
                            HttpResponse.BodyHandlers.discarding()));
        }

        private static void attempt(Callable<?> use) {
            try {
                System.out.println("went through: " + use.call());
            } catch (Exception failed) {
                Throwable cause = failed;
                while (cause.getCause() != null && !(cause instanceof SecurityException)) {
                    cause = cause.getCause();
                }
                System.out.println(cause instanceof SecurityException ? "refused" : "failed: " + failed);
            }
        }
    }
}
