package org.marktwice.view;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.GraphicsConfiguration;
import java.awt.Rectangle;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import org.jspecify.annotations.Nullable;
import org.marktwice.view.Commands.Deed;

/** The window: a menu bar, and one screen at a time. What leads from screen to screen is in {@link Walk}. */
public final class MainWindow extends JFrame {
    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 1600;
    private static final int HEIGHT = 1000;

    private final JPanel stage = new JPanel(new BorderLayout());
    private final NoticeStrip strip;
    private final transient Walk walk;
    private transient @Nullable Screen screen;

    /** @param walk what to show first, and what follows on what */
    MainWindow(Walk walk) {
        super("Marktwice");
        this.walk = walk;
        strip = new NoticeStrip(walk::keepElsewhere);
        setName("marktwice");
        setContentPane(stage);
        setDefaultCloseOperation(DO_NOTHING_ON_CLOSE);
        setMinimumSize(new Dimension(960, 640));
        setSize(fitting(getGraphicsConfiguration()));
        setLocationByPlatform(true);
        addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                // nothing takes the focus before the window is on the screen
                Screen showing = screen;
                if (showing != null) showing.focus();
            }

            @Override
            public void windowClosing(WindowEvent event) {
                walk.close();
            }
        });
        walk.into(this);
        // Where one would look for help: however the keyboard makes a question mark.
        Commands.install(stage, Commands.Deed.of(walk.deeds(), WindowCommands.KEYS), KeyStroke.getKeyStroke('?'));
    }

    /** As large as the screen allows, but no larger than is of use. */
    private static Dimension fitting(GraphicsConfiguration screen) {
        Rectangle room = screen.getBounds();
        return new Dimension(Math.min(WIDTH, room.width), Math.min(HEIGHT, room.height));
    }

    Walk walk() {
        return walk;
    }

    /** Says something above the screen, until it is closed or another screen comes. */
    void notice(String words) {
        strip.say(words);
    }

    /** Says that something isn't saved, for as long as it isn't; empty when all is well again. */
    void trouble(String words) {
        strip.trouble(words);
    }

    void show(Screen next) {
        Screen before = screen;
        // what the screen that is left has to say must still be read on the next
        strip.say("");
        if (before != null) before.left();
        screen = next;
        retitle();
        setJMenuBar(menus(next));
        stage.removeAll();
        stage.add(strip, BorderLayout.NORTH);
        stage.add(next.component());
        stage.revalidate();
        stage.repaint();
        next.focus();
    }

    /** The title of the screen that is showing may be another now. */
    void retitle() {
        Screen showing = screen;
        if (showing != null) setTitle(showing.title());
    }

    @Nullable
    Screen screen() {
        return screen;
    }

    private JMenuBar menus(Screen showing) {
        JMenuBar bar = new JMenuBar();
        List<Deed> window = walk.deeds();
        bar.add(menu(
                "File",
                pick(
                        window,
                        WindowCommands.OPEN,
                        WindowCommands.EXERCISES,
                        WindowCommands.QUIZ,
                        WindowCommands.DESK,
                        WindowCommands.CLOSE)));
        if (!showing.deeds().isEmpty()) bar.add(menu(showing.menu(), showing.deeds()));
        bar.add(menu(
                "View",
                pick(
                        window,
                        WindowCommands.THEME,
                        WindowCommands.LARGER,
                        WindowCommands.SMALLER,
                        WindowCommands.MOVEMENT)));
        bar.add(menu("Help", pick(window, WindowCommands.PRACTICE, WindowCommands.KEYS, WindowCommands.CAUTIONS)));
        return bar;
    }

    private static List<Deed> pick(List<Deed> from, Commands.Command... wanted) {
        return List.of(wanted).stream()
                .flatMap(w -> from.stream().filter(d -> d.command().equals(w)))
                .toList();
    }

    private static JMenu menu(String word, List<Deed> deeds) {
        JMenu menu = new JMenu(word);
        menu.setName("menu-" + word);
        menu.setMnemonic(word.charAt(0));
        for (Deed deed : deeds) {
            // The menu offers only what can be done: asked anew each time it opens.
            menu.addMenuListener(new OnOpening(deed::refresh));
            menu.add(new Commands.Item(deed));
        }
        return menu;
    }

    /** A menu listener for the one event that matters. */
    private record OnOpening(Runnable does) implements javax.swing.event.MenuListener {
        @Override
        public void menuSelected(javax.swing.event.MenuEvent event) {
            does.run();
        }

        @Override
        public void menuDeselected(javax.swing.event.MenuEvent event) {}

        @Override
        public void menuCanceled(javax.swing.event.MenuEvent event) {}
    }
}
