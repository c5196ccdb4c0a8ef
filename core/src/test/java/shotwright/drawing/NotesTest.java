package shotwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import shotwright.geom.Vec2;

class NotesTest {
    /** Two things to the right and left of a point leave room above and below; the second note keeps off the first. */
    @Test
    void notesKeepOffThingsAndEachOther() {
        Rectangle2D sheet = new Rectangle2D.Double(0, 0, 100, 100);
        List<Rectangle2D> things =
                List.of(new Rectangle2D.Double(55, 20, 40, 60), new Rectangle2D.Double(5, 20, 40, 60));
        NotePlaces places = new NotePlaces(sheet, things);
        Vec2 point = new Vec2(50, 50);
        Rectangle2D[] words = new Rectangle2D[2];
        for (int i = 0; i < 2; i++) {
            Vec2 shelf = places.shelf(point, 20);
            words[i] = new Rectangle2D.Double(shelf.x() >= 50 ? shelf.x() : shelf.x() - 20, shelf.y() - 3, 20, 3);
            assertThat(sheet.contains(words[i])).isTrue();
            Line2D leader = new Line2D.Double(point.x(), point.y(), shelf.x(), shelf.y());
            for (Rectangle2D t : things)
                assertThat(leader.intersects(t) && words[i].intersects(t)).isFalse();
        }
        assertThat(words[0].intersects(words[1])).isFalse();
    }

    @Test
    void bandsEndOnRoundValues() {
        ColourScale s = ColourScale.rounded(ColourMap.THICKNESS, 0.40, 2.07, 8);
        assertThat(s.limits()).containsExactly(0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 1.75, 2.0, 2.25);
        assertThat(s.band(0.5001)).isEqualTo(1);
        assertThat(s.band(0.4999)).isZero();
        assertThat(s.band(9)).isEqualTo(7);
        assertThat(s.band(Double.NaN)).isEqualTo(-1);
        assertThat(s.rgb(0.51)).isEqualTo(s.rgb(0.74)).isNotEqualTo(s.rgb(0.76));
        assertThat(ColourScale.rounded(ColourMap.THICKNESS, 2, 2, 8).bands()).isBetween(1, 8);
    }
}
