// The lines of the notation.
//
// The parser is given the tokens of one line, joined with those that it goes on to, and never sees another. Each decision
// is made on one token: `regenerate/run` fails if the parser made of this has to look further. That is why a few words
// cannot be names (those missing in `name`), and why some rules read two shapes at once that the tree keeps apart.
parser grammar TurnrowParser;

options { tokenVocab = TurnrowLexer; }

// No tree of children is kept, to save time and memory: the builder reads what is labelled, and the first and last token.
line      : said=statement EOF ;
claimLine : claimed=claim EOF ;

statement
  : asNotation=notationLine | asPattern=patternLine | asVersion=versionLine | asTerms=termsLine | asSizes=sizesLine
  | asSkill=skillLine | asNotion=notionLine | asWearer=wearerLine | proseLine | asYarn=yarnLine | asHook=hookLine
  | asGauge=gaugeLine | asTurn=turnLine | asMeasure=measureLine | asCount=countLine | asPiece=pieceLine
  | asUse=useLine | asStitch=stitchLine | asKey=keyLine | asPicture=pictureLine
  | asBegin=beginLine | asChain=chainLine | asEdge=edgeLine | asMark=markLine | asDivide=divideLine | fastenLine
  | weaveLine | asRow=rowLine | asRows=rowsLine | asRepeat=repeatLine | asStraight=straightLine | asLeave=leaveLine
  | asAdd=addLine | asShape=shapeLine | asSeam=seamLine | asBlanket=blanketLine | asExpect=expectLine | asClaims=claimsLine
  | asSolid=solidLine | asWith=withLine | asStripes=stripesLine | asFloats=floatsLine | asFor=forLine | asBody=bodyLine | asEase=easeLine | asFinished=finishedLine | asSwatch=swatchLine | asMade=madeLine | asAccept=acceptLine
  ;

// What the pattern is.

notationLine : NOTATION value=number ;
patternLine  : PATTERN text=QUOTED ;
versionLine  : VERSION text=version ;
version      : NUMBER | DOTTED | QUOTED | name ;
termsLine    : TERMS called=name ;
sizesLine    : SIZES names+=sizeName (COMMA names+=sizeName)* ;
sizeName     : name | QUOTED | NUMBER (name | X)? ;
skillLine    : SKILL text=QUOTED ;
notionLine   : NOTION text=QUOTED ;
wearerLine   : WEARER called=name ;
proseLine    : PROSE ;
yarnLine     : YARN called=name text=QUOTED? (COMMA facts+=yarnFact)* ;
yarnFact     : WEIGHT value=number | value=number (unitWord=(G | OZ | M | YD) | PERCENT extra=EXTRA) ;
hookLine     : HOOK value=number MM ;

gaugeLine
  : GAUGE by=stitch COLON stitches=number (stitchesWord | repeats=(REPEAT | REPEATS))
    ( AND rows=number rowsWord TO rowsLength=gaugeLength
    | TO stitchesLength=gaugeLength COMMA rows=number rowsWord TO rowsLength=gaugeLength
    )
  ;
gaugeLength : value=number measure=unit ;

turnLine
  : TURN by=stitch (COMMA nextRow=NEXT ROW)? COLON CH chains=number (counts=COUNTS | doesNot=DOES NOT COUNT)?
    (COMMA parts+=turnPart)*
  ;
turnPart : FIRST STITCH IN nth=ORDINAL (CHAIN | CH) | NOT IN THE FOUNDATION ;

measureLine : MEASURE called=name IS value=sum ;
countLine   : COUNT called=name IS (of=(STITCHES | ROWS) FOR length=sum | value=sum (of=(STITCHES | ROWS) FOR length=sum)?)
              (COMMA fixes+=countFix)* ;
