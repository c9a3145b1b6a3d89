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
  | asBegin=beginLine | asChain=chainLine | asEdge=edgeLine | asMark=markLine | asDivide=divideLine | fastenLine
  | weaveLine | asRow=rowLine | asRows=rowsLine | asRepeat=repeatLine | asStraight=straightLine | asLeave=leaveLine
  | asAdd=addLine | asShape=shapeLine | asSeam=seamLine | asExpect=expectLine | asClaims=claimsLine
  | asFor=forLine | asBody=bodyLine | asEase=easeLine | asFinished=finishedLine | asSwatch=swatchLine | asMade=madeLine | asAccept=acceptLine
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
  : GAUGE by=stitch COLON stitches=number stitchesWord
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
  : SWATCH by=stitch COLON stitches=number stitchesWord AND rows=number rowsWord WEIGH value=number unitWord=(G | OZ)
    (COMMA yarn=name)?
  ;
madeLine : MADE size=sizeName COLON piece=name parts+=madePart (COMMA parts+=madePart)* ;
madePart : value=number measure=unit way=(WIDE | HIGH) ;
countFix    : ODD | EVEN | MULTIPLE OF multiple=single (PLUS plus=single)? | ROUNDED way=(UP | DOWN) | WITHIN within=sum ;

// Pieces.

pieceLine : PIECE called=name (COMMA MAKE copies=NUMBER)? begun=origin? claimed=claim? ;
origin
  : FROM piece=name COLON part=count (stitchesWord AT at=edge)?
  | IS piece=name MIRRORED (COMMA turned=TURNED OVER)?
  | ACROSS over+=acrossPart (COMMA over+=acrossPart)*
  | PICKED UP (ALONG | round=AROUND) walks+=along (AND walks+=along)* COLON rates+=rate (COMMA rates+=rate)*
  ;
acrossPart : base=name part=name? ;
along     : words+=walkWord+ (COMMA parts+=alongPart)* ;
alongPart : rows=selection | facing=side FACING ;

// A ring is one place; both sides of a chain are worked round, its ends being one place each for both.
beginLine : BEGIN WITH (ring=RING (OF chains=count CHAINS)? | bothSides=BOTH SIDES OF amount=count stitchesWord | amount=count stitchesWord) claimed=claim? ;
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

// Rows.

