package org.marktwice.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;
import static org.marktwice.Fixtures.SHELF;
import static org.marktwice.Fixtures.UPRIGHT_LEFT;
import static org.marktwice.Fixtures.timber;
import static org.marktwice.drawing.Frames.dowelled;
import static org.marktwice.drawing.Frames.haunched;
import static org.marktwice.drawing.Frames.rail;
import static org.marktwice.drawing.Frames.stile;
import static org.marktwice.drawing.Frames.tenon;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of joint that can't be cut so is refused, with its own reason. The stile is 40 × 24, 200 high. */
class JointKindsRefusedTest {
    private static Part shelf(double fromTheLeft) {
        return timber("shelf", "Shelf")
                .size(200, 120, 18)
                .at(fromTheLeft, 0, 80)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
    }

    private static Joint stopped(Direction at, double mm) {
        return new Joint.StoppedHousing("j", "upright-left", "shelf", at, mm);
    }

    private static Joint bridle() {
        return new Joint.Bridle("j", "stile", "rail");
    }

    static Stream<Arguments> housings() {
        return Stream.of(
                arguments(
                        "joints[0].stops.mm: The housing in Left upright runs over 120 mm:"
                                + " stopped 120 mm short of its front edge nothing is left for Shelf",
                        UPRIGHT_LEFT,
                        SHELF,
                        stopped(Direction.FRONT, 120)),
                arguments(
                        "joints[0].stops.mm: A stop of 0 mm is none: make it a through housing",
                        UPRIGHT_LEFT,
                        SHELF,
                        stopped(Direction.FRONT, 0)),
                arguments(
                        "joints[0].stops.at: The housing in Left upright runs deep: it stops front or back, not top",
                        UPRIGHT_LEFT,
                        SHELF,
                        stopped(Direction.TOP, 10)),
                arguments(
                        "joints[0]: A housing lies in a face of Left upright and is less deep than its thickness"
                                + " of 18 mm; this overlap is 18 × 120 × 18 mm",
                        UPRIGHT_LEFT,
                        shelf(0),
                        stopped(Direction.FRONT, 10)));
    }

    static Stream<Arguments> rebates() {
        Part notched = timber("shelf", "Shelf")
                .size(200, 60, 18)
                .at(0, 0, 282)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        Joint rebate = new Joint.Rebate("j", "upright-left", "shelf");
        return Stream.of(
                arguments(
                        "joints[0]: A rebate is less deep than Left upright is thick;"
                                + " this overlap of 18 × 60 × 18 mm goes right through its 18 mm",
                        UPRIGHT_LEFT,
                        notched,
                        rebate),
                arguments(
                        "joints[0]: A rebate lies at an end or along an edge of Left upright, in a corner of its section;"
                                + " this overlap of 6 × 120 × 18 mm does not",
                        UPRIGHT_LEFT,
                        SHELF,
                        rebate),
                arguments(
                        "joints[0]: Left upright and Shelf do not overlap: there is nothing to join",
                        UPRIGHT_LEFT,
                        shelf(18),
                        rebate));
    }

    static Stream<Arguments> others() {
        return Stream.of(
                arguments(
                        "joints[0]: A housing lies in a face of Left upright and is less deep than its thickness"
                                + " of 18 mm; this overlap is 18 × 120 × 18 mm",
                        UPRIGHT_LEFT,
                        shelf(0),
                        new Joint.ThroughHousing("j", "upright-left", "shelf")),
                arguments(
                        "joints[0].from: The length of Stile runs high: a halving is shared across it",
                        stile(),
                        rail(24, 0, 0, 80),
                        new Joint.Halving("j", "stile", "rail", Direction.TOP)),
                arguments(
                        "joints[0]: Stile and Rail overlap by 40 × 24 × 40 mm: the parts of a butt joint only touch",
                        stile(),
                        rail(24, 0, 0, 80),
                        new Joint.Butt("j", "stile", "rail")));
    }

    static Stream<Arguments> bridles() {
        Part alongside = timber("rail", "Rail")
                .size(300, 40, 24)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        Part flat = timber("rail", "Rail")
                .size(300, 40, 24)
                .runs(JobAxis.ACROSS, JobAxis.DEEP)
                .marks(List.of(Direction.TOP), List.of(Direction.FRONT))
                .part();
        return Stream.of(
                arguments(
                        "joints[0]: Stile is slotted at its end, but the overlap does not reach one:"
                                + " a bridle is not at an end",
                        stile(),
                        rail(24, 0, 0, 80),
                        bridle()),
                arguments(
                        "joints[0]: The lengths of Stile and Rail both run high: a bridle joins parts that cross",
                        stile(),
                        alongside,
                        bridle()),
                arguments(
                        "joints[0]: The thickness of Rail runs high: a bridle shares it in thirds,"
                                + " so it runs deep in both parts",
                        stile(),
                        flat,
                        bridle()),
                arguments(
                        "joints[0]: Stile is 24 mm thick, but the overlap only 20 mm:"
                                + " the parts of a bridle lie flush on both sides",
                        stile(),
                        rail(20, 0, 2, 0),
                        bridle()),
                arguments(
                        "joints[0]: The slot of a bridle runs through the whole width of Stile;"
                                + " this overlap runs over 25 mm of 40 mm",
                        stile(),
                        rail(24, 15, 0, 0),
                        bridle()),
                arguments(
                        "joints[0]: Rail is 40 mm wide where the bridle is, but the slot in Stile is only 30 mm deep",
                        stile(),
                        rail(24, 0, 0, -10),
                        bridle()));
    }

