package org.evenfall.wizard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShellRoomTest {

    /** At, below and above each limit; text of 10 px, so that a limit of 66 em is 660 px. */
    @ParameterizedTest
    @CsvSource({
        "549, 600, false, true, false, false",
        "550, 600, false, false, false, false",
        "660, 600, false, false, false, false",
        "661, 600, false, false, false, true",
        "661, 519, false, false, true, true",
        "661, 520, false, false, false, true",
        "500, 600, true, true, false, false",
        "501, 600, true, true, false, true",
        "700, 600, true, true, false, true",
        "900, 600, true, true, false, true"
    })
    void roomFollowsTheSize(
            double width, double height, boolean hall, boolean numbersOnly, boolean withoutDetails, boolean picture) {
        ShellRoom room = ShellRoom.of(width, height, 10, hall);
        assertThat(room.numbersOnly()).isEqualTo(numbersOnly);
        assertThat(room.withoutDetails()).isEqualTo(withoutDetails);
        assertThat(room.picture()).isEqualTo(picture);
    }

    @ParameterizedTest
    @CsvSource({"849, false, 254.7", "850, false, 340", "700, false, 220", "900, true, 360"})
    void thePictureHasTwoFifthsWhereThereIsRoom(double width, boolean hall, double side) {
        assertThat(ShellRoom.of(width, 600, 10, hall).sideWidth(false))
                .isCloseTo(side, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void nextToAWideTableInAHallThePictureIsNarrower() {
        assertThat(ShellRoom.of(900, 600, 10, true).sideWidth(true)).isEqualTo(0.75 * 360);
        assertThat(ShellRoom.of(900, 600, 10, false).sideWidth(true)).isEqualTo(360);
    }
}
