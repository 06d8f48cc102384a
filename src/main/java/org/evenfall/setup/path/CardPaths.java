package org.evenfall.setup.path;

import org.evenfall.finding.Step;
import org.evenfall.setup.entry.CardEntries;
import org.evenfall.setup.entry.CardLanguage;
import org.evenfall.setup.entry.Paper;
import org.evenfall.setup.entry.Setup;

/** The card: entries of step 7. */
public final class CardPaths {

    /** The record of this step. */
    public static final Part<CardEntries> CARD = Part.top("card", Step.CARD, Setup::card, Setup::withCard);

    /** Sheet. */
    public static final Choice<CardEntries, Paper> PAPER =
            CARD.choice("paper", "card.paperAsk", Paper.class, CardEntries::paper, CardEntries::withPaper);

    /** Language of the card; unanswered: the program's own. */
    public static final Choice<CardEntries, CardLanguage> LANGUAGE = CARD.choice(
            "language", "card.languageAsk", CardLanguage.class, CardEntries::language, CardEntries::withLanguage);

    /** Who measured. */
    public static final Text<CardEntries> MEASURED_BY = CARD.text(
                    "measuredBy", "card.measuredByAsk", CardEntries::measuredBy, CardEntries::withMeasuredBy)
            .asked("missing.measuredBy")
            .keptPrivate();

    /** Who signs. */
    public static final Text<CardEntries> SIGNED_BY = CARD.text(
                    "signedBy", "card.signedByAsk", CardEntries::signedBy, CardEntries::withSignedBy)
            .needed("missing.signedBy")
            .keptPrivate();

    /** Role of who signs. */
    public static final Text<CardEntries> ROLE =
            CARD.text("role", "card.roleAsk", CardEntries::role, CardEntries::withRole);

    /** ISO date of the card. */
    public static final Text<CardEntries> DATE = CARD.date(
                    "date", "card.dateAsk", CardEntries::date, CardEntries::withDate)
            .needed("missing.date");

    /** Stop spreading above this wind. */
    public static final Quantity<CardEntries> WIND_STOP = CARD.quantity(
            "windStop", "card.windStopAsk", Ranges.WIND, CardEntries::windStop, CardEntries::withWindStop);

    /** Free text. */
    public static final Text<CardEntries> REMARKS =
            CARD.text("remarks", "card.remarksAsk", CardEntries::remarks, CardEntries::withRemarks);

    /** Reason to spread although the field CV is above the limit. */
    public static final Text<CardEntries> UNEVEN_REASON = CARD.text(
                    "unevenReason", "card.unevenReasonAsk", CardEntries::unevenReason, CardEntries::withUnevenReason)
            .neededByAssessment();

    private CardPaths() {}
}
