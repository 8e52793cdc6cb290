package org.marktwice.view.bench;

import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JSplitPane;
import org.marktwice.timber.Board;
import org.marktwice.view.Look;

/** The two views of the board with a divider that moves; at first so divided that the boards are as large as can be. */
final class TwoViews extends JSplitPane {
    private static final long serialVersionUID = 1L;
    private final transient List<Board> boards;
    private boolean divided;

    TwoViews(List<Board> boards, JComponent isometric, JComponent unrolled) {
        super(VERTICAL_SPLIT, true, isometric, unrolled);
        this.boards = List.copyOf(boards);
        setName("split");
        setBorder(BorderFactory.createEmptyBorder());
        setOpaque(false);
        setDividerSize(Look.px(14));
    }

    @Override
    public void doLayout() {
        if (!divided && getWidth() > 0 && getHeight() > 0) {
            divided = true;
            divide();
        }
        super.doLayout();
    }

    private void divide() {
        SplitChoice choice = SplitChoice.best(boards, getWidth(), getHeight(), Look.px(100) / 100.0);
        setOrientation(choice.stacked() ? VERTICAL_SPLIT : HORIZONTAL_SPLIT);
        setResizeWeight(choice.share());
        int whole = choice.stacked() ? getHeight() : getWidth();
        setDividerLocation((int) Math.round(whole * choice.share()));
    }
}
