package org.evenfall.faults;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Counts the calls to a file system and makes one of them fail, or all from it on. */
public final class Faults {

    private final List<FileCall> calls = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private boolean counting;
    private int at = -1;
    private FaultWay way = FaultWay.ERROR;

    /** Counts from now on; nothing fails. */
    synchronized void count() {
        arm(-1, FaultWay.ERROR);
    }

    /** From now on the call of this number, counted from 0, fails. */
    public synchronized void arm(int number, FaultWay how) {
        calls.clear();
        places.clear();
        counting = true;
        at = number;
        way = how;
    }

    /** The fault is over. */
    public synchronized void over() {
        counting = false;
    }

    /** The calls since it was armed. */
    synchronized List<FileCall> calls() {
        return List.copyOf(calls);
    }

    synchronized String place(int number) {
        return places.get(number);
    }

    /**
     * A call is about to be made.
     *
     * @return the way in which it does less than it should, without an exception or before one
     * @throws IOException when it fails at once
     */
    synchronized Optional<FaultWay> before(FileCall call, Object path) throws IOException {
        if (!counting) {
            return Optional.empty();
        }
        int number = calls.size();
        calls.add(call);
        places.add(String.valueOf(path));
        boolean now = at >= 0 && (way.lasting() ? number >= at : number == at) && way.fits(call);
        if (now && way != FaultWay.HALF_WRITTEN) {
            way.fail(String.valueOf(path));
        }
        return now ? Optional.of(way) : Optional.empty();
    }
}
