/**
 * Reading and writing the record: sessions and talks as JSON, events as CSV.
 *
 * <p>Where to look: {@code Json}, {@code JsonParse}, {@code JsonFields} and {@code JsonText} know
 * JSON and nothing of sessions; {@code SessionReader} and {@code SessionWriter} put together a
 * session's file, whose parts are each read and written by one class ({@code OccasionJson}, {@code
 * MatchJson}, {@code LineJson}, {@code EventJson}, {@code OutcomeJson}); {@code SessionRules}
 * checks what must hold between the parts, whatever they were read from; {@code EventCsv} is the
 * way in and out for tables, with the classes named {@code Csv…} and {@code EventCells} behind it;
 * {@code TalkReader} and {@code TalkWriter} do talks. {@code Problem} and {@code ImportReport} say
 * what is wrong and where; {@code Refused} is a wrong value whose place is not known yet.
 *
 * <p>Readers collect every problem with its place and return a session only when the file as a
 * whole can be trusted, or in part where that was asked for. Nothing read here can reach outside
 * the file's folder, and no class is ever chosen by what a file says.
 */
@NullMarked
package org.fadeline.io;

import org.jspecify.annotations.NullMarked;
