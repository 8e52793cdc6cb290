package org.marktwice.view.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;
import org.marktwice.view.Look;

/** The bottom line keeps its caution whole, whatever was said before. */
class LinePanelTest {
    private static JLabel caution(LinePanel line) {
        return Stream.of(line.getComponents())
                .filter(JLabel.class::isInstance)
                .map(JLabel.class::cast)
                .filter(l -> l.getToolTipText() != null)
                .findFirst()
                .orElseThrow();
    }

    private static void lay(LinePanel line) {
        line.setSize(1200, Look.px(46));
        line.doLayout();
        line.validate();
    }

    @Test
    void theCautionIsWholeAgainAfterALongMessage() throws Exception {
        SwingUtilities.invokeAndWait(() -> {
            Look.install(false, 1);
            LinePanel line = new LinePanel();
            lay(line);
            line.show(Note.plain("word ".repeat(60)));
            lay(line);
            assertThat(caution(line).isVisible()).isFalse();
            line.show(Note.plain("short"));
            lay(line);
            assertThat(caution(line).isVisible()).isTrue();
            assertThat(caution(line).getWidth()).isEqualTo(caution(line).getPreferredSize().width);
        });
    }
}