// How all claims of the file count, where that differs from the trade's usual way.
claimsLine  : CLAIMS (without=WITHOUT TURNING (CHAIN | CH) | with=WITH CHAINS) ;
// Grading: a body's measures by a published table or the designer's own, and what the finished garment measures.
bodyLine     : BODY (table=name COMMA measure=unit | file=QUOTED) ;
easeLine     : EASE called=name IS value=sum less=LESS? ;
finishedLine : FINISHED called=name IS value=expected (COMMA parts+=finishedPart)* ;
finishedPart : opens=OPENS | STRETCHES BY stretch=number PERCENT ;
acceptLine   : ACCEPT called=name (OF which=name)? COLON reason=QUOTED ;
// Weighed and measured: a swatch, and the sample as it was made.
swatchLine
  : SWATCH by=stitch COLON stitches=number (stitchesWord | repeats=(REPEAT | REPEATS)) AND rows=number rowsWord WEIGH value=number unitWord=(G | OZ)
    (COMMA yarn=name)?
  ;
madeLine : MADE size=sizeName COLON piece=name parts+=madePart (COMMA parts+=madePart)* ;
madePart : value=number measure=unit way=(WIDE | HIGH) ;
countFix    : ODD | EVEN | MULTIPLE OF multiple=single (PLUS plus=single)? | ROUNDED way=(UP | DOWN) | WITHIN within=sum ;

// Stitch patterns: their rows, a picture's lines and its key are lines of their own, as a piece's are.

useLine     : USE file=QUOTED ;
stitchLine  : STITCH (asPattern=stitchPattern | asSpecial=stitchMade) ;
stitchPattern : PATTERN called=name (FROM picture=PICTURE (IN by=name)? COMMA?)? OVER MULTIPLE OF multiple=number (PLUS plus=number)? ;
keyLine     : KEY (letter=QUOTED | which=(FIRST | LAST)) IS (OPEN words=items CLOSE | yarn=name) ;
pictureLine : cells=PICTURE_ROW ;
// A stitch of the designer's own. Its name is a word of hers, so that none of the notation's is taken.
stitchMade : called=WORD (OF by=WORD)? text=QUOTED? IS made=items ;

// Pieces.

pieceLine : PIECE called=name (COMMA MAKE copies=NUMBER)? begun=origin? claimed=claim? ;
origin
  : FROM piece=name COLON part=count (stitchesWord AT at=edge)?
  | IS piece=name MIRRORED (COMMA turned=TURNED OVER)?
  | ACROSS over+=acrossPart (COMMA over+=acrossPart)*
  | PICKED UP (ALONG | round=AROUND) walks+=along (AND walks+=along)* COLON rates+=rate (COMMA rates+=rate)*
  ;
// `first sleeve`, `second body front`: which of several, the piece, and its part; the binder knows which word is what.
acrossPart : words+=acrossWord+ ;
acrossWord : name | FIRST ;
along     : words+=walkWord+ (COMMA parts+=alongPart)* ;
alongPart : rows=selection | facing=side FACING ;

// `ring` is a name here as anywhere, so that pieces and counts may be called so: what has no stitches is the ring, which the builder tells.
beginLine : BEGIN WITH (bothSides=BOTH SIDES OF amount=count stitchesWord | amount=count (of=stitchesWord | OF chains=count CHAINS | FOUNDATION atOnce=stitch)?) claimed=claim? ;
chainLine : CHAIN amount=count claimed=claim? ;
edgeLine
  : FROM HERE at=edge (IS | ARE) called=name
  | (BOTH end=EDGES | hand=(RIGHT | LEFT) end=EDGE) (IS | ARE) called=name
  ;
markLine   : MARK NEXT ROW called=name ;
divideLine : DIVIDE COLON parts+=dividePart (COMMA parts+=dividePart)* ;
dividePart : SKIP_WORD amount=count | amount=count FOR called=name ;
fastenLine : FASTEN OFF ;
weaveLine  : WEAVE IN ENDS ;
// The yarn in the hand, from here on; `with` also stands in a row, and what joins the lines tells the two apart.
withLine    : WITH yarn=name ;
stripesLine : STRIPES ARE parts+=stripe (COMMA parts+=stripe)* ;
stripe      : yarn=name rows=count rowsWord ;
floatsLine  : FLOATS AT MOST most=number stitchesWord ;

// Rows.

