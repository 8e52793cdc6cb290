package org.marktwice.cli;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.marktwice.timber.Climate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A room as the command line has it: {@code 21.1C,50%} or {@code 70F,50%}. */
final class RoomConverter implements ITypeConverter<Climate> {
    private static final Pattern ROOM = Pattern.compile(
            "\\s*([+-]?\\d{1,6}(?:\\.\\d{1,6})?)\\s*°?([CFcf])\\s*,\\s*(\\d{1,6}(?:\\.\\d{1,6})?)\\s*%\\s*");

    @Override
    public Climate convert(String value) {
        Matcher room = ROOM.matcher(value);
        if (!room.matches()) {
            throw new TypeConversionException(
                    "expected a temperature and a relative humidity such as 21.1C,50% or 70F,50%, found '" + value
                            + "'");
        }
        double degrees = Double.parseDouble(room.group(1));
        double celsius = room.group(2).equalsIgnoreCase("C") ? degrees : Climate.ofFahrenheit(degrees);
        double humidity = Double.parseDouble(room.group(3));
        if (!Climate.isRoom(celsius)) {
            throw new TypeConversionException("expected a room from "
                    + Text.number(Climate.COLDEST) + "C (30F) to " + Text.number(Climate.HOTTEST) + "C (140F), found "
                    + room.group(1) + room.group(2));
        }
        if (!Climate.isHumidity(humidity)) {
            throw new TypeConversionException(
                    "expected a relative humidity from 0% to 100%, found " + room.group(3) + "%");
        }
        return new Climate(celsius, humidity);
    }
}
