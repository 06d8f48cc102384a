package org.evenfall.card;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.setup.entry.BucketEntry;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Setup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From the second revision on the card says what was checked again and what still holds since when. */
class RevisedCardTest {

    private static List<String> lines(Setup setup) {
        return CardSamples.of(setup, CardSamples.CODE).proof().lines().stream()
                .map(line -> line.replace('\u00a0', ' '))
                .toList();
    }

    private static Setup revised(String bucket, String previous, CardLanguage language) throws Exception {
        Setup demo = CardSamples.demo();
        List<BucketEntry> buckets = new ArrayList<>(demo.rate().bucketTests());
        buckets.set(2, buckets.get(2).withDate(bucket));
        return demo.withRate(demo.rate().withBucketTests(buckets))
                .withCard(demo.card()
                        .withLanguage(language)
                        .withRevision(3)
                        .withPreviousDate(previous)
                        .withDate("2027-04-24"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EN | 2027-04-24 | 2027-04-01"
                        + " | Revision 3: rate checked again 24 April 2027; tray test of 18 March 2027 still holds",
                "EN | 2027-03-19 | 2027-03-19"
                        + " | Revision 3: rate check of 19 March 2027 still holds; tray test of 18 March 2027 still holds",
                "EN | '' | 2027-03-01 | Revision 3: rate check still holds; tray test driven again 18 March 2027",
                "DE | 2027-04-24 | 2027-04-01"
                        + " | Fassung 3: Abdrehprobe erneut am 24. April 2027; Schalentest vom 18. März 2027 gilt weiter",
                "FR | 2027-04-24 | 2027-04-01"
                        + " | Version 3 : débit contrôlé à nouveau le 24 avril 2027 ;"
                        + " essai aux bacs du 18 mars 2027 toujours valable"
            })
    void oneLineSaysWhatHolds(CardLanguage language, String bucket, String previous, String line) throws Exception {
        List<String> lines = lines(revised(bucket, previous, language));
        assertThat(lines.get(lines.size() - 1)).isEqualTo(line);
    }

    @Test
    void theFirstCardHasNoSuchLine() throws Exception {
        Setup demo = CardSamples.demo();
        assertThat(lines(demo)).noneMatch(line -> line.startsWith("Revision"));
        Setup revised = revised("2027-04-24", "2027-04-01", CardLanguage.EN);
        assertThat(lines(revised)).hasSize(lines(demo).size() + 1);
        Setup unknown = revised.withCard(revised.card().withPreviousDate(""));
        assertThat(lines(unknown)).hasSameSizeAs(lines(demo));
    }
}
