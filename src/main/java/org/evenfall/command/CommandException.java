package org.evenfall.command;

/** A call that cannot be answered. The message is one clear line for the person. */
final class CommandException extends Exception {

    private static final long serialVersionUID = 1;

    CommandException(String message) {
        super(message);
    }

    CommandException(String message, Throwable cause) {
        super(message, cause);
    }
}
