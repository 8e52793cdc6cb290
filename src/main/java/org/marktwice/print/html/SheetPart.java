package org.marktwice.print.html;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.marktwice.advice.Explanation;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetModel;
import org.marktwice.rulebook.Cautions;
import org.marktwice.rulebook.ExplanationWords;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.Verdict;
import org.marktwice.timber.Board;

/** The mark sheet, what was estimated and asked, why the model answer is the best, the settings in force, cautions. */
final class SheetPart {
    private final Markup page;
    private final Replayed replayed;
    private final SheetModel sheet;
    private final BoardDrawings drawings;
    private final Map<SheetModel.Line, Integer> numbers;
    private final Set<String> explained = new HashSet<>();

    SheetPart(Markup page, Replayed replayed, BoardDrawings drawings, Map<SheetModel.Line, Integer> numbers) {
        this.page = page;
        this.replayed = replayed;
        this.sheet = replayed.sheet();
        this.drawings = drawings;
        this.numbers = numbers;
    }

    void write() {
        marks();
        model();
        practice();
        cautions();
    }

    private void marks() {
        section("sheet", "Mark sheet");
        page.open("div", "class", "summary");
        String verdicts = sheet.verdicts().entrySet().stream()
                .map(e -> replayed.scenario()
                                .drawing()
                                .part(e.getKey())
                                .map(p -> p.name())
                                .orElse(e.getKey()) + ": " + e.getValue().id())
                .collect(Collectors.joining("; "));
        page.open("figure", "class", "whole").open("figcaption");
        page.element("strong", "The job as it would come out").close();
        drawings.job(
                page,
                sheet,
                "The job, each part with its verdict",
                verdicts.isEmpty() ? "No verdicts." : verdicts + ".");
        page.close().open("div", "class", "beside");
        page.open("p", "class", "total")
                .element("strong", sheet.total())
                .text(" marks")
                .close();
        estimates();
        list("Hints used", sheet.hints(), "No hints were used.");
        page.close().close().line();
        for (SheetModel.Group group : sheet.groups()) group(group);
        list("Nothing to judge: no pass, and worth nothing", sheet.notJudged(), "");
        page.close().line();
    }

    private void estimates() {
        SheetModel.Estimate parts = sheet.parts();
        SheetModel.Estimate rules = sheet.estimate();
        SheetModel.Estimate said = parts.given() ? parts : rules;
        page.element("h3", "Estimates");
        page.open("ul");
        if (said.given()) {
            item("Expected, and lost marks", said.foreseen());
            item("Expected, and lost none", said.held());
            item("Lost marks unexpectedly", said.missed());
            if (said.foreseen().isEmpty()
                    && said.held().isEmpty()
                    && said.missed().isEmpty()) page.element("li", "Expected to lose no marks, and lost none.");
        }
        for (String clearance : sheet.clearances()) page.element("li", clearance + ".");
        if (!said.given() && sheet.clearances().isEmpty()) page.element("li", "Handed in without one.");
        page.close();
    }

    private void item(String label, List<String> titles) {
        if (!titles.isEmpty()) page.element("li", label + ": " + String.join("; ", titles) + ".");
    }

    private void list(String title, List<String> lines, String none) {
        if (lines.isEmpty() && none.isEmpty()) return;
        page.element("h3", title).open("ul");
        for (String line : lines) page.element("li", line + ".");
        if (lines.isEmpty()) page.element("li", none);
        page.close().line();
    }

    private void group(SheetModel.Group group) {
        page.open("div", "class", "group").open("h3").text(group.title()).text(" ");
        page.element(
                "span", SheetModel.number(group.marks()) + " of " + SheetModel.number(group.outOf()), "class", "quiet");
        page.close().line();
        group.lines().forEach(this::finding);
        page.close().line();
    }

    private void finding(SheetModel.Line line) {
        page.open("div", "class", "finding " + line.word(), "id", "finding-" + numbers.get(line));
        page.open("h4");
        drawings.sign(page, line.verdict());
        page.element("span", line.word(), "class", "word").text(" ").element("span", line.title(), "class", "what");
        if (!line.figure().isEmpty()) page.text(" ").element("span", line.figure(), "class", "figure");
        page.text(" ").element("span", line.marks(), "class", "quiet marks").close();
        page.open("dl");
        entry("Found", line.says());
        if (line.verdict() != Verdict.SOUND) {
            entry("Where", line.where());
            entry("Better", line.instead());
            boolean first = explained.add(line.finding().rule());
            if (first) {
                entry("Why", line.why());
                entry("Care", line.safety());
                entry("Source", line.source());
            }
        }
        Integer step = line.finding().step();
        if (step != null) {
            page.element("dt", "Decided", "class", "on-screen").open("dd", "class", "on-screen");
            page.element("a", "Step " + step + " in the replay", "href", "#step-" + step)
                    .close();
        }
        page.close().close().line();
    }

    private void entry(String label, String text) {
        if (!text.isEmpty()) page.element("dt", label).element("dd", text);
    }

    private void model() {
        ExplanationWords words = new ExplanationWords(Explanation.of(replayed.scenario()));
        section("model", "Why the model answer is the best");
        for (String sentence : words.why()) page.element("p", sentence);
        for (Board board : replayed.scenario().boards()) {
            List<ExplanationWords.Row> rows = words.table(board);
            if (rows.isEmpty()) continue;
            page.open("details").element("summary", "Board " + board.id() + ", every part and turn");
            page.open(
                    "div",
                    "class",
                    "wide",
                    "tabindex",
                    "0",
                    "role",
                    "group",
                    "aria-label",
                    "Board " + board.id() + ", every part and turn");
            page.open("table").open("thead").open("tr");
            for (String head : List.of("Part", "Turn", "Comes off", "What it gives"))
                page.element("th", head, "scope", "col");
            page.close().close().open("tbody").line();
            rows.forEach(this::row);
            page.close().close().close().close().line();
        }
        page.close().line();
    }

    private void row(ExplanationWords.Row row) {
        page.open("tr", "class", row.chosen() ? "chosen" : null);
        page.element("th", row.part().name(), "scope", "row");
        page.element("td", row.turn()).element("td", row.off()).open("td");
        drawings.sign(page, row.clear() ? Verdict.SOUND : Verdict.WRONG);
        page.text(" " + row.result()).close().close().line();
    }

    private void practice() {
        section("practice", "The workshop’s practice in force");
        page.open("dl", "class", "settings").line();
        for (PracticeWords.Setting set : PracticeWords.all(replayed.scenario().practice())) {
            page.element("dt", set.name()).open("dd").text(set.value() + ". ");
            page.element("span", set.meaning(), "class", "quiet").close().line();
        }
        page.close().close().line();
    }

    private void cautions() {
        section("cautions", "Before real work");
        page.open("ul");
        for (String caution : Cautions.ALL) page.element("li", caution);
        page.close().close().line();
    }

    private void section(String id, String title) {
        page.open("section", "id", id, "aria-labelledby", id + "-title");
        page.element("h2", title, "id", id + "-title").line();
    }
}