rowLine  : ROW from=count? facing=side? COLON words=items claimed=claim? ;
// `rounds are spiral`: how rounds follow each other from here on, or in the whole pattern.
rowsLine : ROWS (ARE way=name (AND also=name)? | from=count TO to=count facing=side? COLON words=items claimed=claim?) ;
// `in one place`, `in skipped`, `together` and `centre is 3rd dc` belong to a stitch that is defined; the binder tells where they stand.
items    : each+=item (COMMA each+=item)* ;
item
  : OPEN inside=items CLOSE (amount=count end=TIMES | far=reach | joined=TOGETHER)? at=place?
  | SKIP_WORD amount=count?
  | SLIP OVER amount=count
  | LEAVE (THE REST | amount=count) (FOR later=LATER)?
  | HOLD amount=count FOR called=name
  | BRIDGE amount=count (FOR called=name)?
  | WITH yarn=name
  | JOIN (SKIPPING amount=count)? (WITH by=stitch)? TO walk+=walkWord+ at=place?
  | before=list?
    ( words+=name+ (changed=change changedBy=changeAmount? | worked=stitchAmount spread=spreading? | spread=spreading | ends=atEachEnd | joined=TOGETHER | nth=ORDINAL of+=name+)?
    | changed=change changedBy=changeAmount?
    | ends=atEachEnd
    ) at=place?
  ;
// What is spread over a stretch of plain stitches; how many stand at its ends is said behind a comma, like an item of its own.
spreading : WITH OPEN inside=items CLOSE amount=count TIMES EVENLY ;
atEachEnd : AT EACH END ;
// `mark corner` and `remove corners` are two words here, as a stitch and a count's name are; the builder tells them by what they say.
// A count's name behind a stitch is one more word of the stitch here; so a sum that begins with it is only its rest.
stitchAmount : operations+=countOperation+ | first=list operations+=countOperation* | far=reach ;
changeAmount : amount=count evenly=EVENLY? | far=reach ;
// `to turn`: to where the row below turned, behind which stitches wait.
reach        : ACROSS | AROUND | TO (corner=CORNER | turn=TURN) | UNTIL remain=count REMAIN (BEFORE (corner=CORNER | turn=TURN))? ;
// Print says `in each st across`; the last word adds nothing, and is let stand.
place
  : IN ( which=(NEXT | FIRST | LAST | SAME) kind+=name* (AND also+=name+)? (until=UNTIL remain=count REMAIN)?
       | which=EACH kind+=name* (AND many=list? also+=name+ (IN EACH other+=name+)?)? (ACROSS | AROUND | TO corner=CORNER | until=UNTIL remain=count REMAIN (BEFORE corner=CORNER)?)?
       | which=(CORNER | RING)
       | which=SKIPPED (crossing=BEHIND | IN crossing=FRONT)?
       | which=ONE PLACE
       | which=ORDINAL kind+=name+
       )
  ;

repeatLine
  : REPEAT (word=ROWS from=count TO to=count | word=ROW from=count | word=LAST (one=ROW | from=count counted=rowsWord))
    (COMMA times=count (more=MORE_WORD TIMES | end=TIMES (inAll=IN ALL)?))? claimed=claim?
  ;

// Lines for some sizes: a piece begins, is divided and ends in all of them, everything between may be for some.
forLine : FOR sizes+=sizeRange (COMMA sizes+=sizeRange)* COLON done=sizedLine ;
sizeRange : first=sizeName (TO last=sizeName)? ;
sizedLine
  : asTurn=turnLine | asEdge=edgeLine | asMark=markLine | asRow=rowLine | asRows=rowsLine | asRepeat=repeatLine
  | asStraight=straightLine | asLeave=leaveLine | asAdd=addLine | asShape=shapeLine | asSolid=solidLine
  | asWith=withLine | asStripes=stripesLine
  ;

// Shaping.

straightLine
  : STRAIGHT (TO length=sum (AT at=edge)? | further=FOR length=sum | amount=count counted=rowsWord) (FROM mark=name)? (COMMA fixes+=rowFix)*
    claimed=claim?
  ;
