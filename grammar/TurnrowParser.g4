// The lines of the notation.
//
// The parser is given the tokens of one line, joined with those that it goes on to, and never sees another. Each decision
// is made on one token: `regenerate/run` fails if the parser made of this has to look further. That is why a few words
// cannot be names (those missing in `name`), and why some rules read two shapes at once that the tree keeps apart.
parser grammar TurnrowParser;

options { tokenVocab = TurnrowLexer; }

line      : statement EOF ;
claimLine : claim EOF ;

statement
  : notationLine | patternLine | versionLine | termsLine | sizesLine | skillLine | notionLine | wearerLine
  | proseLine | yarnLine | hookLine | gaugeLine | turnLine | measureLine | countLine
  | pieceLine | beginLine | chainLine | edgeLine | rowLine | rowsLine | straightLine | leaveLine | addLine
  | markLine | repeatLine | shapeLine | divideLine | fastenLine | weaveLine | seamLine | expectLine
  ;

// What the pattern is.

notationLine : NOTATION number ;
patternLine  : PATTERN QUOTED ;
versionLine  : VERSION version ;
version      : NUMBER | DOTTED | QUOTED | name ;
termsLine    : TERMS name ;
sizesLine    : SIZES names+=sizeName (COMMA names+=sizeName)* ;
sizeName     : name | QUOTED | NUMBER (name | X)? ;
skillLine    : SKILL QUOTED ;
notionLine   : NOTION QUOTED ;
wearerLine   : WEARER name ;
proseLine    : PROSE ;
yarnLine     : YARN name QUOTED? (COMMA facts+=yarnFact)* ;
yarnFact     : WEIGHT number | number unitWord=(G | OZ | M | YD) ;
hookLine     : HOOK number MM ;

gaugeLine
  : GAUGE stitch COLON stitches=number stitchesWord
    ( AND rows=number rowsWord TO gaugeLength
    | TO stitchesLength=gaugeLength COMMA rows=number rowsWord TO gaugeLength
    )
  ;
gaugeLength : number unit ;

turnLine
  : TURN stitch (COMMA nextRow=NEXT ROW)? COLON CH chains=number (counts=COUNTS | DOES NOT COUNT)?
    (COMMA parts+=turnPart)*
  ;
turnPart : FIRST STITCH IN ORDINAL (CHAIN | CH) | NOT IN THE FOUNDATION ;

measureLine : MEASURE name IS sum ;
countLine   : COUNT name IS (of=(STITCHES | ROWS) FOR length=sum | sum (of=(STITCHES | ROWS) FOR length=sum)?)
              (COMMA fixes+=countFix)* ;
countFix    : ODD | EVEN | MULTIPLE OF single (PLUS plus=single)? | ROUNDED (UP | DOWN) ;

// Pieces.

pieceLine : PIECE name origin? claim? ;
origin
  : FROM name COLON count (stitchesWord AT edge)?
  | IS name MIRRORED (COMMA turned=TURNED OVER)?
  | PICKED UP ALONG walks+=along (AND walks+=along)* COLON rates+=rate (COMMA rates+=rate)*
  ;
along     : words+=walkWord+ (COMMA parts+=alongPart)* ;
alongPart : selection | side FACING ;

beginLine : BEGIN WITH count stitchesWord claim? ;
chainLine : CHAIN count claim? ;
edgeLine
  : FROM HERE edge (IS | ARE) name
  | (BOTH EDGES | hand=(RIGHT | LEFT) EDGE) (IS | ARE) name
  ;
markLine   : MARK NEXT ROW name ;
divideLine : DIVIDE COLON parts+=dividePart (COMMA parts+=dividePart)* ;
dividePart : SKIP_WORD count | count FOR name ;
fastenLine : FASTEN OFF ;
weaveLine  : WEAVE IN ENDS ;

// Rows.

rowLine  : ROW count? side? COLON items claim? ;
rowsLine : ROWS from=count TO to=count side? COLON items claim? ;
items    : each+=item (COMMA each+=item)* ;
item
  : OPEN inside=items CLOSE (count TIMES | reach)? place?
  | SKIP_WORD count?
  | SLIP OVER count
  | LEAVE (THE REST | count)
  | before=list? (words+=name+ (change amount=changeAmount? | stitchAmount)? | change amount=changeAmount?) place?
  ;
// A count's name behind a stitch is one more word of the stitch here; so a sum that begins with it is only its rest.
stitchAmount : operations+=countOperation+ | numberCount | reach ;
changeAmount : count EVENLY? | reach ;
reach        : ACROSS | AROUND | UNTIL count REMAIN ;
place        : IN which=(NEXT | FIRST | LAST | SAME | EACH) kind+=name* (AND also+=name+)? ;

