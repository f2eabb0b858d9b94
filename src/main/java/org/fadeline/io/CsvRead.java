package org.fadeline.io;

import org.fadeline.model.EventKind;

/**
 * A row of a table whose kind and written time could be read.
 *
 * @param row the row
 * @param kind of its event
 * @param time as written
 */
record CsvRead(CsvRow row, EventKind kind, CsvTimes.Written time) {}
