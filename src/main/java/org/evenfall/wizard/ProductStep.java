package org.evenfall.wizard;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.finding.Step;
import org.evenfall.quantity.Unit;
import org.evenfall.setup.ProductResult;
import org.evenfall.wizard.form.Form;
import org.evenfall.wizard.form.Prompt;
import org.evenfall.wizard.picture.DensityPicture;
import org.evenfall.wizard.picture.PictureStack;
import org.evenfall.wizard.picture.SievePicture;
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
    private final SievePicture sieve;
    private final DensityPicture density;
    private final PictureStack picture;

    ProductStep(Form form) {
        this.form = form;
        this.sieve = new SievePicture(form.words());
        this.density = new DensityPicture(form.words());
        DensityPicture densityInStack = new DensityPicture(form.words());
        SievePicture sieveInStack = new SievePicture(form.words());
        this.picture = new PictureStack(densityInStack, sieveInStack);
        form.follow(() -> {
            ProductResult product = form.model().assessment().product();
            sieve.show(product.sieve(), product.bands());
            density.show(product.density(), product.bands());
            sieveInStack.show(product.sieve(), product.bands());
            densityInStack.show(product.density(), product.bands());
        });
    }

    @Override
    public Step step() {
        return Step.PRODUCT;
    }

    @Override
    public List<Prompt> prompts() {
        return List.of(
                new WhichProductPrompt(form, picture),
                new TreatedPrompt(form, picture),
                new ConditionPrompt(form, picture),
                new BeforePrompt(form, picture),
                new SamplePrompt(form, picture),
                new DensityPrompt(form, density),
                new SievesPrompt(form, sieve),
                new ProductResultPrompt(form, picture));
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