repeatLine
  : REPEAT (ROWS from=count TO to=count | ROW from=count) COMMA times=count (more=MORE_WORD TIMES | TIMES (inAll=IN ALL)?) claim?
  ;

// Shaping.

straightLine
  : STRAIGHT (TO length=sum | FOR length=sum | count rowsWord) (FROM name)? (COMMA fixes+=rowFix)* claim?
  ;
rowFix    : EVEN rowsWord | ODD rowsWord | END side ;
leaveLine : LEAVE count AT edge claim? ;
addLine   : ADD count AT edge (COMMA apart=ONE ROW APART)? claim? ;
shapeLine
  : SHAPE (ROWS from=count TO to=count | rows=count rowsWord)
    (COLON shapings+=shaping (SEMICOLON shapings+=shaping)* | solve) claim?
  ;
shaping     : (AFTER after=count rowsWord COMMA)? change amount=count AT edge frequency? (COMMA parts+=shapingPart)* ;
shapingPart : THEN? frequency | stitchesIn ;
frequency
  : EVERY (ROW | interval=count rowsWord) (times=count TIMES)?
  | BY TURNS EVERY interval=count AND byTurns=count rowsWord (times=count TIMES)?
  ;
stitchesIn : (WORD | list) stitchesWord IN ;
solve      : EVENLY TO count COMMA AT edge (COMMA options+=solveOption)* ;
solveOption
  : ON RS rowsWord
  | LONGER FIRST
  | BY TURNS
  | (FIRST | LAST) count rowsWord PLAIN
  | stitchesIn
  ;

// Joins and checks.

seamLine
  : SEAM first+=walkWord+ (COMMA (selection COMMA?)?)? WITH second+=walkWord+ (COMMA parts+=seamPart)* (COLON rate)?
  ;
seamPart  : selection | EASING | IN (THE SAME | OPPOSITE) ORDER ;
walkWord  : name | FIRST | LAST | ROW | ROWS | STITCHES ;
selection
  : (all=ALL BUT)? which=(FIRST | LAST) (ROW | count rowsWord)
  | ROWS from=count TO to=count
  ;
rate      : list? words+=name+ (IN EACH (ROW | kind+=name+) | PER (ROW | over=count (rowsWord | STITCHES | name)))? ;

expectLine
  : EXPECT left=expected (MEASURE length=sum (COMMA WITHIN within=sum)? | (IS | ARE) right=expected)
  ;
expected  : sum (WORD? of=(STITCHES | ROWS))? ;

claim     : EQUALS parts+=claimPart (COMMA parts+=claimPart)* (WITHOUT TURNING (CHAIN | CH) | with=WITH CHAINS)? ;
claimPart : count (words+=name+ | STITCHES)? ;

// Small parts.

edge         : BOTH EDGES | name EDGE? ;
side         : RS | WS ;
change       : INC | DEC ;
stitch       : words+=name+ ;
rowsWord     : ROW | ROWS ;
stitchesWord : STITCH | STITCHES ;

// A sum with lengths in it, and one of counts alone: behind a count, `in` is never an inch. Which operator binds first is
// left to the tree, so that a long sum is a list and never a deep nest.
sum            : factor rest+=sumOperation* ;
sumOperation   : sign factor ;
factor         : list unit? | name | OPEN sum CLOSE ;
count          : single rest+=countOperation* ;
countOperation : sign single ;
single         : list | name | OPEN count CLOSE ;
numberCount    : list rest+=countOperation* ;
sign           : PLUS | MINUS | X | OVER_SIGN ;

list   : number (OPEN more+=number (COMMA more+=number)* CLOSE)? ;
number : NUMBER FRACTION? | FRACTION ;
unit   : MM | CM | IN | M | YD ;

// Every word that may be a name: all but the few that one-token reading needs for itself.
name
  : WORD
  | ADD | BEGIN | CHAIN | COUNT | DIVIDE | EXPECT | FASTEN | FROM | GAUGE | HOOK | LEFT | MARK | MEASURE | NOTATION
  | NOTION | PATTERN | PIECE | REPEAT | RIGHT | SEAM | SHAPE | SIZES | SKILL | STRAIGHT | TERMS | TURN | VERSION
  | WEARER | WEAVE | YARN
  | AFTER | ALL | ALONG | APART | ARE | BUT | BY | CH | CHAINS | COUNTS | DOES | DOWN | EACH | EASING | EDGE | EDGES | END
  | ENDS | EVEN | EVERY | FACING | FOUNDATION | HERE | IS | LONGER | MIRRORED | MORE_WORD | MULTIPLE | NEXT | NOT | ODD | OF | OFF
  | ON | ONE | OPPOSITE | ORDER | OVER | PICKED | PLAIN | REMAIN | REST | ROUNDED | SAME | STITCH | THEN | TIMES | TURNED
  | TURNING | TURNS | UP | WEIGHT | WITHIN | G | OZ
  ;
