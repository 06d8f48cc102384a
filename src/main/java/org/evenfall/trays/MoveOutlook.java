package org.evenfall.trays;

/** What is expected of moves: all that choosing one needs to know. */
interface MoveOutlook {

    /**
     * Square of the field CV that a move leads to, looking one test further: what the test of the move will show can be
     * mended by the next, %².
     *
     * @param move whole steps up the scale of each lever; all 0 for the settings now
     */
    double squareAhead(int[] move);

    /**
     * Probability that a step up the scale of a lever takes from the middle, 0 to 1: it throws wider, and the throw does not
     * reach past the neighbouring tramline.
     *
     * @param lever which lever, from 0
     */
    double probabilityEmptiesMiddle(int lever);

    /**
     * Probability that a lever throws wider up its scale, 0 to 1.
     *
     * @param lever which lever, from 0
     */
    double probabilityWiderUp(int lever);
}
