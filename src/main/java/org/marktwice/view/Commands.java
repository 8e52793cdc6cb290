package org.marktwice.view;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.ActionEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.KeyStroke;
import javax.swing.text.JTextComponent;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.bench.BenchCommands;
import org.marktwice.view.desk.Desk;
import org.marktwice.view.dryfit.FitScreen;
import org.marktwice.view.quiz.QuizCommands;

/**
 * The one registry of what can be done in the window: its word, its key and what it does, said once and used by menus,
 * keys, tooltips and the key sheet. A screen lists its commands in its {@link Place}, and binds each to a {@link Deed}.
 */
public final class Commands {
    private Commands() {}

    /** Where a command can be given. Keys may be the same in two places that are never on the screen together. */
    public enum Place {
        WINDOW("Everywhere"),
        START("Exercises"),
        BENCH("Bench"),
        JOB("The job as it comes out"),
        FIT("Dry fit"),
        HAND_IN("Hand in"),
        SHEET("Mark sheet"),
        REPLAY("Replay"),
        DESK("Teacher's desk"),
        SET("Setting an exercise"),
        HAND_OUT("Handing out"),
        MARK("Marking a class"),
        ALLOT("Allotting boards"),
        RECORD("Finished jobs"),
        QUIZ("Quiz"),
        PROGRESS("How far you are in the quiz");

        private final String title;

        Place(String title) {
            this.title = title;
        }

        public String title() {
            return title;
        }
    }

    /**
     * Something that can be done.
     *
     * @param word as on the menu
     * @param key as {@link KeyStroke#getKeyStroke(String)} reads it, with {@code menu} for the platform's own menu key;
     *     empty where it has none
     * @param help one line: what it does
     */
    public record Command(String id, Place place, String word, String key, String help) {
        /** @param menuMask the platform's menu key, such as {@link InputEvent#CTRL_DOWN_MASK} */
        public Optional<KeyStroke> keyStroke(int menuMask) {
            if (key.isEmpty()) return Optional.empty();
            String plain = key.replace("menu ", "");
            KeyStroke stroke = KeyStroke.getKeyStroke(plain);
            if (stroke == null) throw new IllegalArgumentException(id + ": no such key: " + key);
            if (plain.equals(key)) return Optional.of(stroke);
            return Optional.of(KeyStroke.getKeyStroke(stroke.getKeyCode(), stroke.getModifiers() | menuMask));
        }

        /** The key as a person reads it, such as {@code Ctrl+Z}; empty where it has none. */
        public String keyText() {
            return keyStroke(Keys.menuMask()).map(Keys::spoken).orElse("");
        }
    }

    /** What a command does, with its key. */
    public static String tooltip(Command command) {
        return Keys.tooltip(command);
    }

    /** All commands: each screen lists its own, and is named here. */
    public static List<Command> all() {
        return Stream.of(
                        WindowCommands.ALL,
                        StartScreen.ALL,
                        BenchCommands.ALL,
                        JobScreen.ALL,
                        FitScreen.ALL,
                        HandInScreen.ALL,
                        SheetScreen.ALL,
                        ReplayScreen.ALL,
                        Desk.COMMANDS,
                        QuizCommands.ALL)
                .flatMap(List::stream)
                .toList();
    }

    public static List<Command> of(Place place) {
        return all().stream().filter(c -> c.place() == place).toList();
    }

