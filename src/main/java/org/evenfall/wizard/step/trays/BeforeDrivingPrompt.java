package org.evenfall.wizard.step.trays;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.evenfall.finding.Arg;
import org.evenfall.machine.Lever;
import org.evenfall.result.Answers;
import org.evenfall.setup.TrayTestDraft;
import org.evenfall.setup.entry.SettingsEntries;
import org.evenfall.setup.entry.Setup;
import org.evenfall.setup.entry.TestConditionEntries;
import org.evenfall.setup.entry.TrayTestEntry;
import org.evenfall.setup.path.EntryPath;
import org.evenfall.setup.path.QuantityMap;
import org.evenfall.setup.path.SettingsPaths;
import org.evenfall.setup.path.TestConditionPaths;
import org.evenfall.setup.path.TrayPaths;
import org.evenfall.wizard.form.Disclosure;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.FormPrompt;
import org.evenfall.wizard.form.Help;
import org.evenfall.wizard.form.LineList;
import org.evenfall.wizard.form.OneTest;
import org.evenfall.wizard.form.Slot;
import org.evenfall.wizard.form.VisibleWhen;

/** How the machine is set for a test and what the day is like: filled in with what is set now, edited where it differs. */
public final class BeforeDrivingPrompt extends FormPrompt {

    private final TrayTests tests;
    private final BooleanProperty limitsAsked = new SimpleBooleanProperty();

    /** @param picture of the step */
    public BeforeDrivingPrompt(Form form, Supplier<? extends Node> picture, TrayTests tests) {
        super("6b", form, picture);
        this.tests = tests;
    }

    @Override
    public Node entries() {
        return new VBox(
                new OneTest(
                        form(),
                        tests.shown(),
                        () -> List.of(tests.begun(), tests.byFactor()),
                        (part, index) -> tests.begun() ? lines(part, TrayPaths.TESTS.item(index)) : begin()),
                another(),
                limits());
    }

    /** What the first test will be filled in with, and the button that begins it. */
    private Node begin() {
        Button button = form().button("trays.begin", tests::begin);
        button.getStyleClass().add("primary");
        return new VBox(VisibleWhen.sentence(form(), "sentence", this::setNow), form().row(button));
    }

    /** One more test, whatever is advised. */
    private Node another() {
        Button button = form().button("trays.another", tests::begin);
        button.getStyleClass().add("quiet");
        button.setFocusTraversable(false);
        return VisibleWhen.when(form(), () -> tests.size() > 0 && !tests.lastIsToDrive(), button);
    }

    private String setNow() {
        if (tests.size() > 0) {
            return "";
        }
        Setup begun = TrayTestDraft.added(form().model().setup(), form().model().assessment(), form()::numberText);
        String place = TrayPaths.TESTS.item(0).pointer() + "/";
        String all = Answers.of(form().words(), begun).stream()
                .filter(line -> line.pointer().startsWith(place))
                .map(Answers.Line::text)
                .collect(Collectors.joining(" · "));
        return all.isEmpty() ? "" : form().words().text("trays.setNow", Arg.text(all));
    }

    private Node lines(Form form, EntryPath<TrayTestEntry> at) {
        EntryPath<TestConditionEntries> conditions = TrayPaths.TEST_CONDITIONS.at(at);
        Node settingsAndDay = Slot.rebuiltOn(
                form,
                () -> form.model().assessment().machine().levers().stream()
                        .map(Lever::label)
                        .toList(),
                part -> LineList.sideBySide(
                        settings(part, at),
                        new LineList(part)
                                .quantity(TestConditionPaths.HEIGHT_OVER_RIM, conditions)
                                .quantity(TestConditionPaths.SPEED, conditions)
                                .quantity(TrayPaths.TEST_WIND, at)
                                .quantity(TrayPaths.TEST_RUNS, at)));
        return new VBox(
                settingsAndDay,
                form.row(
                        form.text(TrayPaths.TEST_DATE, at),
                        form.text(TestConditionPaths.STRIP, conditions),
                        form.text(TestConditionPaths.TRAVEL_DIRECTION, conditions)),
                new Disclosure(form, "trays.drivenOtherwise", otherwise(form, at, conditions)));
    }

    /** How the machine is set, filled in. */
    private LineList settings(Form form, EntryPath<TrayTestEntry> at) {
        EntryPath<SettingsEntries> settings = TrayPaths.TEST_SETTINGS.at(at);
        LineList list = new LineList(form);
        for (Lever lever : form.model().assessment().machine().levers()) {
            list.quantity(
                    lever.label(),
                    SettingsPaths.LEVERS,
                    QuantityMap.item(SettingsPaths.LEVERS.at(settings), lever.label()));
        }
        list.quantity(SettingsPaths.PTO_SPEED, settings).quantity(TrayPaths.TEST_OPENING_LEFT, at);
        if (!tests.byFactor()) {
            list.quantity(TrayPaths.TEST_OPENING_RIGHT, at);
        }
        return list;
    }

    /** What was taken over from the setup when the test was begun. */
    private static Node otherwise(Form form, EntryPath<TrayTestEntry> at, EntryPath<TestConditionEntries> conditions) {
        return form.row(
                form.quantity(TestConditionPaths.TRAMLINE_WIDTH, conditions),
                form.choice(TestConditionPaths.DRIVING_PATTERN, TestConditionPaths.DRIVING_PATTERN.at(conditions)),
                form.quantity(TestConditionPaths.PRODUCT_RATE, conditions),
                form.text(TestConditionPaths.PRODUCT, conditions),
                form.text(TestConditionPaths.DELIVERY, conditions),
                form.quantity(TestConditionPaths.BULK_DENSITY, conditions),
                form.quantity(TestConditionPaths.MEDIAN_SIZE, conditions),
                form.quantity(SettingsPaths.HEIGHT_OVER_CROP, TrayPaths.TEST_SETTINGS.at(at)),
                form.quantity(SettingsPaths.TILT, TrayPaths.TEST_SETTINGS.at(at)),
                form.choice(TestConditionPaths.PART_CHANGED, TestConditionPaths.PART_CHANGED.at(conditions)));
    }

    private boolean wrongLimits() {
        String limits = TrayPaths.WIND_LIMITS.only().pointer();
        return form().model().assessment().findings().stream()
                .anyMatch(finding -> finding.field().startsWith(limits));
    }

    /** Own limits for the wind; hidden until asked for, or until they have to be corrected. */
    private Node limits() {
        return new Disclosure(
                form(),
                limitsAsked,
                "trays.windLimitsAsk",
                this::wrongLimits,
                form().row(
                                // that of an older file; now each test has its own
                                VisibleWhen.when(
                                        form(),
                                        () -> !form().model()
                                                .setup()
                                                .trays()
                                                .wind()
                                                .isBlank(),
                                        form().quantity(TrayPaths.WIND)),
                                form().quantity(TrayPaths.WIND_NOTE),
                                form().quantity(TrayPaths.WIND_WARN),
                                form().quantity(TrayPaths.WIND_STOP)));
    }

    @Override
    public boolean holds(String pointer) {
        return tests.holds(pointer, false);
    }

    @Override
    public Optional<Boolean> answered() {
        return tests.answered();
    }

    @Override
    public boolean mayHurt() {
        return true;
    }

    @Override
    public Help help() {
        return Help.terms("run", "lever").from("source.wind", "source.practice");
    }
}
