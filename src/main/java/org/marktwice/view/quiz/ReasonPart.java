package org.marktwice.view.quiz;

import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.marktwice.picture.Ink;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Question;
import org.marktwice.rulebook.Verdict;
import org.marktwice.view.Look;
import org.marktwice.view.Look.Style;
import org.marktwice.view.Sign;

/** How an answer went, and why it is so. */
final class ReasonPart extends JPanel {
    private static final long serialVersionUID = 1L;

    ReasonPart() {
        super(new MigLayout("insets 0, gap 0, wrap 1", "[grow,fill]"));
        setOpaque(false);
        setName("reason");
    }

    /** @param remark on when it comes again */
    void tell(Question asked, Answers.Heard heard, String remark) {
        add(verdict(heard.right()));
        String reason = asked.reason().text();
        if (!heard.right()) {
            // the reason may say it already
            heard.offer()
                    .filter(o -> !reason.contains(o.because()))
                    .ifPresent(o -> add(prose(o.because(), Style.BODY, Ink.INK), "wmin 0, gaptop 8"));
            if (asked.answers().how() == Answers.How.FIGURE) {
                String should = "Right: " + asked.answers().rightOne().text() + ".";
                add(prose(should, Style.STRONG, Ink.INK), "wmin 0, gaptop 8");
            }
        }
        JTextArea why = prose(reason, Style.BODY, Ink.INK);
        why.setName("why");
        add(why, "wmin 0, gaptop 8");
        add(prose(remark, Style.NOTE, Ink.QUIET), "wmin 0, gaptop 12");
    }

    private static JLabel verdict(boolean right) {
        JLabel verdict =
                Look.inked(new JLabel(right ? "Right" : "Not so"), Style.SUBTITLE, right ? Ink.SOUND : Ink.WRONG);
        verdict.setIcon(new Sign(right ? Verdict.SOUND : Verdict.WRONG));
        verdict.setIconTextGap(Look.px(8));
        verdict.setName("verdict");
        return verdict;
    }

    /** A question's words, a figure never apart from its unit. */
    static JTextArea prose(String text, Style style, Ink ink) {
        return Look.prose(Question.unbroken(text), style, ink);
    }
}