rowFix    : EVEN rowsWord | ODD rowsWord | END facing=side | IN pattern=name | EDGES IN by=stitch ;
leaveLine : LEAVE amount=count (FOR later=LATER)? AT at=edge claimed=claim? ;
addLine   : ADD amount=count AT at=edge (COMMA apart=ONE ROW APART)? claimed=claim? ;
// How the edges are shaped from here on is a line of its own; else it says over which rows, and what.
shapeLine
  : SHAPE
    ( BY by=decreasing
    | many=ROWS from=count TO to=count does=shapeDone
    | (TO length=sum (AT at=edge)? | further=FOR length=sum) (FROM mark=name)? (COMMA fixes+=rowFix)* does=shapeDone
    | rows=count
      ( counted=rowsWord (FROM mark=name)? (COMMA fixes+=rowFix)* does=shapeDone
      | stitchesWord inside=IN (COMMA BY by=decreasing)?
      )
    )
  ;
shapeDone : (COLON shapings+=shaping (SEMICOLON shapings+=shaping)* | solved=solve) claimed=claim? ;
// Changes one after the other at an edge, a frequency each; what says only how often goes on with the change before it.
shaping     : (AFTER after=count rowsWord COMMA)? first=stage (COMMA parts+=shapingPart)* ;
stage       : ((changed=change | ADD) amount=count | LEAVE amount=count (FOR later=LATER)?) (AT at=edge | evenly=EVENLY)? when=frequency? ;
shapingPart
  : THEN (when=frequency | next=stage)
  | often=everyRows
  | BY (turns=turnRows | by=decreasing)
  | inset=stitchesIn
  | AT at=edge
  | evenly=EVENLY
  | way=(STAGGERED | STACKED)
  ;
frequency : often=everyRows | BY turns=turnRows ;
everyRows : EVERY (ROW | interval=count rowsWord) (times=count TIMES)? ;
turnRows  : TURNS EVERY interval=count AND byTurns=count rowsWord (times=count TIMES)? ;
decreasing : SKIPPING | SLIPPING OVER | WORKING TOGETHER ;
stitchesIn : (called=WORD | amount=list) stitchesWord IN ;
solve      : EVENLY TO target=count COMMA (AT at=edge | around=AROUND) (COMMA options+=solveOption)* ;
solveOption
  : ON RS rowsWord
  | LONGER FIRST
  | BY (TURNS | by=decreasing)
  | which=(FIRST | LAST) rows=count rowsWord PLAIN
  | inset=stitchesIn
  ;
// A body of revolution, worked round from its foot to its top.
solidLine : SOLID shape=name across=sum ACROSS (BY other=sum way=(HIGH | THICK))? (COMMA parts+=solidPart)* claimed=claim? ;
solidPart : said=WORD | way=(STAGGERED | STACKED) | MULTIPLE OF multiple=single ;

// Joins and checks.

seamLine
  : SEAM first+=walkWord+ (AND firstMore+=walkWords)* (COMMA (rows=selection COMMA?)?)?
    WITH second+=walkWord+ (AND secondMore+=walkWords)* (COMMA parts+=seamPart)* (COLON worked=rate)?
  ;
// Motifs in rows and columns, each joined to those before it in its last round; rows of hexagons are set off, `5 and 4 across`. Several kinds take turns.
blanketLine : BLANKET called=name OF motif=name (AND more+=name)* COLON across=count (AND between=count)? ACROSS COMMA down=count DOWN COMMA JOIN (WITH by=stitch)? at=place claimed=claim? ;
walkWords : words+=walkWord+ ;
seamPart  : rows=selection | eased=EASING (least=list TO most=list measure=unit)? | IN (THE order=SAME | order=OPPOSITE) ORDER | WITH yarn=name | facing=side TOGETHER | FROM STITCH turned=count ;
// `body round 5`: the loops of a round in the middle that the one above left free.
walkWord  : name | FIRST | LAST | ROW | ROWS | STITCHES | NUMBER ;
selection
  : (all=ALL BUT)? which=(FIRST | LAST) (ROW | amount=count rowsWord)
  | ROWS from=count TO to=count
  ;
