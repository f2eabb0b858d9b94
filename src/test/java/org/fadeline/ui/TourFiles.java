package org.fadeline.ui;

/** Files the tour of the screens imports; invented. */
final class TourFiles {
  static final String TABLE =
      """
      Clock;What;Swim;lb;oz;Remarks
      10:00;all-in;;;;
      10:05;landed;Short;3;4,5;first of the day
      10:09;flew away;Short;;;
      10:20;landed;Far bank;1;0;
      25:20;bite;Far bank;;;
      15:00;all-out;;;;
      """;

  static final String NOTES =
      """
      WEBVTT

      00:10.000 --> 00:12.000
      landed a carp on the short line, three pounds

      05:00.000 --> 05:03.000
      lost one on the short line

      06:00.000 --> 06:03.000
      fed ten pellets shallow

      09:00.000 --> 09:03.000
      lovely weather this
      """;

  static final String BROKEN =
      """
      {"format": "fadeline-session", "version": 1,
       "match": {"title": "", "date": "2026-02-30"}, "lines": [{"id": ""}], "events": 3}
      """;

  private TourFiles() {}
}
