package org.marktwice.view;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.TextAttribute;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.UIManager;
import javax.swing.plaf.FontUIResource;
import javax.swing.text.DefaultCaret;
import net.miginfocom.layout.PlatformDefaults;
import org.marktwice.picture.Ink;
import org.marktwice.picture.Palette;

/**
 * The window's look: one font, one palette by meaning, light or dark, and a text size with which everything scales. All
 * colours of the screens come from here, and here they come from the palette.
 */
public final class Look {
    private static final int BODY = 13;
    private static final int TITLE = 20;
    private static final int SUBTITLE = 15;
    private static final int NOTE = 12;
    private static final int HEADING = 11;
    private static final String FONTS = "/com/formdev/flatlaf/fonts/inter/Inter-";

    private static Palette palette = Palette.LIGHT;

    private Look() {}

    /** The styles of text; each a font of the window's defaults, so that it follows the text size. */
    public enum Style {
        TITLE("Marktwice.title"),
        SUBTITLE("Marktwice.subtitle"),
        BODY("Marktwice.body"),
        STRONG("Marktwice.strong"),
        NOTE("Marktwice.note"),
        HEADING("Marktwice.heading");

        private final String key;

        Style(String key) {
            this.key = key;
        }

        public Font font() {
            return UIManager.getFont(key);
        }
    }

    /**
     * Sets the look up, and again whenever it is changed; windows that are open follow.
     *
     * @param textSize 1 is the usual size
     */
    public static void install(boolean dark, double textSize) {
        palette = dark ? Palette.DARK : Palette.LIGHT;
        Font plain = load("Regular");
        Font strong = load("SemiBold");
        put("defaultFont", plain, BODY * textSize);
        put(Style.TITLE.key, strong, TITLE * textSize);
        put(Style.SUBTITLE.key, strong, SUBTITLE * textSize);
        put(Style.BODY.key, plain, BODY * textSize);
        put(Style.STRONG.key, strong, BODY * textSize);
        put(Style.NOTE.key, plain, NOTE * textSize);
        put(Style.HEADING.key, strong.deriveFont(Map.of(TextAttribute.TRACKING, 0.06f)), HEADING * textSize);
        FlatLaf.setGlobalExtraDefaults(defaults());
        if (dark) FlatDarkLaf.setup();
        else FlatLightLaf.setup();
        enterPressesButtons();
        UIManager.put(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        // The layout multiplies by the look and feel's own factor, which comes in coarse steps; together they are the
        // text size.
        float scale = (float) (textSize / UIScale.getUserScaleFactor());
        PlatformDefaults.setLogicalPixelBase(PlatformDefaults.BASE_SCALE_FACTOR);
        PlatformDefaults.setHorizontalScaleFactor(scale);
        PlatformDefaults.setVerticalScaleFactor(scale);
        FlatLaf.updateUI();
    }

    /** Enter does what Space does: it presses the button that has the focus. */
    private static void enterPressesButtons() {
        for (String button : new String[] {"Button", "ToggleButton", "CheckBox", "RadioButton"}) {
            if (UIManager.get(button + ".focusInputMap") instanceof InputMap keys) {
                keys.put(KeyStroke.getKeyStroke("ENTER"), "pressed");
                keys.put(KeyStroke.getKeyStroke("released ENTER"), "released");
            }
        }
    }

    public static Palette palette() {
        return palette;
    }

    public static boolean isDark() {
        return palette == Palette.DARK;
    }

    public static Color colour(Ink ink) {
        return palette.of(ink);
    }

    /** A length of the usual text size at the size that is set. */
    public static int px(double length) {
        return (int) Math.round(UIManager.getFont("defaultFont").getSize2D() / BODY * length);
    }

    /** A line of text. */
    public static JLabel label(String text, Style style) {
        return styled(new JLabel(text), style);
    }

    /** A line of text that steps back. */
    public static JLabel quiet(String text, Style style) {
        return inked(new JLabel(text), style, Ink.QUIET);
    }

    /** A line of text in an ink, which follows light and dark. */
    public static JLabel inked(JLabel label, Style style, Ink ink) {
        label.putClientProperty(FlatClientProperties.STYLE, "font: $" + style.key + "; foreground: $" + key(ink));
        return label;
    }

    public static <C extends JComponent> C styled(C component, Style style) {
        component.putClientProperty(FlatClientProperties.STYLE, "font: $" + style.key);
        return component;
    }

    /** Text that wraps, to be read and not written; it can be focused and read out, and selected to copy. */
    public static JTextArea prose(String text, Style style, Ink ink) {
        JTextArea area = new JTextArea();
        // Before the text is set: a caret at its end would scroll whatever the words lie in to there.
        ((DefaultCaret) area.getCaret()).setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
        area.setText(text);
        area.setEditable(false);
        area.setFocusable(false);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setOpaque(false);
        area.setBorder(BorderFactory.createEmptyBorder());
        return inked(area, style, ink);
    }

    /** Prose in another ink. */
    public static JTextArea inked(JTextArea prose, Style style, Ink ink) {
        prose.putClientProperty(
                FlatClientProperties.STYLE, "font: $" + style.key + "; foreground: $" + key(ink) + "; margin: 0,0,0,0");
        return prose;
    }

    /** The one button of a screen that leads on. */
    public static JButton primary(JButton button) {
        button.putClientProperty(
                FlatClientProperties.STYLE,
                "font: $" + Style.STRONG.key + "; background: $" + key(Ink.ACTION) + "; foreground: $"
                        + key(Ink.ON_ACTION) + "; borderColor: $" + key(Ink.ACTION) + "; hoverBorderColor: $"
                        + key(Ink.ACTION) + "; focusedBackground: $" + key(Ink.ACTION) + "; margin: 7,18,7,18");
        return button;
    }

    /** A button that is a word, no more. */
    public static JButton plain(JButton button) {
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_BORDERLESS);
        return button;
    }

