package org.fadeline.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.fadeline.analysis.Review;
import org.fadeline.analysis.ReviewSettings;
import org.fadeline.analysis.Reviewer;
import org.fadeline.analysis.season.Season;
import org.fadeline.analysis.season.SeasonBuilder;
import org.fadeline.export.ExportMonitor;
import org.fadeline.export.TalkDraft;
import org.fadeline.export.TalkExport;
import org.fadeline.export.TalkMaterial;
import org.fadeline.export.TalkSeasons;
import org.fadeline.export.Unnamed;
import org.fadeline.index.SeasonFolder;
import org.fadeline.io.Problem;
import org.fadeline.io.TalkReader;
import org.fadeline.io.TalkWriter;
import org.fadeline.model.Units;
import org.fadeline.model.talk.Discretion;
import org.fadeline.model.talk.Look;
import org.fadeline.model.talk.SeasonSource;
import org.fadeline.model.talk.Slide;
import org.fadeline.model.talk.Source;
import org.fadeline.model.talk.Talk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a club talk: a talk file's, or a first draft on one match or more. */
@Command(
    name = "talk",
    mixinStandardHelpOptions = true,
    description =
        "Writes a club talk by the ending of its file (.pptx, .pdf, .gif for the match replayed,"
            + " .talk.json to go on with); a folder for .png and .svg pictures. Given sessions,"
            + " writes a first draft on the first of them, with the others beside it.")