    /** Pairs that share a key where both could be meant, one line each. */
    static List<String> clashes(List<Command> commands) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < commands.size(); i++) {
            for (int j = i + 1; j < commands.size(); j++) {
                Command a = commands.get(i);
                Command b = commands.get(j);
                boolean together = a.place() == b.place() || a.place() == Place.WINDOW || b.place() == Place.WINDOW;
                Optional<KeyStroke> key = a.keyStroke(InputEvent.CTRL_DOWN_MASK);
                if (together && key.isPresent() && key.equals(b.keyStroke(InputEvent.CTRL_DOWN_MASK))) {
                    found.add(a.id() + " and " + b.id() + " share " + a.key());
                }
            }
        }
        return found;
    }

    /** A command bound to what it does in one window. */
    public static final class Deed extends AbstractAction {
        private static final long serialVersionUID = 1L;
        private final transient Command command;
        private final transient Runnable does;
        private final transient BooleanSupplier can;

        public Deed(Command command, Runnable does) {
            this(command, does, () -> true);
        }

        /** @param can whether it can be done just now; asked whenever it matters */
        public Deed(Command command, Runnable does, BooleanSupplier can) {
            super(command.word());
            this.command = command;
            this.does = does;
            this.can = can;
            putValue(Action.ACTION_COMMAND_KEY, command.id());
            putValue(Action.SHORT_DESCRIPTION, Keys.tooltip(command));
            command.keyStroke(Keys.menuMask()).ifPresent(k -> putValue(Action.ACCELERATOR_KEY, k));
        }

        /** The one that a command does. */
        public static Deed of(List<Deed> deeds, Command command) {
            return deeds.stream()
                    .filter(d -> d.command.equals(command))
                    .findFirst()
                    .orElseThrow();
        }

        public Command command() {
            return command;
        }

        @Override
        public boolean isEnabled() {
            return super.isEnabled() && can.getAsBoolean();
        }

        /** Tells buttons and menu items that bear this deed to look again whether it can be done. */
        public void refresh() {
            firePropertyChange("enabled", null, isEnabled());
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            if (isEnabled()) does.run();
        }
    }

    /** Makes the deeds' keys work wherever the focus is while {@code screen} is showing. */
    public static void install(JComponent screen, List<Deed> deeds) {
        for (Deed deed : deeds) {
            KeyStroke key = (KeyStroke) deed.getValue(Action.ACCELERATOR_KEY);
            if (key != null) install(screen, deed, key);
        }
    }

    /** Makes a key work for a deed, whether or not it is its own. */
    static void install(JComponent screen, Deed deed, KeyStroke key) {
        String id = deed.command().id() + " " + key;
        screen.getInputMap(JComponent.WHEN_IN_FOCUSED_WINDOW).put(key, id);
        screen.getActionMap().put(id, new WhileNotTyping(deed, key));
    }

    /** Keeps plain letters for whoever is being typed into. */
    private static final class WhileNotTyping extends AbstractAction {
        private static final long serialVersionUID = 1L;
        private final transient Deed deed;
        private final transient KeyStroke key;

        WhileNotTyping(Deed deed, KeyStroke key) {
            this.deed = deed;
            this.key = key;
        }

        @Override
        public boolean isEnabled() {
            return deed.isEnabled() && !Keys.typedInto(key);
        }

        @Override
        public void actionPerformed(ActionEvent event) {
            deed.actionPerformed(event);
        }
    }

    /** A menu item for a deed, which too keeps plain letters for whoever is being typed into. */
    static final class Item extends JMenuItem {
        private static final long serialVersionUID = 1L;

        Item(Deed deed) {
            super(deed);
            setName("item-" + deed.command().id());
        }

        @Override
        protected boolean processKeyBinding(KeyStroke key, KeyEvent event, int condition, boolean pressed) {
            return !Keys.typedInto(key) && super.processKeyBinding(key, event, condition, pressed);
        }
    }

    /** Keys in words. */
    static final class Keys {
        private Keys() {}

        static int menuMask() {
            boolean mac =
                    System.getProperty("os.name", "").toLowerCase(Locale.ROOT).contains("mac");
            return mac ? InputEvent.META_DOWN_MASK : InputEvent.CTRL_DOWN_MASK;
        }

        /** Whether a text field would take this key: no Ctrl, Alt or Meta, and no function key. */
        static boolean isTyped(KeyStroke key) {
            int strong = InputEvent.CTRL_DOWN_MASK | InputEvent.ALT_DOWN_MASK | InputEvent.META_DOWN_MASK;
            boolean function = key.getKeyCode() >= KeyEvent.VK_F1 && key.getKeyCode() <= KeyEvent.VK_F12;
            return (key.getModifiers() & strong) == 0 && !function && key.getKeyCode() != KeyEvent.VK_ESCAPE;
        }

        /** Whether this key, pressed now, belongs to a text field. */
        static boolean typedInto(KeyStroke key) {
            @Nullable
            Component focused =
                    KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return isTyped(key) && focused instanceof JTextComponent text && text.isEditable();
        }

        static String spoken(KeyStroke key) {
            String plus = InputEvent.getModifiersExText(key.getModifiers());
            return Stream.of(plus, code(key.getKeyCode()))
                    .filter(s -> !s.isEmpty())
                    .collect(Collectors.joining("+"));
        }

        private static String code(int code) {
            return switch (code) {
                case KeyEvent.VK_LEFT -> "←";
                case KeyEvent.VK_RIGHT -> "→";
                case KeyEvent.VK_UP -> "↑";
                case KeyEvent.VK_DOWN -> "↓";
                case KeyEvent.VK_ESCAPE -> "Esc";
                case KeyEvent.VK_EQUALS -> "=";
                case KeyEvent.VK_MINUS -> "-";
                case KeyEvent.VK_COMMA -> ",";
                case KeyEvent.VK_PERIOD -> ".";
                case KeyEvent.VK_SLASH -> "/";
                case KeyEvent.VK_ENTER -> "Enter";
                case KeyEvent.VK_SPACE -> "Space";
                default -> KeyEvent.getKeyText(code);
            };
        }

        static String tooltip(Command command) {
            String key = command.keyText();
            return key.isEmpty() ? command.help() : command.help() + " (" + key + ")";
        }
    }
}
