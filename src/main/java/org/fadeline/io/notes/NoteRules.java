package org.fadeline.io.notes;

import java.util.List;
import java.util.regex.Pattern;
import org.fadeline.model.EventKind;

/**
 * What anglers say for each event, as patterns over the shape of a clause: its words, with a sign
 * for each piece found ({@link Piece.Kind}). The phrases are common practice.
 */
final class NoteRules {
  /**
   * One way to say an event.
   *
   * @param kind the event
   * @param pattern over the shape of a clause
   * @param confidence where nothing speaks against it
   * @param mention whether it names a fish without saying what became of it
   */
  record Rule(EventKind kind, Pattern pattern, double confidence, boolean mention) {}

  private static final String THE = "(?:(?:the|my|that|this|our) )?";
  private static final String THING =
      "(?:rigs?|hook ?lengths?|hooks?|floats?|feeder|elastic|top kits?|bait|shotting|shots?|bomb|depth)\\b";

  /** In order of rank, where two match the same words. */
  static final List<Rule> RULES =
      List.of(
          rule(EventKind.ALL_IN, 0.95, "(?<!it )(?<!them )(?<!lot )all in\\b"),
          rule(EventKind.ALL_OUT, 0.95, "(?<!it )all out\\b"),
          rule(
              EventKind.STOPPED,
              0.85,
              "(?:match|fishing|everyone|everybody|they've|we've|we're|been)(?: \\w+){0,2}?"
                  + " (?:stopped|suspended|halted|paused)(?: \\w+){0,3}|stopp(?:ed|ing) (?:the match"
                  + "|(?:for|because of) (?:\\w+ )?(?:lightning|thunder\\w*|storm))"
                  + "|off the bank|(?:poles|rods) down|stop fishing|blown (?:the whistle(?! to re ?start)|us off)|(?:organiser|they|they've)(?: (?:'s|has|have))? (?:halted|stopped) (?:it|us)|match (?:stopped|suspended)|suspended"),
          rule(
              EventKind.RESUMED,
              0.85,
              "resum\\w+|restart\\w*|(?:match|we're|back) (?:back )?on(?: again)?(?! (?:the )?#)"
                  + "|(?:match |back )(?:is |'s )?under ?way|match (?:is |'s )?back on|fishing again|back fishing|under ?way again|carry(?:ing)? on(?=$| fishing| again)"),
          rule(
              EventKind.NET,
              0.85,
              "(?:new|another|fresh|next|second|third|fourth|fifth|sixth|last|different)"
                  + " (?:keep ?|carp |silvers )?net\\b|net (?:number )?(?:one|#n)\\b"
                  + "|(?:chang|swapp|switch)\\w* (?:the |of |over )?(?:keep ?)?nets?\\b|net change"
                  + "|change of net"),
          rule(
              EventKind.FOUL,
              0.9,
              "foul ?(?:hook(?:ed|er|up)?)( one)?|fouled|fouler|tail hooked"
                  + "|(?:hooked|it|was|is|'s|him) (?:\\w+ )?(?:in|by) the (?:tail|fin|back|side|flank"
                  + "|belly|pec|dorsal)"),
          rule(
              EventKind.LOST,
              0.88,
              "(?<!i )(?<!i've )lost (?:it|him|her|one|that|this|another|#n|a|the fish|the #s)"
                  + "|lost\\b(?! (?:#d|#m|#b|feed|count|track|my|the|a bit|interest|time|touch|some))"
                  + "|(?<!a )bumped(?: (?:it|one|him|another))?(?: off)?|pulled (?:out|off|free)"
                  + "|hook ?pull(?:s|ed)?|(?:came|come|coming) (?:off|adrift)(?! (?:the )?#l)"
                  + "|hook (?:came|come|has come|'s come) out"
                  + "|fell off|dropped (?:it|one|him|that one|the fish)\\b|dropped off(?! the)|snapped (?:me|it)(?: off| up)?"
                  + "|(?:broke|smashed|done|did|cut) me(?: up| off)?"
                  + "|(?:it|he|she|fish|that|one) (?:is |'s )(?:off|gone|away)(?: again| now)?$"
                  + "|took (?:me|the hook ?length|everything)\\b|pinged (?:off|out)"
                  + "|shed (?:it|one|him|the hook)|slipped (?:it|the hook|off)|got (?:off|away)"
                  + "|threw the hook|straightened the hook|parted company|off it went"),
          rule(
              EventKind.LANDED,
              0.92,
              "landed|netted|in the (?:landing |carp |silvers )?net\\b|(?<!a )banked|swung (?:in|it in)"
                  + "|swing(?:ing)? (?:it |one )?in"),
          rule(
              EventKind.COUNT,
              0.8,
              "click(?:ed|s|ing)?(?: \\w+){0,2}? (?:#n|one)(?: more)?(?: (?:on|up|in))?"
                  + "|(?:#n|one)(?: more| #s| fish| bits)* (?:up )?on (?:the )?clicker"
                  + "|clicker (?:up |by |plus |another |says |reads |shows |is |'s |on |at )*(?:#n|one|#w)\\b|#w on the clicker|^count check|count(?:ed)? (?:is |of )?#n"
                  + "|(?:#n|one)(?: \\w+| #s){0,2} since (?:the |my )?last (?:count|click|time)"),
          rule(
              EventKind.INDICATION,
              0.78,
              "indications?|liners?|line bites?|(?:a |the |#n )?(?:\\w+ )?(?:knocks?|taps?|twitch\\w*"
                  + "|nudges?|plucks?)\\b|little (?:dips?|pulls?)|dips? on the float"
                  + "|float(?: \\w+| 's){0,2} (?:bobb|shak|lift|dither|trembl|dipp)\\w+"
                  + "|tip(?: \\w+| 's){0,2} (?:tapp|nodd|dither|twitch|knock|trembl)\\w+"),
          rule(
              EventKind.SIGN,
              0.8,
              "fizz\\w*|(?:an?|saw|seen|see) tails?\\b|tails\\b|mud(?:dy)?(?: clouds?)?(?: coming up)?\\b|bosh\\w*|leap\\w*|colouring|bubbl\\w*|swirl\\w*|tail patterns?|tailing|vort\\w+|clooping|slurping"
                  + "|(?:#s|fish|they|they're|one|some)(?: (?:\\w+|'s)){0,2} (?:roll|topp|show"
                  + "|crash|jump|cruis|prim|boil|splash)\\w*|rolling|topping|big boil"),
          rule(
              EventKind.BITE,
              0.85,
              "missed(?: (?:a|another|the|that|it|one|two|him|#n|good|unmissable|proper|couple|of"
                  + "|more|again))*(?: bites?)?|bites? missed|struck (?:at|into|and got|and hit)"
                  + " (?:nothing|thin air|fresh air)|strike (?:and )?nothing|hit (?:thin|fresh) air"
                  + "|(?:came|come) up with nothing|struck (?:too )?(?:early|late|soon)|(?:never|didn't) hit it"),
          rule(EventKind.BITE, 0.72, "(?:#n |one )bites?\\b|\\bbite\\b"),
          rule(
              EventKind.BITE,
              0.6,
              "float (?:went|goes|buried|shot|slid|sailed|disappeared)(?: \\w+){0,3}"
                  + "|(?:tip|rod)(?: \\w+)? (?:went|wrapped|slammed|pulled)(?: \\w+){0,2}"),
          rule(
              EventKind.HOOKED,
              0.82,
              "(?<!foul )hooked(?: (?:one|up|into|it|another|a))*|i'm (?:in\\b|into)|i am in"
                  + "|fish on\\b(?! (?:the )?#l)|we're in\\b(?! the)|\\binto (?:one|an?|another"
                  + "|something)(?: (?:good|decent|proper|better|big|nice))*(?: (?:#s|fish|one))?"
                  + "|(?:one|#s) on(?=$| now| here| already| again| straight| first)"
                  + "|playing (?:one|an?|it|another|him|this)|bent into|got one on|it 's on\\b"
                  + "|on the elastic|fish is on|taking line|feels (?:like|a|good|decent|big|heavy)"
                  + "|^(?:good |big |another )*fish on (?:the )?#l$"),
          rule(
              EventKind.MOVE,
              0.88,
              "(?:i've|i|i'm|we've) (?:come|came|coming|going) off (?:it|that|there)|resting it|rested it"
                  + "|giv\\w+ it a (?:rest|break)|(?:enough of|done with|finished (?:on|with)|that 's it for|done on) (?:the |my )?#l|(?:com(?:e|ing)|came|pull(?:ed|ing)|get(?:ting)?|got|mov(?:ed|ing)|walk(?:ed|ing)|off|gone|going|go)"
                  + " (?:off|away from|from) (?:of )?"
                  + THE
                  + "#l"
                  + "|^(?:right |ok |okay |so |and )*off "
                  + THE
                  + "#l|\\bleft "
                  + THE
                  + "#l|leaving "
                  + THE
                  + "#l"
                  + "|rest(?:ing|ed) "
                  + THE
                  + "#l"
                  + "|(?:giv\\w+|gave) "
                  + THE
                  + "#l (?:a|some|another) (?:rest|break|breather)"),
          rule(
              EventKind.MOVE,
              0.88,
              "\\b(?!(?:dropp(?:ed|ing)|back) in (?:on|over) )(?<!back )(?:mov(?:ed|ing|e)|going|gone|went|go|walk(?:ed|ing)|head(?:ing|ed)|swapp(?:ed|ing)|swap"
                  + "|switch(?:ed|ing)?|dropp(?:ed|ing)|com(?:ing|e)|came|chang(?:ed|ing)|turn(?:ed|ing)"
                  + "|back|tr(?:y|ying|ied)|look(?:ing)?|start(?:ing|ed)?|\\bon|\\bover|a go|time)"
                  + "(?: (?:back|straight|over|across|down|now|again|in|is|for))*"
                  + " (?:to|on to|on|onto|over|into|down|for|at) (?:to |on )?"
                  + THE
                  + "#l"),
          rule(
              EventKind.MOVE,
              0.8,
              "pick(?:ed|ing)? (?:up )?(?:the |my )?#l(?: (?:rod|up))*|for an? (?:look|go|try|chuck|change) (?:on |at |down |over |to )?(?:the |my )?#l|(?:mov(?:ed|ing|e)|going|gone|went|go|back|try(?:ing)?|tried|onto|switched|swapped)"
                  + " (?:back |over |out )?"
                  + THE
                  + "#l|\\bonto "
                  + THE
                  + "#l"
                  + "|^(?:right |ok |okay |so |and |now )*(?:on|to) "
                  + THE
                  + "#l now"
                  + "|"
                  + THE
                  + "#l (?:now|next|for a (?:bit|look|while|go)|again now)"),
          rule(
              EventKind.MOVE, 0.5, "moving (?:now|lines|swims|off)|moved (?:lines|swims)|^moving$"),
          rule(
              EventKind.CAST,
              0.85,
              "(?:re ?)cast(?:ing|s)?\\b|(?<!(?:next|first|that|every|each|last|same) )cast(?:ing)?(?: (?:out|in|back|to|it|over|again|the))*"
                  + "|(?:first |next |another )?(?:put in|putting in)\\b(?! #[ab])"
                  + "|(?:kick(?:ing|ed)? off|start(?:ing|ed)?(?: off)?) (?:on|with) (?:the )?#l"
                  + "|(?:chuck(?:ed|ing)|back) (?:back )?(?:in |out )?again"
                  + "|(?:chuck|flick|swing|swung|launch|lower|lay|laid)(?:ed|ing)?(?: (?:it|one|the rig"
                  + "|the bait|the #l))? (?:out|in on|over)|shipp(?:ed|ing) (?:back )?(?:out|over)"
                  + "|(?:rig|bait)(?: 's| is)? (?:back )?(?:out|in)(?= now| again|$| the water)"
                  + "|(?:back|straight back|going|gone|go|drop(?:ped|ping)?|heading)(?: back)? (?:out|in)"
                  + "(?! (?:the )?(?:net|#b|#a|with))(?: (?:there|again|over it|now))?"
                  + "(?: (?:on|on to|to|onto|over) "
                  + THE
                  + "#l)?"
                  + "|^(?:the |my )?#l (?:in|out)\\b|(?<!#a )(?<!#b )\\b(?:out|in) (?:on|to|over|onto) "
                  + THE
                  + "#l|out goes (?:the )?#l|#l (?:goes|'s|is) (?:back )?(?:out|in)(?=$| again| now)|^out again|^out we go"
                  + "|first (?:chuck|cast|drop|one (?:out|in))"),
          rule(
              EventKind.OFF,
              0.82,
              "(?:re )?tangl\\w*|bird ?nest\\w*|cracked off|cut it off|round the (?:pole )?tip|(?:fresh|another) (?:rig|hook|hook ?length)\\b|snagged|\\bsnag\\b|re ?rig\\w*|re ?t(?:y|ie)\\w*"
                  + "|tying|ty(?:e|ing) (?:on )?a new|snapped(?: off)?(?! me)"
                  + "|(?:broke|broken|lost|snapped) (?:the|my|a) (?:\\w+ )?"
                  + THING
                  + "|new (?:hook ?length|hook|rig|elastic)|hook ?length(?: 's)? (?:gone|broke|broken)"
                  + "|(?:stuck|caught|hung up) in (?:the )?(?:tree|bush|reeds|lilies|willow|branch\\w*)"
                  + "|rig(?: 's| is)? (?:\\w+ ){0,3}?(?:mess|out of the water)|setting up again"
                  + "|(?:main ?line|line|elastic|hook ?length)(?: 's| has)? (?:broke|broken|snapped|gone|parted)"
                  + "|elastic(?: 's)? (?:gone|snapped)|put(?:ting)? the pole down"),
          rule(
              EventKind.CHANGE,
              0.8,
              "(?:chang|switch|swapp)\\w*(?: \\w+){0,3}? (?:to|onto|over to|for|from) (?:\\w+ ){0,2}?#b"
                  + "|(?:gone|going|went|back|try|trying|tried|put)(?: back)? (?:to|on to|on|onto|with"
                  + "|for|over to)? ?(?:an? |some |the |one |#n )*#b(?: on)?(?: the (?:hook|hair))"
                  + "|(?:gone|going|went|back|switched)(?: back| over)? (?:to|onto|on to) "
                  + "(?:an? |some |the )?#b"
                  + "|(?:chang|swapp|switch)\\w* (?:the |my |a |to )?(?:a )?(?:\\w+ )?"
                  + THING
                  + "|#b on the (?:hook|hair)|hook ?bait|shallowed(?: up| off)?|deepened(?: up| off)?"
                  + "|(?:come|gone|went|go|set|added|adding|took|taken|put|moved|up|down|going)"
                  + "(?: (?:it|up|another|on|off|down|the|float|about|just))* #m"
                  + "(?: (?:of depth|deeper|shallower|over|off bottom|on|off|up))*"
                  + "|#m (?:deeper|shallower|overdepth|over depth|off (?:the )?(?:bottom|deck))"
                  + "|(?:gone|going|went|come|bit|fish(?:ing)?) (?:\\w+ )?(?:deeper|shallower)"
                  + "|(?:step|go|gone|went|mov|drop|chang|switch)\\w*(?: \\w+){0,2}? (?:to|onto) (?:an? )?(?:#n |\\w+ )?"
                  + THING
                  + "|#n hooks?\\b|#b (?:going|goes|gone|is going) on\\b|#m deep now"
                  + "|(?:bigger|smaller|heavier|lighter|longer|shorter|finer|thicker) "
                  + THING
                  + "|on the (?:hair|band)$|from #m to #m|moved (?:the |my |some )?(?:shots?|bulk|droppers?)"),
          rule(
              EventKind.FED,
              0.88,
              "(?:loose )?fed(?! the (?:dogs?|ducks?|swans?|kids))|pott(?:ed|ing)(?: in)?|cupp(?:ed|ing)(?: in)?|ping(?:ed|ing)(?! (?:off|out$))"
                  + "|ball(?:ed|ing)(?: it)? in|topp(?:ed|ing) (?:it |the swim )?up(?: with)?|primed|priming"
                  + "|trickl(?:ed|ing)|loose feed(?:ing)?|catapult(?:ed|ing)|sprinkl(?:ed|ing)"
                  + "|feed(?:'s| 's|ing)? (?:gone|went|going) in|dripp(?:ed|ing)"),
          rule(EventKind.FED, 0.75, "feeding|baited(?: up)?|rebaited the swim"),
          rule(
              EventKind.FED,
              0.82,
              "(?:threw|thrown|chuck(?:ed)?|put|putting|dropp(?:ed|ing)|tipp(?:ed|ing)|dump(?:ed|ing)"
                  + "|fir(?:ed|e|ing)|chucking|throwing|flick(?:ed|ing)|lobb(?:ed|ing)|popp(?:ed|ing)"
                  + "|introduced|giv(?:en|ing)|gave|added)"
                  + "(?: (?:in|it|"
                  + "the|them|with|just|another|about|a|bit|of|some|more|few|out|"
                  + "#l|over|on|there|swim|extra|last))* (?:#a|#b|feed\\b|bait\\b)(?: (?:#b|in))*"
                  + "|(?:sent|went|gone|going|in|get|getting|got)(?: (?:in|it|with|just|another|about|a"
                  + "|some|more|few))* (?:#a|feed\\b)(?: (?:#b|in))*"),
          rule(
              EventKind.FED,
              0.75,
              "(?:#a|#b)(?: #b)?(?: (?:gone|going|went|goes|'s|is|every))* (?:in|over|down|into|every)\\b"
                  + "|another #a(?: #b)?|some more #b|bit (?:more|of) (?:#b|feed|bait)"),
          rule(
              EventKind.FED,
              0.65,
              "(?<!\\S)with (?:an? |another )?#a(?: #b)?|^(?:another |about )?#a(?: #b)?(?: (?:on|to|at|for|down) (?:the |my )?#l)?"),
          rule(
              EventKind.WEATHER,
              0.8,
              "\\bwind\\b(?! up)|windy|\\brain\\w*|drizzl\\w+|sun\\b(?! shade)|sunny|sunshine|cloud\\w*|overcast"
                  + "|thunder\\w*|breez\\w*|showers?|hail\\w*|snow\\w*|foggy|\\bfog\\b|mist\\b|misty"
                  + "|temperature|gust\\w*|(?:getting|gone|turned|turning|it 's)(?: \\w+)? (?:warm|cold"
                  + "|hot|chilly|dark|bright)\\w*|flat calm|ripple|(?:air )?pressure|lightning"),
          rule(EventKind.NOTE, 0.8, "^note\\b|^remember\\b|for the record|make a note"),
          mention(
              0.75,
              "(?:got|had|have|caught|taken|that 's|there 's|it 's|here 's|add|nice|and)"
                  + " (?:an?|another|one|#n|my|just|the|first)(?: (?:\\w+|#w)){0,3}? "
                  + "(?:#s|#w|fish\\b|one\\b(?! (?:bite|missed|on\\b)))"
                  + "|(?:caught|got|had) (?:him|her|it\\b|one|another|#n|two)"
                  + "(?! (?:bites?|missed|knocks?|indications?|on\\b|liners?|more bites?|pull|tap))"
                  + "|caught (?:some|more|a few)|took (?:one|a #s|another|#n)"),
          mention(
              0.72,
              "(?:another|one more|second|third|next)(?: (?:\\w+|#w)){0,2}? (?:#s|one|fish|#w)\\b"
                  + "|another (?:#n|one|two)|(?<!after )another$|(?:#n|couple) more\\b(?! (?:bites?|#))"
                  + "|first (?:fish|#s|one)"),
          mention(
              0.68,
              "#s (?:of |about |at )?#n #n(?= |$)|(?:#n )?#s(?: (?:of|about|around|at|on|that|just|under|over|maybe|nearly|is|'s|probably"
                  + "|roughly|approx|again|for|was|,))* #w|#w (?:of )?(?:\\w+ )?(?:#s|fish)"
                  + "|(?:nice|better|good|decent|big|bigger|proper|small|little|tiny|lump of a|bonus)"
                  + " (?:one|fish|#s)|(?:an?|#n|one|two) (?:\\w+ )?#s\\b|#w (?:that|this) one"
                  + "|(?:an?|#n|one|two) #w|(?:weigh\\w*|goes|go|went|looks|be|call it|say)(?: \\w+)? #w|^#w$|^(?:about|nearly|just"
                  + "|under|over| )*#w$|#n fish\\b|^(?:\\w+ ){0,2}#s(?: that)?$|#s in\\b|one in\\b(?! the| on| over)"));

