package org.evenfall.card;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The person's signing key in their own folder, and the keys known here. The passphrase of a closed key is kept in memory
 * only, while the program runs. A key that is replaced is put aside, never deleted.
 */
public final class KeyRing {

    /** Whether there is a key and whether it can sign. */
    public enum State {
        NONE,
        OPEN,
        LOCKED,
        UNREADABLE
    }

    /**
     * The key as a person may see it.
     *
     * @param state whether it can sign
     * @param code its short code, empty unless it is open
     * @param name name in its certificate
     * @param until last day of its certificate, ISO date
     * @param closed whether a passphrase closes it
     */
    public record Status(State state, String code, String name, String until, boolean closed) {}

    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmssSSS", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Path file;
    private final KnownKeys known;
    private char[] passphrase = new char[0];
    private @Nullable SigningKey open;

    /** @param folder the person's own folder */
    public KeyRing(Path folder) {
        this.file = folder.resolve("signing-key.p12");
        this.known = new KnownKeys(folder.resolve("known-keys.txt"));
    }

    public synchronized Status status() {
        State state = State.NONE;
        if (Files.exists(file)) {
            try {
                SigningKey key = key();
                return new Status(
                        State.OPEN,
                        key.code(),
                        key.name(),
                        key.certificate()
                                .getNotAfter()
                                .toInstant()
                                .atZone(ZoneOffset.UTC)
                                .toLocalDate()
                                .toString(),
                        passphrase.length > 0);
            } catch (KeyException trouble) {
                state = trouble.kind() == KeyException.Kind.LOCKED ? State.LOCKED : State.UNREADABLE;
            }
        }
        return new Status(state, "", "", "", state == State.LOCKED);
    }

    /**
     * The key to sign with; made on first use.
     *
     * @param name who signs, for the certificate of a new key
     * @param role role, may be empty
     * @param now when a new key is made
     */
    public synchronized SigningKey signing(String name, String role, Instant now) throws KeyException {
        if (!Files.exists(file)) {
            put(fresh(name, role, now), new char[0], now);
        }
        return key();
    }

    /** Opens a closed key for as long as the program runs. */
    public synchronized void unlock(char[] given) throws KeyException {
        open = SigningKeys.load(file, given);
        passphrase = given.clone();
        remember(open);
    }

    /** Closes the key by another passphrase from now on; an empty one closes it no more. */
    public synchronized void protect(char[] fresh) throws KeyException {
        SigningKey key = key();
        try {
            PrivateFiles.replace(file, SigningKeys.store(key, fresh));
        } catch (IOException notWritten) {
            throw new KeyException(KeyException.Kind.NOT_WRITTEN, notWritten);
        }
        passphrase = fresh.clone();
    }

    /** Signs from now on with a key of one's own from a PKCS#12 file; it is kept here under the same passphrase. */
    public synchronized void importKey(Path other, char[] given, Instant now) throws KeyException {
        SigningKey key = SigningKeys.load(other, given);
        if (given.length == 0 && key.equals(open)) {
            return;
        }
        put(key, given, now);
    }

    /** Signs from now on with a new key: the old one was lost, or somebody else may have it. */
    public synchronized void renew(String name, String role, char[] closedBy, Instant now) throws KeyException {
        put(fresh(name, role, now), closedBy, now);
    }

    /** Code to name of every key known here, own ones too. */
    public synchronized Map<String, String> known() {
        return known.all();
    }

    /** Codes of the keys known here. */
    public synchronized Set<String> codes() {
        Set<String> codes = new LinkedHashSet<>(known.all().keySet());
        Status status = status();
        if (status.state() == State.OPEN) {
            codes.add(status.code());
        }
        return codes;
    }

    /** Knows another person's key from now on. */
    public synchronized void remember(String code, String name) throws KeyException {
        try {
            known.add(code, name);
        } catch (IOException notWritten) {
            throw new KeyException(KeyException.Kind.NOT_WRITTEN, notWritten);
        }
    }

    public synchronized void forget(String code) throws KeyException {
        try {
            known.remove(code);
        } catch (IOException notWritten) {
            throw new KeyException(KeyException.Kind.NOT_WRITTEN, notWritten);
        }
    }

    private SigningKey key() throws KeyException {
        SigningKey key = open;
        if (key == null) {
            try {
                key = SigningKeys.load(file, passphrase);
            } catch (KeyException trouble) {
                throw trouble.kind() == KeyException.Kind.WRONG_PASSPHRASE
                        ? new KeyException(KeyException.Kind.LOCKED, trouble)
                        : trouble;
            }
            open = key;
        }
        return key;
    }

    private static SigningKey fresh(String name, String role, Instant now) throws KeyException {
        try {
            return SigningKeys.make(name, role, now);
        } catch (IOException impossible) {
            throw new KeyException(KeyException.Kind.UNREADABLE, impossible);
        }
    }

    private void put(SigningKey key, char[] closedBy, Instant now) throws KeyException {
        try {
            byte[] bytes = SigningKeys.store(key, closedBy);
            Path aside = file.resolveSibling("signing-key-until-" + STAMP.format(now) + ".p12");
            boolean before = Files.exists(file);
            if (before) {
                Files.move(file, aside);
            }
            try {
                PrivateFiles.writeNew(file, bytes);
            } catch (IOException notWritten) {
                if (before) {
                    Files.move(aside, file);
                }
                throw notWritten;
            }
        } catch (KeyException trouble) {
            throw trouble;
        } catch (IOException notWritten) {
            throw new KeyException(KeyException.Kind.NOT_WRITTEN, notWritten);
        }
        open = key;
        passphrase = closedBy.clone();
        remember(key);
    }

    private void remember(SigningKey key) throws KeyException {
        if (!known.all().containsKey(key.code())) {
            remember(key.code(), key.name());
        }
    }
}