final class TalkCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private final Reading reading = new Reading();
  @Mixin private final UnitsOption units = new UnitsOption();
  @Mixin private final TalkPictureOptions pictures = new TalkPictureOptions();
  @Mixin private final TalkFilmOptions film = new TalkFilmOptions();

  @Spec
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "TALK|SESSION",
      description = "a .talk.json, or the matches the talk is on, the main one first")
  private List<Path> files = new ArrayList<>();

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "what is written")
  @SuppressWarnings("NullAway.Init") // picocli sets it before call()
  private Path out;

  @Option(names = "--standard", description = "slides in 4:3 rather than 16:9")
  private boolean standard;

  @Option(
      names = "--theme",
      paramLabel = "light|dark|print",
      description = "ground of the slides (default: the talk's own, or light)")
  private Look.@Nullable Ground ground;

  @Option(
      names = "--unnamed",
      description =
          "leaves out the water's name and place, the peg's number, titles, dates, and every note"
              + " and reason; says what was left out")
  private boolean unnamed;

  @Option(
      names = "--leave-out",
      paramLabel = "NAME",
      description = "replaces a name in the slides' words, such as a person's; may be repeated")
  private List<String> names = new ArrayList<>();

  @Option(
      names = "--season",
      paramLabel = "DIR",
      description = "adds slides on the season in this folder to a first draft")
  private @Nullable Path season;

  @Option(
      names = "--tables",
      paramLabel = "DIR",
      description = "writes the tables of every session there, as CSV")
  private @Nullable Path tables;

  TalkCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    Talk opened = TalkReader.isTalk(files.get(0)) ? open(files.get(0)) : null;
    Look look = look(opened == null ? Look.USUAL : opened.look());
    List<Source> sources = opened == null ? sessions() : opened.sources();
    Map<String, Review> reviews = new LinkedHashMap<>();
    for (Source source : sources) {
      reviews.put(
          source.id(),
          Reviewer.review(
              reading.readAccepted(console, source.file()), ReviewSettings.DEFAULT, look.units()));
    }
    List<SeasonSource> folders = seasons(opened);
    TalkMaterial material = new TalkMaterial(reviews, seasons(folders));
    Talk talk = opened == null ? draft(sources, folders, material, look) : opened.withLook(look);
    Talk discreet = talk.withDiscretion(discretion(talk.discretion()));
    try {
      write(discreet, material);
    } catch (IOException e) {
      throw Output.fault(out, e);
    } catch (IllegalArgumentException e) {
      throw new InputFault(files.get(0) + ":1:1: " + e.getMessage());
    }
    for (String left : Unnamed.of(discreet, material).leftOut()) {
      console.err().println("left out: " + left);
    }
    return ExitCode.DONE;
  }

  private List<SeasonSource> seasons(@Nullable Talk opened) {
    Path folder = season;
    if (opened != null && folder != null) {
      throw new InputFault(files.get(0) + ":1:1: a talk names its own seasons; leave --season out");
    }
    if (opened != null) {
      return opened.seasons();
    }
    return folder == null
        ? List.of()
        : List.of(new SeasonSource("season", folder.toAbsolutePath(), SeasonSource.Sift.ALL));
  }

  private Map<String, Season> seasons(List<SeasonSource> folders) {
    Map<String, Season> seasons = new LinkedHashMap<>();
    for (SeasonSource one : folders) {
      SeasonFolder found = SeasonReading.read(one.folder(), reading.options(console));
      SeasonReading.tell(console, found);
      seasons.put(
          one.id(), SeasonBuilder.build(found.summaries(), TalkSeasons.filterOf(one.sift())));
    }
    return seasons;
  }

  private Talk draft(
      List<Source> sources, List<SeasonSource> folders, TalkMaterial material, Look look) {
    Talk draft = TalkDraft.of(sources, material, look, !unnamed);
    List<Slide> slides = new ArrayList<>(draft.slides());
    for (SeasonSource one : folders) {
      slides.addAll(slides.size() - 1, TalkDraft.season(one.id()));
    }
    return draft.withSlides(slides).withSeasons(folders);
  }

  private Talk open(Path file) {
    if (files.size() > 1) {
      throw new InputFault(
          file
              + ":1:1: a talk names its own sessions; give the talk file alone, or sessions alone");
    }
    TalkReader.Loaded loaded = TalkReader.read(file);
    for (Problem problem : loaded.report().problems()) {
      console.err().println(problem);
    }
    return loaded.talk().orElseThrow(InputFault::new);
  }

  private List<Source> sessions() {
    List<Source> sources = new ArrayList<>();
    for (Path file : files) {
      if (TalkReader.isTalk(file)) {
        throw new InputFault(
            file
                + ":1:1: a talk names its own sessions; give the talk file alone, or sessions"
                + " alone");
      }
      sources.add(new Source("s" + (sources.size() + 1), file.toAbsolutePath()));
    }
    return sources;
  }

  private Look look(Look own) {
    Look look = standard ? own.withShape(Look.Shape.STANDARD) : own;
    look = ground == null ? look : look.withGround(ground);
    boolean asked = spec.commandLine().getParseResult().hasMatchedOption("--units");
    Units chosen = look.units().withWeight(units.units().weight());
    return asked ? look.withUnits(chosen) : look;
  }

  private Discretion discretion(Discretion own) {
    List<String> all = new ArrayList<>(own.names());
    all.addAll(names);
    return new Discretion(own.unnamed() || unnamed, all);
  }

  private void write(Talk talk, TalkMaterial material) throws IOException {
    String name = String.valueOf(out.getFileName()).toLowerCase(Locale.ROOT);
    if (name.endsWith(".pptx")) {
      TalkExport.pptx(talk, material, out, ExportMonitor.NONE);
    } else if (name.endsWith(".pdf")) {
      TalkExport.pdf(talk, material, out, ExportMonitor.NONE);
    } else if (name.endsWith(".gif")) {
      film.write(talk, material, out);
    } else if (TalkReader.isTalk(out)) {
      TalkWriter.write(talk, out);
    } else if (name.contains(".")) {
      throw new InputFault(
          out
              + ":1:1: this ending cannot be written; end the name in .pptx, .pdf, .gif or"
              + " .talk.json, or name a folder");
    } else {
      TalkExport.pictures(
          talk,
          material,
          out,
          new TalkExport.Pictures(
              Set.of(TalkExport.Picture.PNG, TalkExport.Picture.SVG),
              pictures.size(talk.look().shape())),
          ExportMonitor.NONE);
    }
    console.out().println(out + ": written");
    if (tables != null) {
      int written = TalkExport.tables(talk, material, tables, ExportMonitor.NONE);
      console.out().println(tables + ": " + written + " tables written");
    }
  }
}