  /** What makes a clause a plan, hope or condition instead of an event; before the trigger. */
  static final Pattern PLANNED =
      Pattern.compile(
          "\\b(?:going to(?! (?:the |my )?#l)|gonna|will|i'll|we'll|he'll|might|may|should|shall|would"
              + "|i'd(?! (?:say|guess|reckon|call))|could|can|want(?:ed|s)? to|need(?:s|ed)?|because|plan|planning|about to|ready to|hop(?:e|ing)"
              + "|wait(?:ing)?|until|till|thinking|think(?:ing)? about|ought|consider\\w*|tempted"
              + "|try(?:ing)? to|(?<!i've )(?:have|got|having) to|if|before|unless|supposed|meant to|looking to"
              + "|time to|wonder\\w*|whether|rather than|instead of|don't|keeps?|kept(?! (?:the )?$)|another #d|wish|every time"
              + "|for when|where i|last (?:week|time|year|match)|yesterday|this morning|practice"
              + "|used to|always|usually|normally|expect\\w*|used for|without)\\b");

  /** The same after the trigger. */
  static final Pattern PLANNED_AFTER =
      Pattern.compile(
          "^(?: (?:#\\w|\\w+)){0,5}? (?:in (?:a |about |another |the next )*(?:#d|minute|bit|while)\\b"
              + "|later\\b|soon\\b|(?<!the )last (?:week|time|year|match)|yesterday|after lunch"
              + "|for the last (?:#d|hour)|at the end|if )");

