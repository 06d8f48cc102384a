package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Step;
import org.evenfall.machine.CheckAnswer;
import org.evenfall.machine.CheckItem;
import org.evenfall.machine.Side;
import org.evenfall.machine.YardCheck;
import org.evenfall.machine.YardResult;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Fields;
import org.evenfall.setup.entry.CheckEntry;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.VaneEntry;
import org.evenfall.setup.entry.YardEntries;
import org.evenfall.wizard.picture.YardPicture;

/** Step 3: the machine looked over in the yard, in the order in which one walks round it. */
final class YardStep implements StepView {

    private static final Lens<YardEntries> YARD = Places.YARD;

    private final Form form;
    private final YardPicture picture;

    YardStep(Form form) {
        this.form = form;
        this.picture = new YardPicture(form.words());
        form.follow(() -> picture.show(form.model().assessment().yard()));
    }

    @Override
    public Step step() {
        return Step.MACHINE;
    }

    @Override
    public Node picture() {
        return picture;
    }

    @Override
    public String result() {
        YardResult yard = form.model().assessment().yard();
        return yard.ptoRpm() == null ? "" : form.words().number(yard.ptoRpm(), 0, Unit.RPM);
    }

    @Override
    public Node entries() {
        return new VBox(
                form.group(
                        "yard.vanes",
                        form.sentence("yard.vanesHow"),
                        vanes(),
                        form.text(
                                "yard.vaneReason",
                                "/yard/vaneOverrideReason",
                                YARD.then(YardEntries::vaneOverrideReason, YardEntries::withVaneOverrideReason))),
                form.group("yard.parts", checks(), form.told("/yard/checks")),
                form.group(
                        "yard.measured",
                        form.row(
                                form.typed(
                                        "yard.heightLeft",
                                        Fields.FRAME_HEIGHT,
                                        "/yard/heightLeft",
                                        YARD.then(YardEntries::heightLeft, YardEntries::withHeightLeft)),
                                form.typed(
                                        "yard.heightRight",
                                        Fields.FRAME_HEIGHT,
                                        "/yard/heightRight",
                                        YARD.then(YardEntries::heightRight, YardEntries::withHeightRight)),
                                form.typed(
                                        "field.tilt",
                                        Fields.TILT,
                                        "/yard/tilt",
                                        YARD.then(YardEntries::tilt, YardEntries::withTilt))),
                        form.row(
                                form.typed(
                                        "yard.tyreLeft",
                                        Fields.TYRE_PRESSURE,
                                        "/yard/tyreLeft",
                                        YARD.then(YardEntries::tyreLeft, YardEntries::withTyreLeft)),
                                form.typed(
                                        "yard.tyreRight",
                                        Fields.TYRE_PRESSURE,
                                        "/yard/tyreRight",
                                        YARD.then(YardEntries::tyreRight, YardEntries::withTyreRight))),
                        form.row(
                                form.typed(
                                        "yard.ptoMeasured",
                                        Fields.PTO_SPEED,
                                        "/yard/ptoMeasured",
                                        YARD.then(YardEntries::ptoMeasured, YardEntries::withPtoMeasured)),
                                form.text(
                                        "yard.ptoInstrument",
                                        "/yard/ptoInstrument",
                                        YARD.then(YardEntries::ptoInstrument, YardEntries::withPtoInstrument))),
                        form.text(
                                "yard.levelReason",
                                "/yard/levelOverrideReason",
                                YARD.then(YardEntries::levelOverrideReason, YardEntries::withLevelOverrideReason))));
    }

    private Node vanes() {
        return new Rows<>(
                        form,
                        YARD.then(YardEntries::vanes, YardEntries::withVanes),
                        VaneEntry.EMPTY,
                        "/yard/vanes",
                        true,
                        List.of(
                                Rows.choice(
                                        form,
                                        form.words().text("yard.disc"),
                                        Side.class,
                                        VaneEntry::disc,
                                        VaneEntry::withDisc),
                                Rows.text(
                                        form,
                                        form.words().text("yard.vaneLabel"),
                                        "label",
                                        7,
                                        VaneEntry::label,
                                        VaneEntry::withLabel),
                                Rows.typed(
                                        form,
                                        form.words().text("yard.lengthNow"),
                                        Fields.VANE_LENGTH,
                                        "length",
                                        VaneEntry::length,
                                        VaneEntry::withLength),
                                Rows.typed(
                                        form,
                                        form.words().text("yard.lengthNew"),
                                        Fields.VANE_LENGTH,
                                        "lengthNew",
                                        VaneEntry::lengthNew,
                                        VaneEntry::withLengthNew),
                                Rows.choice(
                                        form,
                                        form.words().text("yard.straight"),
                                        CheckAnswer.class,
                                        VaneEntry::straightSmoothUnholed,
                                        VaneEntry::withStraightSmoothUnholed)))
                .node();
    }

    private Node checks() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("rows");
        int row = 0;
        for (CheckItem item : CheckItem.values()) {
            Lens<CheckEntry> place = Lens.of(setup -> entry(setup, item), (setup, entry) -> with(setup, entry));
            String pointer = "/yard/checks/" + item;
            Label name = new Label(form.words().choice(item));
            name.setWrapText(true);
            grid.add(name, 0, row);
            grid.add(
                    form.bareChoice(pointer, place.then(CheckEntry::answer, CheckEntry::withAnswer), answers(item)),
                    1,
                    row);
            if (YardCheck.mayBeOverridden(item)) {
                TextField reason = form.textField(
                        pointer + "/reason",
                        place.then(CheckEntry::overrideReason, CheckEntry::withOverrideReason),
                        form.words().text("yard.reason"),
                        14);
                reason.setPromptText(form.words().text("yard.reason"));
                form.follow(() -> {
                    boolean failed = entry(form.model().setup(), item).answer() == CheckAnswer.FAILED;
                    reason.setVisible(failed);
                    reason.setManaged(failed);
                });
                grid.add(reason, 2, row);
            }
            row++;
        }
        Button all = form.button("yard.restGood", () -> form.model().change(this::restGood));
        return new VBox(8, grid, all);
    }

    private static List<CheckAnswer> answers(CheckItem item) {
        return item == CheckItem.AGITATOR
                ? List.of(CheckAnswer.GOOD, CheckAnswer.FAILED, CheckAnswer.NOT_FITTED)
                : List.of(CheckAnswer.GOOD, CheckAnswer.FAILED);
    }

    private Setup restGood(Setup setup) {
        Setup next = setup;
        for (CheckItem item : CheckItem.values()) {
            if (entry(next, item).answer() == CheckAnswer.UNANSWERED) {
                next = with(next, entry(next, item).withAnswer(CheckAnswer.GOOD));
            }
        }
        return next;
    }

    private static CheckEntry entry(Setup setup, CheckItem item) {
        return setup.yard().checks().stream()
                .filter(check -> check.item() == item)
                .findFirst()
                .orElse(new CheckEntry(item, CheckAnswer.UNANSWERED, ""));
    }

    private static Setup with(Setup setup, CheckEntry entry) {
        List<CheckEntry> checks = new ArrayList<>();
        boolean there = false;
        for (CheckEntry check : setup.yard().checks()) {
            checks.add(check.item() == entry.item() ? entry : check);
            there |= check.item() == entry.item();
        }
        if (!there) {
            checks.add(entry);
        }
        return setup.withYard(setup.yard().withChecks(checks));
    }
}
