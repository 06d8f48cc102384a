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
    private final GranulesPicture granules;
    private final TreatedPicture treated;
    private final ConditionPicture condition;
    private final CleanPicture clean;
    private final SamplePicture sample;
    private final FillingPicture filling;
    private final DensityPicture density;
    private final SievePicture sieve;
    private final ReachPicture reach;

    ProductStep(Form form) {
        this.form = form;
        this.granules = new GranulesPicture(form.words());
        this.treated = new TreatedPicture(form.words());
        this.condition = new ConditionPicture(form.words());
        this.clean = new CleanPicture(form.words());
        this.sample = new SamplePicture(form.words());
        this.filling = new FillingPicture(form.words());
        this.density = new DensityPicture(form.words());
        this.sieve = new SievePicture(form.words());
        this.reach = new ReachPicture(form.words());
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
                read.count(ProductPaths.BAGS_DELIVERED), read.count(ProductPaths.BAGS_SAMPLED), product.bagsToSample());
        filling.show(read.of(ProductPaths.CONTAINER_VOLUME));
        density.show(product.density(), product.bands());
        sieve.show(product.sieve(), product.bands());
        reach.show(assessment.match(), assessment.tramlineWidthM());
    }

    @Override
    public Step step() {
        return Step.PRODUCT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new WhichProductPrompt(form, granules),
                new TreatedPrompt(form, treated),
                new ConditionPrompt(form, condition),
                new BeforePrompt(form, clean),
                new SamplePrompt(form, sample),
                new DensityPrompt(form, new PictureStack(filling, density)),
                new SievesPrompt(form, sieve),
                new ProductResultPrompt(form, reach));
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
}
