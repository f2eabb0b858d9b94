package org.fadeline.ui.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.fadeline.model.CompassText;
import org.fadeline.model.LengthText;
import org.fadeline.model.Occasion;
import org.fadeline.model.Peg;
import org.fadeline.model.Session;
import org.fadeline.model.Units;
import org.fadeline.model.Venue;
import org.fadeline.model.WeatherNote;
import org.fadeline.ui.control.Say;
import org.fadeline.ui.control.form.Entry;
import org.jspecify.annotations.Nullable;

/** Where the match is and what the peg is like, as entries. */
final class OccasionEntries {
  private OccasionEntries() {}

  private static Entry<Session> occasion(Entry<Occasion> entry) {
    return entry.within(Session::occasion, Session::withOccasion);
  }

  private static Entry<Session> peg(Entry<Peg> entry) {
    return occasion(entry.within(Occasion::peg, Occasion::withPeg));
  }

  /** Returns what the match is called. */
  static Entry<Session> title() {
    return occasion(
        Entry.words(
            "title",
            "Title",
            "Sunday open",
            Occasion::title,
            (o, text) -> o.withTitle(text == null ? "" : text)));
  }

  /** Returns the name of the water. */
  static Entry<Session> water() {
    return occasion(
        Entry.words(
            "venue",
            "Water",
            "its name",
            o -> o.venue().name(),
            (o, text) ->
                o.withVenue(new Venue(text, o.venue().latitude(), o.venue().longitude()))));
  }

  /** Returns where the water lies, for the sun's place: latitude and longitude together. */
  static Entry<Session> coordinates() {
    return occasion(
        new Entry<>(
            "coordinates",
            "Latitude, longitude",
            "52.41, -1.73",
            (o, units) -> coordinates(o.venue()),
            (o, text, units) -> o.withVenue(withCoordinates(o.venue(), text))));
  }

  private static String coordinates(Venue venue) {
    return venue.latitude() == null ? "" : venue.latitude() + ", " + venue.longitude();
  }

  private static Venue withCoordinates(Venue venue, String text) {
    if (text.isBlank()) {
      return new Venue(venue.name(), null, null);
    }
    String[] parts = text.strip().split("\\s*[,;]\\s*|\\s+", -1);
    if (parts.length != 2) {
      throw new IllegalArgumentException("write degrees north and east, such as 52.41, -1.73");
    }
    return new Venue(venue.name(), Entry.number(parts[0]), Entry.number(parts[1]));
  }

  /** Returns the peg's own entries. */
  static List<Entry<Session>> peg() {
    return List.of(
        peg(Entry.words("peg-number", "Peg", "14", Peg::number, Peg::withNumber)),
        peg(
            new Entry<>(
                "peg-facing",
                "Facing",
                "SW or 225°",
                (p, units) ->
                    p.facingDegrees() == null ? "" : CompassText.format(p.facingDegrees()),
                (p, text, units) ->
                    p.withFacingDegrees(text.isBlank() ? null : CompassText.degrees(text)))),
        peg(
            length(
                "peg-bank",
                "Bank, height",
                "0.5",
                Peg::bankHeightM,
                (p, metres) -> p.withBankHeightM(metres))));
  }

  /** A change of a part by a length in metres. */
  interface SetLength<T> {
    T with(T of, @Nullable Double metres);
  }

  /** Returns an entry of a length, in the unit of the window. */
  static <T> Entry<T> length(
      String id, String label, String prompt, Function<T, @Nullable Double> get, SetLength<T> set) {
    return new Entry<>(
        id,
        label,
        prompt,
        (t, units) -> {
          Double metres = get.apply(t);
          return metres == null ? "" : LengthText.format(metres, units.length());
        },
        (t, text, units) -> set.with(t, metres(text, units)));
  }

  private static @Nullable Double metres(String text, Units units) {
    return text.isBlank() ? null : LengthText.metres(text, units.length());
  }

  /** Returns the entries of one mark in the swim, such as reeds. */
  static List<Entry<Session>> feature(int i) {
    String id = "feature-" + i + "-";
    return List.of(
        feature(
            i,
            Entry.words(
                id + "name",
                "Mark",
                "reeds",
                Peg.Feature::name,
                (f, text) ->
                    new Peg.Feature(
                        text == null ? f.name() : text,
                        f.distanceM(),
                        f.bearingDegrees(),
                        f.widthM()))),
        feature(
            i,
            length(
                id + "distance",
                "Distance",
                "16",
                Peg.Feature::distanceM,
                (f, metres) ->
                    new Peg.Feature(
                        f.name(), metres == null ? 0 : metres, f.bearingDegrees(), f.widthM()))),
        feature(
            i,
            new Entry<>(
                id + "bearing",
                "Bearing",
                "20 left",
                (f, units) -> BearingText.format(f.bearingDegrees()),
                (f, text, units) ->
                    new Peg.Feature(
                        f.name(), f.distanceM(), BearingText.degrees(text), f.widthM()))),
        feature(
            i,
            length(
                id + "width",
                "Across",
                "3",
                Peg.Feature::widthM,
                (f, metres) ->
                    new Peg.Feature(f.name(), f.distanceM(), f.bearingDegrees(), metres))));
  }

