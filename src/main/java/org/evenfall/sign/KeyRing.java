package org.evenfall.sign;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The person's signing key in their own folder, and the keys known here. The passphrase of a closed key is kept in memory
 * only, while the program runs. A key that is replaced is renamed, never deleted.
 */
public final class KeyRing {

    /** Whether there is a key and whether it can sign. */
    public enum State {
        /** There is no key yet; the first signature makes one. */
        NONE,
        /** The key can sign. */
        OPEN,
        /** The passphrase is needed first. */
        LOCKED,
        /** The file is damaged. */
        UNREADABLE
    }

    /**
     * The key without its secret.
     *
     * @param state whether it can sign
     * @param code its short code, empty unless it is open
     * @param name name in its certificate
     * @param until last day of its certificate, ISO date
     * @param closed whether a passphrase closes it
     * @param wasReadable others could read its file, which was put right
     */
    public record Status(State state, String code, String name, String until, boolean closed, boolean wasReadable) {}

    private static final char[] NO_PASSPHRASE = {};

    private final KeyFile file;
    private final KnownKeys known;
    private final KeyLock lock;
    private boolean wasReadable;
    private char[] passphrase = NO_PASSPHRASE;
    private @Nullable SigningKey open;

    /**
     * The keys of a folder.
     *
     * @param folder the person's own folder; made with the first key
     * @param files writes the key files
     */
    public KeyRing(Path folder, KeyFiles files) {
        this.file = new KeyFile(folder, files);
        this.known = new KnownKeys(folder.resolve("known-keys.txt"), files);
        this.lock = new KeyLock(folder, files);
    }

    /** Whether there is a key, and which. */
    public synchronized Status status() {
        State state = State.NONE;
        if (file.exists()) {
            wasReadable |= file.putRight();
            try {
                SigningKey key = key();
                return new Status(
                        State.OPEN, key.code(), key.name(), key.until().toString(), passphrase.length > 0, wasReadable);
            } catch (KeyException unusable) {
                state = unusable.kind() == KeyException.Kind.LOCKED ? State.LOCKED : State.UNREADABLE;
            }
        }
        return new Status(state, "", "", "", state == State.LOCKED, wasReadable);
    }

    /**
     * The key to sign with; made on first use, once also where several programs want it at the same time.
     *
     * @param name who signs, for the certificate of a new key
     * @param role role, may be empty
     * @param now time at which a new key is made
     * @throws KeyException when the key is closed or damaged, or a new one cannot be written
     */
    public synchronized SigningKey signing(String name, String role, Instant now) throws KeyException {
        if (!file.exists()) {
            written(() -> {
                if (!file.exists()) {
                    renew(name, role, NO_PASSPHRASE, now);
                }
            });
        }
        wasReadable |= file.putRight();
        return key();
    }

    /**
     * Opens a closed key for as long as the program runs.
     *
     * @throws KeyException when the passphrase is wrong or the file is damaged
     */
    public synchronized void unlock(char[] given) throws KeyException {
        open = file.load(given);
        keep(given);
        remember(open);
    }

    /**
     * Closes the key by another passphrase; an empty one leaves it open.
     *
     * @throws KeyException when the key is not open or cannot be written
     */
    public synchronized void protect(char[] fresh) throws KeyException {
        SigningKey key = key();
        written(() -> file.rewrite(key, fresh));
        keep(fresh);
    }

    /**
     * Signs from now on with a key from a PKCS#12 file; it is stored here under the same passphrase.
     *
     * @throws KeyException when the passphrase is wrong, or the file has no key that can sign here
     */
    public synchronized void importKey(Path other, char[] given, Instant now) throws KeyException {
        SigningKey key = SigningKeys.load(other, given);
        if (given.length == 0 && key.equals(open)) {
            return;
        }
        put(key, given, now);
    }

    /**
     * Signs from now on with a new key: the old one was lost, or somebody else may have it.
     *
     * @param closedBy passphrase of the new key, empty for none
     */
    public synchronized void renew(String name, String role, char[] closedBy, Instant now) throws KeyException {
        try {
            put(SigningKeys.make(name, role, now), closedBy, now);
        } catch (KeyException notWritten) {
            throw notWritten;
        } catch (IOException notMade) {
            throw new KeyException(KeyException.Kind.NOT_MADE, notMade);
        }
    }

    /** Code to name of every key known here, own ones too; none when the list cannot be read, which is then kept. */
    public synchronized Map<String, String> known() {
        try {
            return known.all();
        } catch (IOException unreadable) {
            return Map.of();
        }
    }

    /** Codes of the keys known here. */
    public synchronized Set<String> codes() {
        Set<String> codes = new LinkedHashSet<>(known().keySet());
        codes.add(status().code());
        codes.remove("");
        return codes;
    }

    /** Adds another person's key to the known ones. */
    public synchronized void remember(String code, String name) throws KeyException {
        written(() -> known.add(code, name));
    }

    /** Removes a key from the known ones. */
    public synchronized void forget(String code) throws KeyException {
        written(() -> known.remove(code));
    }

    private SigningKey key() throws KeyException {
        SigningKey key = open;
        if (key == null) {
            try {
                key = file.load(passphrase);
            } catch (KeyException unusable) {
                throw unusable.kind() == KeyException.Kind.WRONG_PASSPHRASE
                        ? new KeyException(KeyException.Kind.LOCKED, unusable)
                        : unusable;
            }
            open = key;
        }
        return key;
    }

    private void put(SigningKey key, char[] closedBy, Instant now) throws KeyException {
        written(() -> {
            file.replace(key, closedBy, now);
            open = key;
            keep(closedBy);
            remember(key);
        });
    }

    /** Keeps a copy of the passphrase and overwrites the one before. */
    private void keep(char[] given) {
        char[] former = passphrase;
        passphrase = given.clone();
        Arrays.fill(former, '\0');
    }

    /** Writes while nobody else does. */
    private void written(KeyLock.Work write) throws KeyException {
        try {
            lock.during(write);
        } catch (KeyException unusable) {
            throw unusable;
        } catch (IOException notWritten) {
            throw new KeyException(KeyException.Kind.NOT_WRITTEN, notWritten);
        }
    }

    /** One's own key stays known when it is closed; where the list cannot be read, it is known while it is open. */
    private void remember(SigningKey key) throws KeyException {
        try {
            if (known.all().containsKey(key.code())) {
                return;
            }
        } catch (IOException unreadable) {
            return;
        }
        remember(key.code(), key.name());
    }
}
