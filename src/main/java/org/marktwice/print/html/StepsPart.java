package org.marktwice.print.html;

import java.util.List;
import java.util.Map;
import org.marktwice.bench.Action;
import org.marktwice.bench.Bench;
import org.marktwice.feedback.ActionWords;
import org.marktwice.feedback.BoardWords;
import org.marktwice.feedback.ModelBoard;
import org.marktwice.feedback.Pictures;
import org.marktwice.feedback.ReplayModel;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetModel;
import org.marktwice.rulebook.Verdict;

/** The replay: a bar of ticks, and every step with the board as it was and the model answer beside it. */
final class StepsPart {
    private static final int MOST_SIGNS = 3;

    private final Replayed replayed;
    private final ReplayModel steps;
    private final ActionWords words;
    private final BoardDrawings drawings;
    private final Map<SheetModel.Line, Integer> numbers;
    private final Markup page;

    /** @param numbers under which the mark sheet has each finding */
    StepsPart(Markup page, Replayed replayed, BoardDrawings drawings, Map<SheetModel.Line, Integer> numbers) {
        this.page = page;
        this.replayed = replayed;
        this.steps = replayed.steps();
        this.words = new ActionWords(replayed.scenario());
        this.drawings = drawings;
        this.numbers = numbers;
    }

    void write() {
        page.open("section", "id", "replay", "aria-labelledby", "replay-title", "tabindex", "-1");
        page.element("h2", "Replay", "id", "replay-title").line();
        page.open("div", "class", "deck");
        bar();
        page.raw(Parts.read("controls.html"));
        page.close().line();
        page.element("p", "", "id", "told", "class", "unseen", "role", "status", "aria-live", "polite");
        page.open("ol", "class", "steps", "aria-label", "Steps, one by one").line();
        for (int step = 0; step <= steps.last(); step++) step(step);
        page.close().close().line();
    }

    private void bar() {
        page.open("div", "class", "scroll");
        page.open("div", "class", "track", "style", "--n:" + (steps.last() + 1));
        page.open("ol", "class", "bar", "aria-label", "Steps").line();
        String before = "";
        for (int step = 0; step <= steps.last(); step++) {
            String board = step == 0 || !(steps.action(step) instanceof Action.OnBoard on) ? "" : on.board();
            tick(step, board.equals(before) ? "" : board);
            if (!board.isEmpty()) before = board;
        }
        page.close();
        page.empty(
                "input",
                "type",
                "range",
                "id",
                "at",
                "min",
                "0",
                "max",
                String.valueOf(steps.last()),
                "value",
                "0",
                "aria-label",
                "Step",
                "hidden",
                "");
        page.close().close().line();
    }

    private void tick(int step, String board) {
        List<SheetModel.Line> decided = decided(step);
        page.open("li").open("a", "href", "#step-" + step, "class", "tick", "title", title(step));
        page.open("span", "class", "signs");
        int shown = decided.size() > MOST_SIGNS ? MOST_SIGNS - 1 : decided.size();
        if (shown < decided.size())
            page.element("span", "+" + (decided.size() - shown), "class", "more", "aria-hidden", "true");
        for (int i = shown - 1; i >= 0; i--) drawings.sign(page, decided.get(i).verdict());
        page.close();
        page.element("span", "", "class", "mark");
        page.element("span", board, "class", "letter", "aria-hidden", "true");
        page.element("span", title(step), "class", "unseen");
        page.close().close().line();
    }

    private List<SheetModel.Line> decided(int step) {
        return step == 0 ? List.of() : steps.decidedBy(step);
    }

    private String title(int step) {
        List<SheetModel.Line> decided = decided(step);
        if (decided.isEmpty()) return step == 0 ? "Before the first step" : "Step " + step;
        SheetModel.Line worst = decided.get(0);
        int more = decided.size() - 1;
        return "Step " + step + ": " + worst.word() + ", " + worst.title()
                + (more == 0 ? "" : ", and " + more + " more");
    }

    private void step(int step) {
        List<SheetModel.Line> decided = decided(step);
        String time = steps.time(step);
        boolean wanting = decided.stream().anyMatch(l -> l.verdict() != Verdict.SOUND);
        page.open(
                "li",
                "class",
                "step" + (decided.isEmpty() ? "" : " decides") + (wanting ? " wanting" : ""),
                "id",
                "step-" + step);
        page.open("div", "class", "said");
        page.element("p", steps.place(step) + (time.isEmpty() ? "" : " · " + time), "class", "place");
        page.element("h3", said(step), "tabindex", "-1").close().line();
        pair(step);
        if (!decided.isEmpty()) {
            page.open("ul", "class", "found", "aria-label", "What this step decided");
            decided.forEach(this::found);
            page.close();
        }
        page.close().line();
    }

    private String said(int step) {
        return step == 0 ? "Before the first step" : words.of(steps.action(step));
    }

    private void pair(int step) {
        Bench bench = steps.after(step);
        String id = steps.boardAt(step);
        page.open("div", "class", "pair");
        page.open("figure").open("figcaption");
        page.element("strong", "The learner’s board " + id);
        page.element("span", BoardWords.standing(bench, bench.board(id)));
        String nearest = BoardWords.nearest(bench, bench.board(id));
        if (!nearest.isEmpty()) page.element("span", nearest, "class", "quiet nearest");
        page.close();
        drawings.board(
                page,
                Pictures.after(steps, step),
                Pictures.lie(steps, step),
                "The learner’s board " + id + " after step " + step,
                BoardWords.of(bench, bench.board(id)));
        page.close();
        ModelBoard model = ModelBoard.of(replayed.situation(), bench, id);
        page.open("figure").open("figcaption").element("strong", "Model answer for board " + id);
        page.element("span", model.words())
                .element("span", model.figure(), "class", "quiet")
                .close();
        drawings.board(
                page, model.picture(), model.lie(), "Board " + id + " in the model answer", BoardWords.of(model));
        page.close().close().line();
    }

    private void found(SheetModel.Line line) {
        page.open("li", "class", line.word());
        drawings.sign(page, line.verdict());
        page.open("p");
        page.element("span", line.word(), "class", "word").text(" ").element("strong", line.title());
        if (!line.figure().isEmpty()) page.text(" ").element("span", line.figure(), "class", "figure");
        page.close();
        page.element("p", line.says());
        if (!line.instead().isEmpty()) {
            page.open("p")
                    .element("span", "Better ", "class", "label")
                    .text(line.instead())
                    .close();
        }
        page.open("p").open("a", "href", "#finding-" + numbers.get(line)).text("On the mark sheet");
        page.element("span", ": " + line.title(), "class", "unseen").close().close();
        page.close();
    }
}
