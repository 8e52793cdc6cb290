package org.marktwice.view.bench;

import java.util.Locale;
import java.util.Optional;
import org.marktwice.bench.Action;
import org.marktwice.rulebook.Hints;
import org.marktwice.rulebook.Outcome;
import org.marktwice.rulebook.PracticeWords;
import org.marktwice.rulebook.SlipWords;
import org.marktwice.scenario.Practice;
import org.marktwice.timber.SurfacePoint;

/** What the learner may ask for and say of their own: hints, estimates, less help. Each goes into the journal. */
final class Help {
    private final BenchModel model;
    private final Chooser chooser;

    Help(BenchModel model, Chooser chooser) {
        this.model = model;
        this.chooser = chooser;
    }

    boolean mayHint() {
        return model.session().bench().guidance() != Practice.Guidance.EXAMINATION;
    }

    /** Gives the next hint in the line below, and turns the board so that its place can be seen. */
    void hint() {
        Optional<Hints.Given> next =
                Hints.next(model.session().situation(), model.board().board().id());
        if (next.isEmpty()) {
            model.say(Note.plain("There is nothing to hint at: whatever can be judged so far is sound."));
            return;
        }
        Hints.Given hint = next.get();
        if (!model.perform(here(), hint::at)) return;
        String board = hint.finding().subject().board();
        if (board != null) model.select(board);
        hint.finding().evidence().surfaces().stream().findFirst().ifPresent(model::show);
        model.say(Note.plain("Hint " + hint.grade() + " of " + Action.Hint.GRADES + ", " + Hints.grade(hint.grade())
                + ": " + hint.words()));
    }

    /** Asks how near the nearest knot will come to a joint. */
    void estimate() {
        if (model.grants(Practice.Aid.CLEARANCE)) {
            model.say(Note.refused("The clearances are written on the board here: there is nothing to estimate"));
            return;
        }
        if (model.part().isEmpty()) {
            model.say(Note.refused("Name the board first: the estimate is for the part that it becomes"));
            return;
        }
        String board = model.board().board().id();
        chooser.clearance(mm -> {
            if (model.perform(here(), t -> new Action.EstimateClearance(t, board, mm))) {
                model.say(Note.read("You expect " + Reading.mm(mm) + " from the nearest knot to a joint. Turn the board"
                        + " and settle it: the mark sheet sets what comes beside it."));
            }
        });
    }

    boolean maySeeJob() {
        return Outcome.shown(model.session().bench()) != Outcome.Shown.NOTHING;
    }

    /** Goes to the job as it would come out, or says why it isn't to be seen yet. */
    void job(Runnable door) {
        if (maySeeJob()) {
            door.run();
            return;
        }
        boolean examined = model.session().bench().guidance() == Practice.Guidance.EXAMINATION;
        model.say(
                Note.refused(
                        examined
                                ? "An examination: the job is shown with the mark sheet, once your teacher has given it"
                                : "Here the job is shown with the mark sheet; until then picture it yourself, as at the bench"));
    }

    /** Where joints are set out; in an examination it comes with the mark sheet. */
    boolean mayDryFit() {
        return model.setsOut() && mayHint();
    }

    boolean mayNameSlip() {
        return model.session().bench().takenOver() > 0;
    }

    /** Asks which slip of the trade's list was made on the board in hand. */
    void nameSlip() {
        String board = model.board().board().id();
        chooser.slip(slip -> {
            if (model.perform(here(), t -> new Action.Fault(t, board, slip.id()))) {
                model.say(Note.read(
                        "Named on board " + board + ": " + Words.lower(SlipWords.title(slip)) + ". Now put it right."));
            }
        });
    }

    boolean mayFade() {
        return next().isPresent();
    }

    private Optional<Practice.Guidance> next() {
        return switch (model.session().bench().guidance()) {
            case EACH_STEP -> Optional.of(Practice.Guidance.EACH_PART);
            case EACH_PART -> Optional.of(Practice.Guidance.AT_HAND_IN);
            case AT_HAND_IN, EXAMINATION -> Optional.empty();
        };
    }

    /** One step down, for the rest of this attempt. */
    void less() {
        next().ifPresent(to -> {
            if (model.perform(here(), t -> new Action.LessHelp(t, to))) {
                model.say(Note.read(
                        "From here on you are told " + PracticeWords.told(to).toLowerCase(Locale.ROOT) + "."));
            }
        });
    }

    private SurfacePoint here() {
        return Caret.middle(model.board().board(), model.lie().up());
    }
}
