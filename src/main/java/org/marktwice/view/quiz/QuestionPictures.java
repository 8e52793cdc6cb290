package org.marktwice.view.quiz;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import org.marktwice.picture.FigureCache;
import org.marktwice.quiz.Answers;
import org.marktwice.quiz.Offer;
import org.marktwice.quiz.Picture;
import org.marktwice.quiz.Question;
import org.marktwice.view.Card;

/** The pictures of a question: what it is about, or the answers where these are drawn; then what shows the reason. */
final class QuestionPictures extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int DRAWN_COLUMNS = 2;

    private final transient FigureCache figures;
    private final List<PictureView> views = new ArrayList<>();
    private boolean movement;

    QuestionPictures(FigureCache figures, boolean movement) {
        super(new BorderLayout());
        this.figures = figures;
        this.movement = movement;
        setOpaque(false);
    }

    static boolean isDrawn(Question question) {
        return question.answers().offers().get(0).drawn() != null;
    }

    /**
     * Puts a question's pictures there.
     *
     * @param choose told which answer is pointed at
     * @param pass told the words of the answer that the pointer is over; a blank for none
     * @return the rows of the answers that are drawn; none where these are words
     */
    List<OfferRow> ask(Question question, IntConsumer choose, Consumer<String> pass) {
        views.clear();
        removeAll();
        List<OfferRow> rows = isDrawn(question) ? drawn(question, choose) : List.of();
        add(rows.isEmpty() ? asked(question, choose, pass) : withPicture(question, grid(rows)));
        return rows;
    }

    private JComponent asked(Question question, IntConsumer choose, Consumer<String> pass) {
        PictureView view = view(question.picture(), "picture", question.given());
        if (question.answers().how() == Answers.How.POINT) {
            List<Offer> offers = question.answers().offers();
            view.offer(
                    p -> at(offers, p) >= 0,
                    p -> choose.accept(at(offers, p)),
                    p -> pass.accept(
                            p.map(o -> offers.get(at(offers, o)).text()).orElse(" ")));
        }
        return card(view);
    }

    private List<OfferRow> drawn(Question question, IntConsumer choose) {
        List<OfferRow> rows = new ArrayList<>();
        List<Offer> offers = question.answers().offers();
        for (int i = 0; i < offers.size(); i++) {
            int offer = i;
            String letter = Answers.letter(i);
            Picture picture = Objects.requireNonNull(offers.get(i).drawn());
            PictureView view = view(picture, "picture-" + letter, offers.get(i).text());
            rows.add(new OfferRow(letter, view, () -> choose.accept(offer), true));
        }
        return rows;
    }

    private static JComponent grid(List<OfferRow> rows) {
        JPanel grid = new JPanel(new MigLayout(
                "insets 0, gap 16, fill, wrap " + DRAWN_COLUMNS,
                "[grow,fill,sg d][grow,fill,sg d]",
                "[grow,fill,sg h][grow,fill,sg h]"));
        grid.setOpaque(false);
        rows.forEach(row -> grid.add(row, "grow, wmin 0, hmin 0"));
        return grid;
    }

    /** The drawn answers, with what they are asked about above them where there is something. */
    private JComponent withPicture(Question question, JComponent grid) {
        if (question.picture() instanceof Picture.Beside beside && beside.isEmpty()) return grid;
        PictureView above = view(question.picture(), "picture", question.given());
        views.remove(above);
        return inTwo("[150lp!,fill][grow,fill]", card(above), grid);
    }

    /** What shows the reason: in the picture that was asked about, or over the drawn answers. */
    void tell(Question question, List<OfferRow> rows) {
        if (!isDrawn(question)) {
            views.get(0).offer(p -> false, p -> {}, p -> {});
            views.get(0).show(question.reason().shows());
            return;
        }
        JPanel row = new JPanel(new MigLayout("insets 0, gap 12, fill"));
        row.setOpaque(false);
        rows.forEach(one -> row.add(one, "grow, wmin 0, hmin 0, sg d"));
        PictureView shows =
                view(question.reason().shows(), "shows", question.reason().text());
        removeAll();
        add(inTwo("[grow,fill][170lp!,fill]", card(shows), row));
    }

    private static JComponent card(PictureView view) {
        Card card = new Card(new BorderLayout());
        card.add(view);
        return card;
    }

    private static JComponent inTwo(String rows, JComponent upper, JComponent lower) {
        JPanel whole = new JPanel(new MigLayout("insets 0, gap 0 16, fill, wrap 1", "[grow,fill]", rows));
        whole.setOpaque(false);
        whole.add(upper, "grow, wmin 0, hmin 0");
        whole.add(lower, "grow, wmin 0, hmin 0");
        return whole;
    }

    private PictureView view(Picture picture, String name, String told) {
        PictureView view = new PictureView(figures, picture);
        view.setMovement(movement);
        view.setName(name);
        view.readAs("Picture");
        view.getAccessibleContext().setAccessibleDescription(told);
        views.add(view);
        return view;
    }

    private static int at(List<Offer> offers, Offer.Place place) {
        return IntStream.range(0, offers.size())
                .filter(i -> place.equals(offers.get(i).place()))
                .findFirst()
                .orElse(-1);
    }

    /** Picks out the place that was chosen. */
    void choose(Offer.Place place) {
        views.get(0).choose(place);
    }

    void setMovement(boolean shown) {
        movement = shown;
        views.forEach(v -> v.setMovement(shown));
    }

    /** The picture that is asked about, or the first of the drawn answers; null before anything is asked. */
    @Nullable
    PictureView first() {
        return views.isEmpty() ? null : views.get(0);
    }
}
