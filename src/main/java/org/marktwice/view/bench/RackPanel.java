package org.marktwice.view.bench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import javax.accessibility.AccessibleRole;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.bench.BoardState;
import org.marktwice.drawing.Part;
import org.marktwice.drawing.Placing;
import org.marktwice.picture.FigureCache;
import org.marktwice.picture.Figures;
import org.marktwice.picture.Ink;
import org.marktwice.picture.SurfaceFrame;
import org.marktwice.picture.SurfacePainter;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.Board;
import org.marktwice.timber.Surface;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Painted;

/** The boards on the rack, to be chosen by pointing or by the arrows up and down. */
final class RackPanel extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int CARD_WIDTH = 222;
    private static final int PAD = 12;
    private static final int LETTER = 30;
    private static final int PICTURE = 54;
    private static final int GAP = 10;

    private final transient BenchModel model;
    private final transient SurfacePainter painter;
    private final DefaultListModel<String> ids = new DefaultListModel<>();
    private final JList<String> list = new Boards();
    private boolean following;

    RackPanel(BenchModel model, FigureCache cache) {
        super(new MigLayout("insets 0, gap 0 8lp, wrap 1", "[grow,fill]", "[][grow,fill]"));
        this.model = model;
        this.painter = new SurfacePainter(Figures.live(cache, this::repaint), Style.BODY.font());
        setOpaque(false);
        JLabel head = Look.quiet("RACK", Style.HEADING);
        head.setLabelFor(list);
        add(head);
        list.setName("rack");
        list.setOpaque(false);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Card());
        list.getAccessibleContext().setAccessibleName("Rack of boards");
        model.session().scenario().boards().forEach(b -> ids.addElement(b.id()));
        list.addListSelectionListener(e -> {
            String chosen = list.getSelectedValue();
            if (!following && chosen != null) model.select(chosen);
        });
        JScrollPane scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setOpaque(false);
        scroll.getViewport().setOpaque(false);
        scroll.setBorder(null);
        JPanel holder = new JPanel(new BorderLayout());
        holder.setOpaque(false);
        holder.add(scroll);
        add(holder, "hmin 0");
        refresh();
    }

    void refresh() {
        following = true;
        list.setSelectedValue(model.board().board().id(), true);
        following = false;
        list.repaint();
    }

    /** Pixels a millimetre of all boards alike, so that their sizes can be compared. */
    private double scale(double width) {
        double scale = Double.POSITIVE_INFINITY;
        for (Board board : model.session().scenario().boards()) {
            double across = width / board.size().length();
            double down = Look.px(PICTURE) / board.size().width();
            scale = Math.min(scale, Math.min(across, down));
        }
        return scale;
    }

    private int pictureHeight() {
        double widest = model.session().scenario().boards().stream()
                .mapToDouble(b -> b.size().width())
                .max()
                .orElse(0);
        return (int) Math.ceil(widest * scale(Look.px(CARD_WIDTH - LETTER - 2 * PAD)));
    }

    void focusList() {
        list.requestFocusInWindow();
    }

    /** The line that matters: the part it is, or that it is none yet. */
    static String title(BenchModel model, BoardState state) {
        if (state.setAside().isPresent()) return "Set aside";
        return model.session().situation().partOf(state).map(Part::name).orElse("not named yet");
    }

    /** What has been done to it. */
    static String note(BenchModel model, BoardState state) {
        if (state.setAside().isPresent())
            return state.setAside().get().because().spoken();
        var placing = model.session().bench().placing(state);
        if (placing.isPresent()) return settled(model, placing.get());
        return Progress.marks(state);
    }

    private static String settled(BenchModel model, Placing placing) {
        boolean told = model.grants(Practice.Aid.CLEARANCE);
        return Clearance.settled(model.session().scenario(), placing, told);
    }

    /** A list that leaves letters to the tools. */
    private final class Boards extends JList<String> {
        private static final long serialVersionUID = 1L;

        Boards() {
            super(ids);
        }

        /** What the board is made of, and how its surfaces are graded. */
        @Override
        public @Nullable String getToolTipText(MouseEvent event) {
            int index = locationToIndex(event.getPoint());
            if (index < 0 || !getCellBounds(index, index).contains(event.getPoint())) return null;
            return Words.grades(model.session().bench().board(ids.get(index)).board());
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public int getNextMatch(String prefix, int start, javax.swing.text.Position.Bias bias) {
            return -1;
        }
    }

    /** One board as a card. */
    private final class Card extends Painted implements ListCellRenderer<String> {
        private static final long serialVersionUID = 1L;
        private transient BoardState state = model.board();
        private boolean chosen;
        private boolean focused;

        Card() {
            super(AccessibleRole.LIST_ITEM);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends String> of, String id, int index, boolean isSelected, boolean hasFocus) {
            state = model.session().bench().board(id);
            chosen = isSelected;
            focused = hasFocus && of.hasFocus();
            readAs("Board " + id + ", " + title(model, state) + ", " + note(model, state) + ", "
                    + Words.size(state.board().size()));
            return this;
        }

        @Override
        public Dimension getPreferredSize() {
            int lines =
                    metrics(Style.STRONG).getHeight() + 2 * metrics(Style.NOTE).getHeight();
            return new Dimension(Look.px(CARD_WIDTH - 60), Look.px(2 * PAD + 4 + GAP) + pictureHeight() + lines);
        }

        private FontMetrics metrics(Style style) {
            return list.getFontMetrics(style.font());
        }

        @Override
        protected void draw(Graphics2D g) {
            int height = getHeight() - Look.px(GAP);
            double line = chosen ? Look.px(2) : 1;
            double arc = Look.px(10);
            RoundRectangle2D box =
                    new RoundRectangle2D.Double(line / 2, line / 2, getWidth() - line, height - line, arc, arc);
            g.setColor(Look.colour(Ink.PANEL));
            g.fill(box);
            g.setColor(Look.colour(chosen ? Ink.ACTION : Ink.BORDER));
            g.setStroke(new java.awt.BasicStroke((float) line));
            g.draw(box);
            if (focused) {
                double in = Look.px(4);
                g.setStroke(new java.awt.BasicStroke(1));
                g.draw(new RoundRectangle2D.Double(in, in, getWidth() - 2 * in, height - 2 * in, arc / 2, arc / 2));
            }
            boolean aside = state.setAside().isPresent();
            g.setColor(Look.colour(aside ? Ink.QUIET : Ink.INK));
            g.setFont(Style.TITLE.font());
            FontMetrics title = g.getFontMetrics();
            String id = state.board().id();
            int letter = Look.px(PAD) + (Look.px(LETTER - 8) - title.stringWidth(id)) / 2;
            g.drawString(
                    id, Math.max(Look.px(6), letter), Look.px(PAD) + pictureHeight() / 2 + title.getAscent() / 2 - 2);
            int x = Look.px(PAD + LETTER);
            picture(g, x, getWidth() - x - Look.px(PAD), aside);
            words(g, x, getWidth() - x - Look.px(PAD), aside);
        }

        private void picture(Graphics2D g, int x, int width, boolean aside) {
            SurfaceFrame frame = SurfaceFrame.of(Surface.FACE_1, state.board());
            double scale = scale(width);
            Graphics2D own = (Graphics2D) g.create();
            own.translate(x, Look.px(PAD) + (pictureHeight() - frame.height() * scale) / 2);
            if (aside) own.setComposite(java.awt.AlphaComposite.SrcOver.derive(0.45f));
            own.scale(scale, scale);
            own.transform(frame.toPage());
            painter.paint(own, Scene.plain(model.session().bench(), state), Surface.FACE_1, scale, Look.palette());
            own.dispose();
        }

        private void words(Graphics2D g, int x, int width, boolean aside) {
            int y = Look.px(PAD + 6) + pictureHeight();
            y = line(g, Style.STRONG, aside ? Ink.QUIET : Ink.INK, title(model, state), x, y, width);
            y = line(g, Style.NOTE, Ink.QUIET, note(model, state), x, y, width);
            line(g, Style.NOTE, Ink.QUIET, Words.size(state.board().size()), x, y, width);
        }

        private int line(Graphics2D g, Style style, Ink ink, String text, int x, int y, int width) {
            g.setFont(style.font());
            g.setColor(Look.colour(ink));
            FontMetrics m = g.getFontMetrics();
            String shown = javax.swing.SwingUtilities.layoutCompoundLabel(
                    this,
                    m,
                    text,
                    null,
                    javax.swing.SwingConstants.CENTER,
                    javax.swing.SwingConstants.LEFT,
                    javax.swing.SwingConstants.CENTER,
                    javax.swing.SwingConstants.RIGHT,
                    new java.awt.Rectangle(x, y, width, m.getHeight()),
                    new java.awt.Rectangle(),
                    new java.awt.Rectangle(),
                    0);
            g.drawString(shown, x, y + m.getAscent());
            return y + m.getHeight();
        }
    }
}