    static Stream<Arguments> tenons() {
        Part rail = rail(24, 15, 0, 80);
        Part alongside = timber("rail", "Rail")
                .size(100, 30, 20)
                .at(10, 2, 150)
                .runs(JobAxis.HIGH, JobAxis.ACROSS)
                .marks(List.of(Direction.FRONT), List.of(Direction.RIGHT))
                .part();
        return Stream.of(
                arguments(
                        "joints[0]: The lengths of Stile and Rail both run high:"
                                + " a tenon enters across the grain of the mortised part",
                        stile(),
                        alongside,
                        tenon(8, 20, null)),
                arguments("joints[0].tenon.thickness: A tenon is thicker than 0 mm", stile(), rail, tenon(0, 30, null)),
                arguments("joints[0].tenon.width: A tenon is wider than 0 mm", stile(), rail, tenon(8, 0, null)),
                arguments(
                        "joints[0].haunch.length: A haunch is shorter than its tenon, which is 25 mm long,"
                                + " and longer than 0; this one is 0 mm",
                        stile(),
                        rail,
                        haunched(8, 28, 12, 0)),
                arguments(
                        "joints[0].tenon.thickness: A tenon of 26 mm is thicker than Rail, which is 24 mm",
                        stile(),
                        rail,
                        tenon(26, 30, null)),
                arguments(
                        "joints[0].tenon.thickness: A mortise of 24 mm leaves no cheeks on both sides of it in Stile,"
                                + " which is 24 mm deep",
                        stile(),
                        rail,
                        tenon(24, 30, null)),
                arguments(
                        "joints[0].tenon.width: A tenon of 44 mm is wider than Rail, which is 40 mm",
                        stile(),
                        rail,
                        tenon(8, 44, null)),
                arguments(
                        "joints[0].tenon.width: A tenon of 32 mm, set in by 12 mm, is wider than Rail, which is 40 mm",
                        stile(),
                        rail,
                        tenon(8, 32, 12.0)),
                arguments("joints[0].tenon.inset: An inset is 0 mm or more", stile(), rail, tenon(8, 20, -1.0)),
                arguments(
                        "joints[0].tenon.inset: The mortise would come out at the end of Stile:"
                                + " set the tenon in, or make it a bridle",
                        stile(),
                        rail(24, 15, 0, 0),
                        tenon(8, 28, 0.0)),
                arguments(
                        "joints[0].tenon: The mortise would come out at the end of Stile:"
                                + " set the tenon in, or make it a bridle",
                        stile(),
                        rail(24, 15, 0, 160),
                        tenon(8, 40, null)),
                arguments(
                        "joints[0]: The tenon is cut on an end of Rail, and this overlap reaches none",
                        stile(),
                        rail(24, -120, 0, 80),
                        tenon(8, 30, null)),
                arguments(
                        "joints[0]: Rail meets Stile over 30 mm of its 40 mm high:"
                                + " all of its section stands on the mortised part",
                        stile(),
                        rail(24, 15, 0, 170),
                        tenon(8, 20, null)),
                arguments(
                        "joints[0].haunch: A haunch stands beside a tenon that is set in: give the tenon an inset",
                        stile(),
                        rail,
                        haunched(8, 30, 0, 8)),
                arguments(
                        "joints[0].haunch.length: A haunch is shorter than its tenon, which is 25 mm long,"
                                + " and longer than 0; this one is 25 mm",
                        stile(),
                        rail,
                        haunched(8, 28, 12, 25)));
    }

    static Stream<Arguments> dowels() {
        Part rail = rail(24, 40, 0, 80);
        return Stream.of(
                arguments("joints[0].dowels.diameter: A dowel is thicker than 0 mm", stile(), rail, dowelled(2, 0, 40)),
                arguments("joints[0].dowels.length: A dowel is longer than 0 mm", stile(), rail, dowelled(2, 8, 0)),
                arguments(
                        "joints[0].dowels.length: A dowel of 80 mm goes 40 mm into Stile,"
                                + " which has only 40 mm of wood there",
                        stile(),
                        rail,
                        dowelled(2, 8, 80)),
                arguments(
                        "joints[0].dowels.diameter: Stile and Rail touch over 24 mm:"
                                + " a dowel of 24 mm finds no wood round it there",
                        stile(),
                        rail,
                        dowelled(1, 24, 40)),
                arguments(
                        "joints[0].dowels.count: Stile and Rail touch over 40 mm:"
                                + " 5 dowels of 8 mm find no wood between them",
                        stile(),
                        rail,
                        dowelled(5, 8, 40)),
                arguments(
                        "joints[0].dowels.count: A dowelled joint has at least one dowel",
                        stile(),
                        rail,
                        dowelled(0, 8, 40)),
                arguments("joints[0]: Stile and Rail do not touch", stile(), rail(24, 41, 0, 80), dowelled(2, 8, 40)),
                arguments(
                        "joints[0]: Stile and Rail overlap by 1 × 24 × 40 mm: the parts of a dowelled joint only touch",
                        stile(),
                        rail(24, 39, 0, 80),
                        dowelled(2, 8, 40)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"housings", "rebates", "others", "bridles", "tenons", "dowels"})
    void isRefused(String why, Part in, Part takes, Joint joint) {
        assertThat(Frames.refusal(in, takes, joint)).isEqualTo(why);
    }

    @Test
    void everyKindOfJointHasARefusalOfItsOwn() {
        Set<Class<?>> refused = Stream.of(housings(), rebates(), others(), bridles(), tenons(), dowels())
                .flatMap(s -> s)
                .map(a -> a.get()[3].getClass())
                .collect(Collectors.toSet());

        assertThat(refused).containsExactlyInAnyOrder(Joint.class.getPermittedSubclasses());
    }
}
