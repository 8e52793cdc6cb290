package org.marktwice.timber;

/**
 * The air of a room, and the moisture at which timber settles in it.
 *
 * <p>The equation is the Wood Handbook's 4-5 (Forest Products Laboratory, FPL-GTR-190 and FPL-GTR-282), the one behind its
 * Table 4-2; the 2021 edition's equation 4-6 doesn't reproduce that table. It holds for solid wood of any species, seasoned
 * at ordinary temperatures. How long a board takes to settle it doesn't say.
 *
 * @param celsius temperature, from {@link #COLDEST} to {@link #HOTTEST}
 * @param humidity relative humidity in percent, from 0 to 100
 */
public record Climate(double celsius, double humidity) {
    /** Where the table begins: 30 °F, in degrees Celsius. */
    public static final double COLDEST = ofFahrenheit(30);
    /** 140 °F, in degrees Celsius: the table runs on for kilns, but no room is hotter. */
    public static final double HOTTEST = ofFahrenheit(140);

    /** @throws IllegalArgumentException where no room is like that */
    public Climate {
        if (!isRoom(celsius)) throw new IllegalArgumentException("no room's temperature: " + celsius + " °C");
        if (!isHumidity(humidity)) throw new IllegalArgumentException("no relative humidity: " + humidity + " %");
    }

    public static boolean isRoom(double celsius) {
        return celsius >= COLDEST && celsius <= HOTTEST;
    }

    public static boolean isHumidity(double percent) {
        return percent >= 0 && percent <= 100;
    }

    /** Degrees Celsius. */
    public static double ofFahrenheit(double fahrenheit) {
        return (fahrenheit - 32) * 5 / 9;
    }

    /** The equilibrium moisture content, percent of the oven-dry mass. */
    public double settledMoisture() {
        double t = celsius;
        double h = humidity / 100;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double kh = (0.805 + 0.000736 * t - 0.00000273 * t * t) * h;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double once = k1 * kh;
        double twice = k1 * k2 * kh * kh;
        return 1800 / w * (kh / (1 - kh) + (once + 2 * twice) / (1 + once + twice));
    }
}
