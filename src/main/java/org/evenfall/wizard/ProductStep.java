package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.Assessment;
import org.evenfall.setup.ProductResult;
import org.evenfall.setup.entry.ProductEntries;
import org.evenfall.setup.path.ProductPaths;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Lazy;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.CleanPicture;
import org.evenfall.wizard.picture.ConditionPicture;
import org.evenfall.wizard.picture.DensityPicture;
import org.evenfall.wizard.picture.FillingPicture;
import org.evenfall.wizard.picture.GranulesPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.ReachPicture;
import org.evenfall.wizard.picture.SamplePicture;
import org.evenfall.wizard.picture.SievePicture;
import org.evenfall.wizard.picture.TreatedPicture;
import org.evenfall.wizard.step.product.BeforePrompt;
import org.evenfall.wizard.step.product.ConditionPrompt;
import org.evenfall.wizard.step.product.DensityPrompt;
import org.evenfall.wizard.step.product.ProductResultPrompt;
import org.evenfall.wizard.step.product.SamplePrompt;
import org.evenfall.wizard.step.product.SievesPrompt;
import org.evenfall.wizard.step.product.TreatedPrompt;
import org.evenfall.wizard.step.product.WhichProductPrompt;

/** Step 1: what is in the bag. */
final class ProductStep implements StepView {

    private final Form form;
    private final Lazy<Pictures> pictures = new Lazy<>(Pictures::new);

    ProductStep(Form form) {
        this.form = form;
    }

    @Override
    public Step step() {
        return Step.PRODUCT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new WhichProductPrompt(form, () -> pictures.get().granules),
                new TreatedPrompt(form, () -> pictures.get().treated),
                new ConditionPrompt(form, () -> pictures.get().condition),
                new BeforePrompt(form, () -> pictures.get().clean),
                new SamplePrompt(form, () -> pictures.get().sample),
                new DensityPrompt(form, () -> pictures.get().fillingAndDensity),
                new SievesPrompt(form, () -> pictures.get().sieve),
                new ProductResultPrompt(form, () -> pictures.get().reach));
    }

    @Override
    public String result() {
        ProductResult result = form.model().assessment().product();
        List<String> parts = new ArrayList<>();
        if (result.density() != null) {
            parts.add(form.words().number(result.density().meanKgPerL(), 2, Unit.KG_PER_L));
        }
        if (result.sieve() != null) {
            parts.add(form.words().number(result.sieve().d50Mm(), 1, Unit.MM));
        }
        return String.join(" · ", parts);
    }

    /** The pictures of the step, made when the first of them is shown; each follows the setup. */
    private final class Pictures {

        private final GranulesPicture granules = new GranulesPicture(form.words());
        private final TreatedPicture treated = new TreatedPicture(form.words());
        private final ConditionPicture condition = new ConditionPicture(form.words());
        private final CleanPicture clean = new CleanPicture(form.words());
        private final SamplePicture sample = new SamplePicture(form.words());
        private final FillingPicture filling = new FillingPicture(form.words());
        private final DensityPicture density = new DensityPicture(form.words());
        private final PictureStack fillingAndDensity = new PictureStack(filling, density);
        private final SievePicture sieve = new SievePicture(form.words());
        private final ReachPicture reach = new ReachPicture(form.words());

        Pictures() {
            form.follow(this::show);
        }

        private void show() {
            Assessment assessment = form.model().assessment();
            ProductEntries typed = form.model().setup().product();
            ProductResult product = assessment.product();
            ReadNumbers read = new ReadNumbers(assessment.read());
            granules.show(typed.form());
            treated.show(typed.treated(), typed.inhibitor(), typed.useBy());
            condition.show(typed.condition());
            clean.show(typed.nitrateBefore(), typed.cleanAndDry());
            sample.show(
                    read.count(ProductPaths.BAGS_DELIVERED),
                    read.count(ProductPaths.BAGS_SAMPLED),
                    product.bagsToSample());
            filling.show(read.of(ProductPaths.CONTAINER_VOLUME));
            density.show(product.density(), product.bands());
            sieve.show(product.sieve(), product.bands());
            reach.show(assessment.match(), assessment.tramlineWidthM());
        }
    }
}