rowLine  : ROW from=count? facing=side? COLON words=items claimed=claim? ;
// `rounds are spiral`: how rounds follow each other from here on, or in the whole pattern.
rowsLine : ROWS (ARE way=name (AND also=name)? | from=count TO to=count facing=side? COLON words=items claimed=claim?) ;
items    : each+=item (COMMA each+=item)* ;
item
  : OPEN inside=items CLOSE (amount=count end=TIMES | far=reach)? at=place?
  | SKIP_WORD amount=count?
  | SLIP OVER amount=count
  | LEAVE (THE REST | amount=count) (FOR later=LATER)?
  | HOLD amount=count FOR called=name
  | BRIDGE amount=count (FOR called=name)?
  | before=list?
    ( words+=name+ (changed=change changedBy=changeAmount? | worked=stitchAmount spread=spreading? | spread=spreading | ends=atEachEnd)?
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
reach        : ACROSS | AROUND | TO corner=CORNER | UNTIL remain=count REMAIN (BEFORE corner=CORNER)? ;
// Print says `in each st across`; the last word adds nothing, and is let stand.
place
  : IN ( which=(NEXT | FIRST | LAST | SAME) kind+=name* (AND also+=name+)? (until=UNTIL remain=count REMAIN)?
       | which=EACH kind+=name* (AND many=list? also+=name+ (IN EACH other+=name+)?)? (ACROSS | AROUND | until=UNTIL remain=count REMAIN)?
       | which=(CORNER | RING)
       )
  ;

repeatLine
  : REPEAT (ROWS from=count TO to=count | ROW from=count) COMMA times=count
    (more=MORE_WORD TIMES | end=TIMES (inAll=IN ALL)?) claimed=claim?
  ;

// Lines for some sizes: a piece begins, is divided and ends in all of them, everything between may be for some.
forLine : FOR sizes+=sizeRange (COMMA sizes+=sizeRange)* COLON done=sizedLine ;
sizeRange : first=sizeName (TO last=sizeName)? ;
sizedLine
  : asTurn=turnLine | asEdge=edgeLine | asMark=markLine | asRow=rowLine | asRows=rowsLine | asRepeat=repeatLine
  | asStraight=straightLine | asLeave=leaveLine | asAdd=addLine | asShape=shapeLine
  ;

// Shaping.

straightLine
  : STRAIGHT (TO length=sum (AT at=edge)? | further=FOR length=sum | amount=count counted=rowsWord) (FROM mark=name)? (COMMA fixes+=rowFix)*
    claimed=claim?
  ;
rowFix    : EVEN rowsWord | ODD rowsWord | END facing=side ;
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
stage       : ((changed=change | ADD) amount=count | LEAVE amount=count (FOR later=LATER)?) (AT at=edge)? when=frequency? ;
shapingPart
  : THEN (when=frequency | next=stage)
  | often=everyRows
  | BY (turns=turnRows | by=decreasing)
  | inset=stitchesIn
  | AT at=edge
  ;
frequency : often=everyRows | BY turns=turnRows ;
everyRows : EVERY (ROW | interval=count rowsWord) (times=count TIMES)? ;
turnRows  : TURNS EVERY interval=count AND byTurns=count rowsWord (times=count TIMES)? ;
decreasing : SKIPPING | SLIPPING OVER | WORKING TOGETHER ;
stitchesIn : (called=WORD | amount=list) stitchesWord IN ;
solve      : EVENLY TO target=count COMMA AT at=edge (COMMA options+=solveOption)* ;
solveOption
  : ON RS rowsWord
  | LONGER FIRST
  | BY (TURNS | by=decreasing)
  | which=(FIRST | LAST) rows=count rowsWord PLAIN
  | inset=stitchesIn
  ;

// Joins and checks.

seamLine
  : SEAM first+=walkWord+ (AND firstMore+=walkWords)* (COMMA (rows=selection COMMA?)?)?
    WITH second+=walkWord+ (AND secondMore+=walkWords)* (COMMA parts+=seamPart)* (COLON worked=rate)?
  ;
walkWords : words+=walkWord+ ;
seamPart  : rows=selection | eased=EASING (least=list TO most=list measure=unit)? | IN (THE order=SAME | order=OPPOSITE) ORDER ;
walkWord  : name | FIRST | LAST | ROW | ROWS | STITCHES ;
selection
  : (all=ALL BUT)? which=(FIRST | LAST) (ROW | amount=count rowsWord)
  | ROWS from=count TO to=count
  ;
rate
  : amount=list? words+=name+
    (way=IN EACH (row=ROW | kind+=name+) | way=PER (row=ROW | over=count (rows=rowsWord | STITCHES | kind+=name)) | evenly=EVENLY)?
  ;

expectLine
  : EXPECT left=expected (MEASURE (AT bound=(LEAST | MOST) length=sum | length=sum (COMMA WITHIN within=sum)?) | (IS | ARE) (AT bound=(LEAST | MOST))? right=expected)
  ;
expected  : value=sum (by=WORD? of=(STITCHES | ROWS) more+=expectedMore*)? ;
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
  | ACCEPT | BODY | EASE | FINISHED | MADE | SWATCH
  | ADD | BEGIN | CHAIN | CLAIMS | COUNT | DIVIDE | EXPECT | FASTEN | FROM | GAUGE | HOOK | LEFT | MARK | MEASURE | NOTATION
  | NOTION | PATTERN | PIECE | REPEAT | RIGHT | SEAM | SHAPE | SIZES | SKILL | STRAIGHT | TERMS | TURN | VERSION
  | WEARER | WEAVE | YARN
  | AFTER | ALL | ALONG | APART | BEFORE | BUT | CH | CHAINS | CORNER | COUNTS | DOES | DOWN | EACH | EASING | EDGE | EDGES | END
  | ENDS | EVEN | EVERY | EXTRA | FACING | FOUNDATION | HERE | HIGH | IS | LATER | LEAST | LESS | LONGER | MAKE | MIRRORED | MORE_WORD | MOST | MULTIPLE | NEXT | NOT | ODD | OF | OFF
  | ON | ONE | OPENS | OPPOSITE | ORDER | OVER | PICKED | PLAIN | REMAIN | REST | ROUNDED | SAME | SIDES | SKIPPING | SLIPPING | STITCH | STRETCHES | THEN | TIMES
  | TOGETHER | TURNED | TURNING | TURNS | UP | WEIGH | WEIGHT | WIDE | WITHIN | WORKING | G | OZ
  ;
