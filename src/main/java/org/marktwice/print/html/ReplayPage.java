package org.marktwice.print.html;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Base64;
import java.util.IdentityHashMap;
import java.util.Locale;
import java.util.Map;
import org.marktwice.feedback.Replayed;
import org.marktwice.feedback.SheetModel;
import org.marktwice.picture.Palette;
import org.marktwice.print.Faces;
import org.marktwice.scenario.Scenario;

/** An attempt as one HTML document. The same attempt makes the same document. */
public final class ReplayPage {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm 'UTC'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);

    private final Replayed replayed;
    private final Scenario scenario;

    private ReplayPage(Replayed replayed) {
        this.replayed = replayed;
        this.scenario = replayed.scenario();
    }

    public static byte[] of(Replayed replayed) {
        return new ReplayPage(replayed).written().getBytes(StandardCharsets.UTF_8);
    }

    private String written() {
        Markup body = new Markup();
        String shelf;
        try (BoardDrawings drawings = new BoardDrawings(scenario.boards(), Faces.regular())) {
            Map<SheetModel.Line, Integer> numbers = numbers();
            header(body);
            body.open("main").line();
            new StepsPart(body, replayed, drawings, numbers).write();
            new SheetPart(body, replayed, drawings, numbers).write();
            body.close().line();
            footer(body);
            shelf = drawings.shelf();
        }
        String script = Parts.read("replay.js");
        Markup page = new Markup().raw("<!DOCTYPE html>\n").open("html", "lang", "en");
        head(page, body + shelf, script);
        page.open("body").line();
        page.open("svg", "class", "shelf", "width", "0", "height", "0", "aria-hidden", "true", "focusable", "false");
        page.line().raw(shelf).close().line();
        page.raw(body.toString()).open("script").raw(script).close().line();
        return page.close().close().line().toString();
    }

    /** Every finding under its place on the sheet. Two findings may read alike, so each is known by itself. */
    private Map<SheetModel.Line, Integer> numbers() {
        Map<SheetModel.Line, Integer> numbers = new IdentityHashMap<>();
        replayed.sheet().groups().forEach(g -> g.lines().forEach(l -> numbers.put(l, numbers.size() + 1)));
        return numbers;
    }

    private void head(Markup page, String used, String script) {
        page.line().open("head").line();
        page.empty("meta", "charset", "utf-8").line();
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1")
                .line();
        page.empty("meta", "name", "color-scheme", "content", "light dark").line();
        // nothing is fetched, and no script runs but the page's own
        String only =
                "default-src 'none'; img-src data:; font-src data:; style-src 'unsafe-inline'; script-src 'sha256-"
                        + sha256(script) + "'";
        page.empty("meta", "http-equiv", "Content-Security-Policy", "content", only)
                .line();
        page.element("title", scenario.title() + ": replay and mark sheet of " + learner())
                .line();
        page.open("style").line();
        page.raw(Faces.declared(used)).line();
        page.raw(":root{" + Inks.declared(Palette.LIGHT) + "}").line();
        page.raw("@media screen and (prefers-color-scheme:dark){:root{" + Inks.declared(Palette.DARK) + "}}")
                .line();
        page.raw(Parts.read("replay.css")).close().line().close().line();
    }

    private static String sha256(String script) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has it", e);
        }
    }

    private String learner() {
        String learner = replayed.attempt().learner();
        return learner.isBlank() ? "no name given" : learner;
    }

    private void header(Markup page) {
        page.element("a", "To the mark sheet", "class", "skip", "href", "#sheet")
                .line();
        page.open("header").open("div");
        page.open("h1").typed(scenario.title()).close();
        page.open("p").text("Level " + scenario.level() + " · Learner ").typed(learner());
        page.text(" · begun ").typed(begun()).text(" · " + handedIn()).close();
        for (String notice : replayed.notices())
            page.open("p", "class", "notice").typed(notice).close();
        page.close();
        page.open("p", "class", "total")
                .element("strong", replayed.sheet().total())
                .text(" marks")
                .close();
        page.open("nav", "aria-label", "On this page").open("ul");
        link(page, "replay", "Replay");
        link(page, "sheet", "Mark sheet");
        link(page, "model", "Model answer");
        link(page, "practice", "Practice in force");
        link(page, "cautions", "Before real work");
        page.close().close().close().line();
    }

    private static void link(Markup page, String to, String word) {
        page.open("li").element("a", word, "href", "#" + to).close();
    }

    private String begun() {
        String started = replayed.attempt().started();
        try {
            return DAY.format(Instant.parse(started));
        } catch (DateTimeException e) {
            return started;
        }
    }

    private String handedIn() {
        int steps = replayed.steps().last();
        String after = replayed.took() + ", " + steps + (steps == 1 ? " step" : " steps");
        return replayed.sheet().bench().handedIn() ? "handed in after " + after : "not handed in yet; so far " + after;
    }

    private static void footer(Markup page) {
        page.open("footer");
        page.element(
                "p",
                "Made with Marktwice. Every mark is computed from the drawing, the boards and what was done; none is stored.");
        page.close().line();
    }
}