  private static Entry<Session> feature(int i, Entry<Peg.Feature> entry) {
    return peg(
        entry.within(
            p -> p.features().get(i), (p, f) -> p.withFeatures(replaced(p.features(), i, f))));
  }

  /** Returns the entries of one weather note. */
  static List<Entry<Session>> weather(int i) {
    String id = "weather-" + i + "-";
    return List.of(
        new Entry<>(
            id + "at",
            "At",
            "10:00",
            (s, units) -> Say.shortClock(note(s, i).at(), s.occasion().zone()),
            (s, text, units) -> withNote(s, i, n -> at(n, TimeEntries.near(s, n.at(), text)))),
        weather(
            i,
            new Entry<>(
                id + "wind",
                "Wind from",
                "SW",
                (n, units) -> n.wind() == null ? "" : CompassText.format(n.wind().fromDegrees()),
                (n, text, units) -> wind(n, text))),
        weather(
            i,
            new Entry<>(
                id + "force",
                "Force",
                "3",
                (n, units) ->
                    n.wind() == null || n.wind().force() == null ? "" : "" + n.wind().force(),
                (n, text, units) -> force(n, text))),
        weather(
            i,
            Entry.number(
                id + "cloud",
                "Cloud /8",
                "4",
                WeatherNote::cloudOktas,
                (n, v) -> new WeatherNote(n.at(), n.wind(), v, n.airC(), n.waterC(), n.note()))),
        weather(
            i,
            Entry.number(
                id + "air",
                "Air °C",
                "18",
                WeatherNote::airC,
                (n, v) ->
                    new WeatherNote(n.at(), n.wind(), n.cloudOktas(), v, n.waterC(), n.note()))),
        weather(
            i,
            Entry.number(
                id + "water",
                "Water °C",
                "16",
                WeatherNote::waterC,
                (n, v) ->
                    new WeatherNote(n.at(), n.wind(), n.cloudOktas(), n.airC(), v, n.note()))),
        weather(
            i,
            Entry.words(
                id + "note",
                "Remark",
                "ripple on",
                WeatherNote::note,
                (n, v) ->
                    new WeatherNote(n.at(), n.wind(), n.cloudOktas(), n.airC(), n.waterC(), v))));
  }

  private static WeatherNote note(Session session, int i) {
    return session.occasion().weather().get(i);
  }

  private static Session withNote(Session session, int i, UnaryOperator<WeatherNote> change) {
    Occasion o = session.occasion();
    return session.withOccasion(
        o.withWeather(replaced(o.weather(), i, change.apply(o.weather().get(i)))));
  }

  private static Entry<Session> weather(int i, Entry<WeatherNote> entry) {
    return entry.within(s -> note(s, i), (s, n) -> withNote(s, i, old -> n));
  }

  private static WeatherNote at(WeatherNote n, long at) {
    return new WeatherNote(at, n.wind(), n.cloudOktas(), n.airC(), n.waterC(), n.note());
  }

  private static WeatherNote withWind(WeatherNote n, WeatherNote.@Nullable Wind wind) {
    return new WeatherNote(n.at(), wind, n.cloudOktas(), n.airC(), n.waterC(), n.note());
  }

  private static WeatherNote wind(WeatherNote n, String text) {
    WeatherNote.Wind wind = n.wind();
    return withWind(
        n,
        text.isBlank()
            ? null
            : new WeatherNote.Wind(CompassText.degrees(text), wind == null ? null : wind.force()));
  }

  private static WeatherNote force(WeatherNote n, String text) {
    WeatherNote.Wind wind = n.wind();
    String typed = text.strip();
    if (!typed.isEmpty() && !typed.matches("\\d{1,2}")) {
      throw new IllegalArgumentException("the force is a whole number from 0 to 12");
    }
    if (wind == null) {
      if (typed.isEmpty()) {
        return n;
      }
      throw new IllegalArgumentException("say first where the wind blows from");
    }
    Integer force = typed.isEmpty() ? null : Integer.valueOf(typed);
    return withWind(n, new WeatherNote.Wind(wind.fromDegrees(), force));
  }

  private static <T> List<T> replaced(List<T> list, int i, T value) {
    List<T> all = new ArrayList<>(list);
    all.set(i, value);
    return all;
  }
}
