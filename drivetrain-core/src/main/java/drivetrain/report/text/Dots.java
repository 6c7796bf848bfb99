package drivetrain.report.text;

/** The dots of which curves are drawn: how many stand in one cell of the screen, and the sign that shows them. */
enum Dots {
    /** Two by four dots: the signs for Braille, U+2800 to U+28FF. */
    BRAILLE(2, 4) {
        private static final int[] BITS = {0x01, 0x08, 0x02, 0x10, 0x04, 0x20, 0x40, 0x80};

        @Override
        char sign(boolean[] dots) {
            int bits = 0;
            for (int dot = 0; dot < dots.length; dot++) {
                bits |= dots[dot] ? BITS[dot] : 0;
            }
            return (char) (0x2800 + bits);
        }
    },
    /** Three dots above each other: a sign that stands high, in the middle or low. */
    ASCII(1, 3) {
        private static final String SIGNS = " '-'.:.|";

        @Override
        char sign(boolean[] dots) {
            return SIGNS.charAt((dots[0] ? 1 : 0) + (dots[1] ? 2 : 0) + (dots[2] ? 4 : 0));
        }
    };

    private final int across;
    private final int down;

    Dots(int across, int down) {
        this.across = across;
        this.down = down;
    }

    int across() {
        return across;
    }

    int down() {
        return down;
    }

    /** Returns the sign for the dots of a cell, row by row from the top. */
    abstract char sign(boolean[] dots);
}
