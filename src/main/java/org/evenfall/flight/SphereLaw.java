package org.evenfall.flight;

/**
 * The drag law of one sphere, one piece of the correlation at a time, so that an integrator never steps over the small
 * jump where two pieces meet. Remembers the piece it is in: not shared between flights that run at once.
 */
final class SphereLaw implements Flight.DragLaw {

    private final double perCoefficient;
    private final double reynoldsPerSpeed;
    private final double perClock;
    private final double squareFactor;
    private int piece;
    private double lowestSquare;
    private double highestSquare;

    SphereLaw(Granule granule, Air air) {
        perCoefficient = SphereDrag.perCoefficient(granule, air);
        reynoldsPerSpeed = SphereDrag.reynoldsPerSpeed(granule, air);
        perClock = reynoldsPerSpeed / perCoefficient;
        squareFactor = reynoldsPerSpeed * reynoldsPerSpeed;
    }

    @Override
    public double perM(double speedMPerS) {
        return perCoefficient * SphereDrag.coefficient(piece, reynoldsPerSpeed * speedMPerS);
    }

    /** Speed over the drag, s, by the piece in use, at the square of a speed, (m/s)². */
    double clock(double speedSquare) {
        return perClock * DragTable.clock(piece, squareFactor * speedSquare);
    }

    /** Goes to the piece that a speed belongs to; on a joint to the one the speed is heading for. */
    void enter(double speedSquare, boolean rising) {
        double nudge = rising ? 1 + 1e-9 : 1 - 1e-9;
        piece = SphereDrag.piece(reynoldsPerSpeed * Math.sqrt(speedSquare) * nudge);
        double low = SphereDrag.lowest(piece) / reynoldsPerSpeed;
        double high = SphereDrag.highest(piece) / reynoldsPerSpeed;
        lowestSquare = low * low;
        highestSquare = high * high;
    }

    /** Slowest speed of the piece, squared, (m/s)². */
    double lowestSquare() {
        return lowestSquare;
    }

    /** Fastest speed of the piece, squared, (m/s)². */
    double highestSquare() {
        return highestSquare;
    }
}
