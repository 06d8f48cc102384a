package org.evenfall.sheet;

import java.util.ArrayList;
import java.util.List;
import org.evenfall.page.Flow;
import org.evenfall.sheet.SheetContent.Block;
import org.evenfall.sheet.SheetContent.Checklist;
import org.evenfall.sheet.SheetContent.Choices;
import org.evenfall.sheet.SheetContent.Entries;
import org.evenfall.sheet.SheetContent.Names;
import org.evenfall.sheet.SheetContent.Notice;
import org.evenfall.sheet.SheetContent.Plan;

/** Blocks of a sheet as pieces that fill its pages. */
final class SheetPieces {

    private SheetPieces() {}

    static List<Flow.Piece> of(List<Block> blocks, PlacedBox.Drawn drawn) {
        List<Flow.Piece> pieces = new ArrayList<>();
        blocks.forEach(block -> add(pieces, block, drawn));
        return pieces;
    }

    private static void add(List<Flow.Piece> pieces, Block block, PlacedBox.Drawn drawn) {
        if (block instanceof Notice notice) {
            pieces.add(new NoticePiece(notice));
        } else if (block instanceof Checklist list) {
            pieces.add(new ChecklistPiece(list));
        } else if (block instanceof Names names) {
            pieces.add(new NamesPiece(names));
        } else if (block instanceof Plan plan) {
            pieces.add(new HeadingPiece(plan.heading()));
            pieces.add(new PlanPiece(plan, drawn));
        } else if (block instanceof Choices choices) {
            pieces.add(new HeadingPiece(choices.heading()));
            pieces.add(new ChoicesPiece(List.of(choices.first()), true));
            pieces.add(new ChoicesPiece(choices.others(), false));
        } else if (block instanceof Entries entries) {
            pieces.add(new HeadingPiece(entries.heading()));
            int last = entries.rows().size() - 1;
            for (int i = 0; i <= last; i++) {
                pieces.add(new RowPiece(entries, i, i < last || entries.withNext(), drawn));
            }
        }
    }
}
