package org.fadeline.io.notes;

/**
 * One caption: what was said, and when by the recording's clock.
 *
 * @param row line of the file on which its times stand, from 1
 * @param fromMillis start, milliseconds of the recording, at least 0
 * @param toMillis end, milliseconds of the recording; before the start only where the file says so
 * @param text what was said: plain text without tags, lines joined by a space
 */
record Cue(int row, long fromMillis, long toMillis, String text) {}
