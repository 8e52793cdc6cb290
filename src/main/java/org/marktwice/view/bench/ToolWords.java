package org.marktwice.view.bench;

import java.awt.Dimension;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JPanel;
import org.marktwice.view.Commands.Command;

/** The words for what can be taken in the hand, each with its key, and the ways of turning the board over. */
final class ToolWords extends JPanel {
    private static final long serialVersionUID = 1L;
    private final transient BenchModel model;
    private final transient Map<String, WordButton> words = new LinkedHashMap<>();

    /** @param run does a command, as its key would */
    ToolWords(BenchModel model, Consumer<Command> run) {
        super(new WrapLayout(2, 0));
        this.model = model;
        setOpaque(false);
        add(new WordButton(BenchCommands.RIGHT, "Roll", "→", () -> run.accept(BenchCommands.RIGHT)));
        add(new WordButton(BenchCommands.UP, "End for end", "↑", () -> run.accept(BenchCommands.UP)));
        for (Command tool : BenchCommands.TOOLS) {
            if (!model.setsOut() && BenchCommands.SETTING_OUT.contains(tool)) continue;
            WordButton word = new WordButton(tool, () -> run.accept(tool));
            words.put(tool.id(), word);
            add(word);
        }
        refresh();
    }

    /** A BorderLayout gives a component its width before it asks for its height, so that the words may wrap. */
    @Override
    public Dimension getPreferredSize() {
        return getLayout().preferredLayoutSize(this);
    }

    void refresh() {
        String held = model.tool().map(t -> t.command().id()).orElse("");
        words.forEach((id, word) -> word.setSelected(id.equals(held)));
        repaint();
    }
}