  /** Denials, right before the trigger. */
  static final Pattern DENIED =
      Pattern.compile(
          "\\b(?:no|not|never|nothing|none|without|hasn't|haven't|hadn't|didn't|isn't|wasn't|aren't"
              + "|ain't|don't|doesn't|won't|can't|cannot|stop|stopped|less|nobody|hardly)"
              + "(?: (?:\\w+|#\\w)){0,3} $");

  /** Running totals, which are no new fish. */
  static final Pattern TOTAL =
      Pattern.compile(
          "(?<!\\S)(?:total|altogether|so far|today|in all|that makes|makes it|now on|must be on|should be on"
              + "|sat on|sitting on|i'm on|got about|up to (?:#n|#w|about)|reckon i've|for the match"
              + "|in the first|must have|roughly got|(?:i've )?got (?:about |around )?(?:#n|#w) (?:now|in the"
              + " net)|(?<!#s )(?<!#s about )(?<!#s of )#w in the net|(?:#n|#w)(?: fish| #s)? now\\b|says|running|tally|on the board"
              + "|per hour|an hour|#d (?:for|in)|at half time|(?:at|by) half ?way|in (?:that|the) last|this half hour"
              + "|^(?:i'm |must be )?on (?:about |around |roughly )?(?:#w|#n fish))");

