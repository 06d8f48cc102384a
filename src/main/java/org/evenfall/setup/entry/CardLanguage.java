package org.evenfall.setup.entry;

/** The language of the cab card, whatever the language of the program. */
public enum CardLanguage {
    /** Not yet answered: the language of the program. */
    UNANSWERED("en"),
    /** English. */
    EN("en"),
    /** German. */
    DE("de"),
    /** French. */
    FR("fr");

    private final String tag;

    CardLanguage(String tag) {
        this.tag = tag;
    }

    /** Language tag (BCP 47) of the words; the program's own are English. */
    public String tag() {
        return tag;
    }
}