    /** A button in a text: words in the ink of what can be done. */
    public static JButton link(JButton button) {
        plain(button)
                .putClientProperty(
                        FlatClientProperties.STYLE,
                        "foreground: $" + key(Ink.ACTION) + "; margin: 2,0,2,0; background: $" + key(Ink.PANEL));
        return button;
    }

    /** What every painter of the screens sets first. */
    public static Graphics2D smooth(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        return g;
    }

    /** The window's default that holds this ink. */
    public static String key(Ink ink) {
        return "Marktwice.ink." + ink.name();
    }

    private static Map<String, String> defaults() {
        Map<String, String> d = new HashMap<>();
        for (Ink ink : Ink.values()) d.put(key(ink), hex(ink));
        d.put("@background", hex(Ink.PAPER));
        d.put("@foreground", hex(Ink.INK));
        d.put("@componentBackground", hex(Ink.PANEL));
        d.put("@buttonBackground", hex(Ink.PANEL));
        d.put("@menuBackground", hex(Ink.PANEL));
        d.put("@disabledForeground", hex(Ink.QUIET));
        d.put("@accentColor", hex(Ink.ACTION));
        d.put("@selectionForeground", hex(Ink.ON_ACTION));
        d.put("Component.borderColor", hex(Ink.BORDER));
        d.put("Component.focusedBorderColor", hex(Ink.ACTION));
        d.put("Component.focusColor", hex(Ink.ACTION));
        d.put("Component.focusWidth", "1");
        d.put("Component.innerFocusWidth", "0");
        d.put("Component.arc", "6");
        d.put("Button.arc", "6");
        d.put("Button.borderColor", hex(Ink.BORDER));
        d.put("Button.focusedBackground", hex(Ink.PANEL));
        d.put("Button.margin", "6,14,6,14");
        d.put("OptionPane.border", "16,20,16,20");
        d.put("Separator.foreground", hex(Ink.BORDER));
        d.put("ScrollPane.border", "0,0,0,0");
        d.put("ScrollBar.width", "12");
        d.put("ScrollBar.track", hex(Ink.PAPER));
        d.put("ToolTip.background", hex(Ink.PANEL));
        d.put("ToolTip.foreground", hex(Ink.INK));
        d.put("MenuBar.background", hex(Ink.PANEL));
        d.put("MenuBar.borderColor", hex(Ink.BORDER));
        d.put("CheckBox.icon.focusWidth", "1");
        return d;
    }

    private static String hex(Ink ink) {
        Color c = palette.of(ink);
        return String.format(Locale.ROOT, "#%02x%02x%02x", c.getRed(), c.getGreen(), c.getBlue());
    }

    private static void put(String key, Font font, double size) {
        UIManager.put(key, new FontUIResource(font.deriveFont((float) size)));
    }

    /** The font is used as created: registering it with the system is neither needed nor safe on every screen. */
    private static Font load(String weight) {
        try (InputStream in = Look.class.getResourceAsStream(FONTS + weight + ".otf")) {
            if (in == null) throw new IllegalStateException("the font Inter " + weight + " is not in the program");
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the font Inter " + weight + " can't be read", e);
        }
    }
}
