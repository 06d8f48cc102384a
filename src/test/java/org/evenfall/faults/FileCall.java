package org.evenfall.faults;

/** A kind of call to the file system. */
enum FileCall {
    CHECK_ACCESS,
    READ_ATTRIBUTES,
    SET_ATTRIBUTES,
    REAL_PATH,
    OPEN_TO_READ,
    OPEN_TO_WRITE,
    READ,
    WRITE,
    TRUNCATE,
    FORCE,
    LOCK,
    CLOSE,
    CREATE_FOLDER,
    LIST_FOLDER,
    NEXT_OF_FOLDER,
    MOVE,
    DELETE,
    COPY
}
