package org.marktwice.files;

import java.util.List;
import java.util.Optional;
import org.marktwice.drawing.Drawing;
import org.marktwice.scenario.Practice;
import org.marktwice.scenario.Rack;
import org.marktwice.scenario.Stock;
import org.marktwice.timber.Board;

/** The stock that a scenario may name instead of boards, and the boards grown from it. */
final class StockReader {
    private static final List<String> KNOWN = List.of("seed", "species", "spare", "difficulty");

    private StockReader() {}

    /** Empty where the scenario gives boards one by one. */
    static Optional<Stock> read(Fields scenario, Drawing drawing) throws FileRefused {
        Optional<Json> json = scenario.get("stock");
        if (json.isEmpty()) return Optional.empty();
        scenario.refuse("boards", "they are grown from the stock");
        Stock stock = stock(json.get());
        Optional<String> refusal = Rack.refusal(drawing);
        if (refusal.isPresent()) throw json.get().place().refuse(refusal.get());
        return Optional.of(stock);
    }

    static Stock stock(Json json) throws FileRefused {
        Fields in = Fields.of(json, "a stock (an object)", KNOWN);
        int seed = Values.whole(in.need("seed"), 0, Integer.MAX_VALUE);
        Optional<Json> spare = in.get("spare");
        return new Stock(
                seed,
                BoardReader.species(in.need("species")),
                spare.isPresent() ? Values.whole(spare.get(), 0, Stock.MOST_SPARE) : 0,
                in.number("difficulty", Range.of(0, 1), Stock.DIFFICULTY));
    }

    /** They look as they would if the file gave them one by one. */
    static List<Board> boards(Stock stock, Drawing drawing, Practice practice, String scenario) {
        return Rack.fill(stock, drawing, practice).stream()
                .map(board -> BoardReader.seeded(board, scenario))
                .toList();
    }
}
