package org.marktwice.cli;

import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.marktwice.rulebook.Rule;
import org.marktwice.rulebook.RuleBook;
import org.marktwice.rulebook.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The rule book. */
@Command(
        name = "rules",
        description = "Writes the rule book: every rule with what it is worth, why it matters and what to do instead.",
        footer = {
            "",
            "Exit 0.",
            "",
            "--json writes a list, in the order of the stages, of:",
            "  id, stage, worth (marks where the scenario doesn't say otherwise), title, why, instead, source",
            "  safety        a caution that belongs to it, where there is one"
        })
final class RulesCommand implements Callable<Integer> {
    private final Console console;

    @Option(names = "--json", description = "write the rules as JSON, as described below")
    private boolean json;

    RulesCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (json)
            console.jsonList(RuleBook.rules().stream().map(RulesCommand::json).toList());
        else RuleBook.rules().forEach(this::text);
        return Exit.DONE;
    }

    private static Map<String, @Nullable Object> json(Rule rule) {
        Texts.RuleTexts texts = Texts.of(rule.id());
        return Fields.with("id", rule.id())
                .and("stage", rule.stage().id())
                .and("worth", rule.worth())
                .and("title", texts.title())
                .and("why", texts.why())
                .and("instead", texts.instead())
                .and("source", texts.source())
                .maybe("safety", texts.safety().isEmpty() ? null : texts.safety())
                .map();
    }

    private void text(Rule rule) {
        Texts.RuleTexts texts = Texts.of(rule.id());
        console.line(Text.ends(
                rule.stage().title() + ": " + texts.title() + " (" + rule.id() + ")",
                "worth " + Text.number(rule.worth())));
        console.line(Text.wrapped("  why      ", texts.why()));
        console.line(Text.wrapped("  instead  ", texts.instead()));
        console.line(Text.wrapped("  source   ", texts.source()));
        if (!texts.safety().isEmpty()) console.line(Text.wrapped("  caution  ", texts.safety()));
        console.line("");
    }
}