  /** Doubt in the speaker's own words. */
  static final Pattern DOUBT =
      Pattern.compile(
          "\\b(?:maybe|perhaps|i think|possibly|probably|not sure|might have|could have)\\b");

  static final Pattern QUESTION =
      Pattern.compile(
          "^(?:did|is|are|should|shall|do|does|what|why|where|how|who|which|was|can|am)\\b");

  static final Pattern OTHER_PEG =
      Pattern.compile(
          "#p|\\bnext (?:peg|door)|\\b(?:bloke|lad|man|angler|chap|guy|fella|lady)\\b"
              + "(?: (?:\\w+|'s)){0,5}? (?:left|right|opposite|door|along|bank)|\\bopposite\\b|neighbour"
              + "|(?:on|to) my (?:left|right)|far bank|pegs? (?:either|to)");

  static final Pattern CATCHING =
      Pattern.compile(
          "landed|caught|got|had|has|having|into|playing|bagging|netted|netting|catching|hooked|lost"
              + "|#s|fish|#w|another");

  /** Another peg that catches nothing. */
  static final Pattern NOT_CATCHING =
      Pattern.compile(
          "\\b(?:lost|missed|no|not|nothing|hasn't|haven't|isn't|struggling|without|empty|blank\\w*)\\b");

  private NoteRules() {}

  private static Rule rule(EventKind kind, double confidence, String pattern) {
    return new Rule(kind, Pattern.compile(pattern), confidence, false);
  }

  private static Rule mention(double confidence, String pattern) {
    return new Rule(EventKind.LANDED, Pattern.compile(pattern), confidence, true);
  }
}
