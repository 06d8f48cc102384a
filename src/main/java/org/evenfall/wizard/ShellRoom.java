package org.evenfall.wizard;

/**
 * What has room in the window: names in the rail, results in the rail, the picture at the right. Sizes follow the text, in
 * lines of it (em), so that a larger text is a smaller window.
 *
 * @param hall it is shown in a hall
 * @param numbersOnly the rail shows numbers only
 * @param withoutDetails the rail has no line of result for each step
 * @param picture the picture has room at the right of the entries
 * @param railWidth px
 * @param sideWidth px
 */
record ShellRoom(
        boolean hall,
        boolean numbersOnly,
        boolean withoutDetails,
        boolean picture,
        double railWidth,
        double sideWidth) {

    /** Before the window has a size. */
    static final ShellRoom PLENTY = new ShellRoom(false, false, false, true, 0, 0);

    private static final double PICTURE_EM = 66;

    /** In a hall, where the rail shows numbers only. */
    private static final double PICTURE_IN_HALL_EM = 50;

    /** Width from which the picture has two fifths of it. */
    private static final double LARGE_PICTURE_EM = 85;

    private static final double NAMES_EM = 55;

    private static final double DETAILS_HIGH_EM = 52;

    private static final double LARGE_SHARE = 0.40;
    private static final double SMALL_SHARE = 0.30;
    private static final double HALL_SHARE = 0.40;
    private static final double NUMBERS_EM = 5;

    /** In a hall, where prompts are not indented. */
    private static final double NUMBERS_IN_HALL_EM = 4.6;

    /** Of the picture's width in a hall, next to a wide table. */
    private static final double NEXT_TO_TABLE = 0.75;

    private static final double LEAST_SIDE_EM = 22;

    /** Width of the picture, px. */
    double sideWidth(boolean nextToTable) {
        return hall && nextToTable ? NEXT_TO_TABLE * sideWidth : sideWidth;
    }

    /**
     * The room in a window.
     *
     * @param em height of a line of text, px
     * @param hall it is shown in a hall
     */
    static ShellRoom of(double width, double height, double em, boolean hall) {
        // in a hall entries and picture come first
        boolean narrow = hall || width < NAMES_EM * em;
        return new ShellRoom(
                hall,
                narrow,
                height < DETAILS_HIGH_EM * em,
                width > (hall ? PICTURE_IN_HALL_EM : PICTURE_EM) * em,
                narrow ? (hall ? NUMBERS_IN_HALL_EM : NUMBERS_EM) * em : Math.min(15 * em, width * 0.20),
                hall
                        ? HALL_SHARE * width
                        : Math.max(
                                LEAST_SIDE_EM * em,
                                width * (width < LARGE_PICTURE_EM * em ? SMALL_SHARE : LARGE_SHARE)));
    }
}
