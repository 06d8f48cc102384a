package org.evenfall.wizard;

import java.util.Comparator;
import java.util.List;

/** The page that shows all pictures of the tour, those of a prompt side by side. */
final class TourIndex {

    private TourIndex() {}

    /** The page as HTML. */
    static String html(List<TourPlan.Shot> shots) {
        StringBuilder page = new StringBuilder("""
                <!doctype html><html lang="en"><meta charset="utf-8"><title>Every prompt</title>
                <style>body{font-family:sans-serif} figure{display:inline-block;margin:4px} img{width:420px}</style>
                """);
        String prompt = "";
        for (TourPlan.Shot shot : shots.stream()
                .sorted(Comparator.comparing(TourPlan.Shot::prompt).thenComparing(TourPlan.Shot::name))
                .toList()) {
            if (!prompt.equals(shot.prompt())) {
                prompt = shot.prompt();
                page.append("<h2>").append(prompt).append("</h2>\n");
            }
            page.append(String.format(
                    "<figure><a href=\"%1$s.png\"><img loading=\"lazy\" src=\"%1$s.png\" alt=\"%1$s\"></a><figcaption>%1$s</figcaption></figure>%n",
                    shot.name()));
        }
        return page.append("</html>\n").toString();
    }
}