// So many in each place of a kind, or in all along an edge of the walk, or up to each of its corners.
rate
  : passed=SKIP_WORD EACH kind+=name+ (AND also+=name+)?
  | amount=list? words+=name+
    ( way=IN EACH (row=ROW | kind+=name+ (AND also+=name+)?)
    | way=PER (row=ROW | over=count (rows=rowsWord | STITCHES | kind+=name))
    | evenly=EVENLY (ALONG walk+=walkWord+ | toCorners=TO EACH CORNER)?
    )?
  ;

expectLine
  : EXPECT left=expected
    ( MEASURE (AT bound=(LEAST | MOST) length=sum | length=sum (COMMA WITHIN within=sum)?)
    | (IS | ARE) (AT bound=(LEAST | MOST))? right=expected
    | lying=(LIE | CUP | RUFFLE) flat=FLAT? (IN ROWS from=count TO to=count)?
    )
  ;
// `tile first side stitches`: the words before `side` say which; a stitch is one word, so the builder tells them apart.
expected  : value=sum (nth=FIRST? (by=WORD word=WORD?)? of=(STITCHES | ROWS) more+=expectedMore*)? ;
expectedMore : by=sign value=single of=(STITCHES | ROWS)? ;

claim     : EQUALS parts+=claimPart (COMMA parts+=claimPart)* (without=WITHOUT TURNING (CHAIN | CH) | with=WITH CHAINS)? ;
claimPart : amount=count (words+=name+ | stitches=STITCHES)? ;

// Small parts.

edge         : BOTH EDGES | called=name EDGE? ;
side         : RS | WS ;
change       : INC | DEC ;
stitch       : words+=name+ ;
rowsWord     : ROW | ROWS ;
stitchesWord : STITCH | STITCHES ;

// A sum with lengths in it, and one of counts alone: behind a count, `in` is never an inch. Which operator binds first is
// left to the tree, so that a long sum is a list and never a deep nest.
sum            : first=factor rest+=sumOperation* ;
sumOperation   : by=sign value=factor ;
factor         : amount=list measure=unit? | called=name | OPEN inside=sum CLOSE ;
count          : first=single rest+=countOperation* ;
countOperation : by=sign value=single ;
single         : amount=list | called=name | OPEN inside=count CLOSE ;
sign           : PLUS | MINUS | X | OVER_SIGN ;

list   : first=number (OPEN more+=number (COMMA more+=number)* CLOSE)? ;
number : whole=NUMBER part=FRACTION? | part=FRACTION ;
unit   : MM | CM | IN | M | YD ;

// Every word that may be a name: all but the few that one-token reading needs for itself.
name
  : WORD
  | ACCEPT | BODY | EASE | FINISHED | FLOATS | MADE | SOLID | STRIPES | SWATCH
  | ADD | BEGIN | BLANKET | CHAIN | CLAIMS | COUNT | DIVIDE | EXPECT | FASTEN | FROM | GAUGE | HOOK | KEY | LEFT | MARK | MEASURE | NOTATION
  | NOTION | PATTERN | PIECE | REPEAT | RIGHT | SEAM | SHAPE | SIZES | SKILL | STRAIGHT | TERMS | TURN | VERSION
  | USE | WEARER | WEAVE | YARN
  | AFTER | ALL | ALONG | APART | BEFORE | BUT | CH | CHAINS | CORNER | COUNTS | CUP | DOES | DOWN | EACH | EASING | EDGE | EDGES | END
  | ENDS | EVEN | EVERY | EXTRA | FACING | FLAT | FOUNDATION | HERE | HIGH | IS | LATER | LEAST | LESS | LIE | LONGER | MAKE | MIRRORED | MORE_WORD | MOST | MULTIPLE | NEXT | NOT | ODD | OF | OFF
  | ON | ONE | OPENS | OPPOSITE | ORDER | OVER | PICKED | PICTURE | PLAIN | REMAIN | REPEATS | REST | RING | ROUNDED | RUFFLE | SAME | SIDES | SKIPPING | SLIPPING | STACKED | STAGGERED | STITCH | STRETCHES | THEN | THICK | TIMES
  | FRONT | BEHIND | SKIPPED | PLACE | TURNED | TURNING | TURNS | UP | WEIGH | WEIGHT | WIDE | WITHIN | WORKING | G | OZ
  ;
