// The words of the notation.
//
// The reader gives the lexer one line at a time, without its line end, so that no slip can reach past its own line.
// Every character belongs to some token: what fits nothing else is JUNK. Tokens named WRONG_… are slips that have
// an explanation of their own; no rule of the parser takes them.
//
// Characters outside ASCII come folded into a few classes (Reading/FoldedCharacters.cs), so that a text in any
// alphabet is lexed as fast as one in English:
//   white space -> a space           letters -> Q, which is in no word of the notation    curly quotes -> "
//   \u0001 an accent or other mark   \u0002 the multiplication sign                        \u0003 a fraction in one character
//   \u0004 \u0005 the two units of a character outside the 16-bit plane                    \u0006 any other, control characters included
lexer grammar TurnrowLexer;

WHITE_SPACE : [ \t]+ -> channel(HIDDEN) ;
COMMENT     : '#' ~[\r\n]* -> channel(HIDDEN) ;
PROSE       : '>' ~[\r\n]* ;
PICTURE_ROW : '|' ~[\r\n]* ;

// Signs. Operators have white space on both sides; the reader checks that.
COMMA     : ',' ;
SEMICOLON : ';' ;
COLON     : ':' ;
OPEN      : '(' ;
CLOSE     : ')' ;
EQUALS    : '=' ;
PLUS      : '+' ;
MINUS     : '-' ;
OVER_SIGN : '/' ;
PERCENT   : '%' ;
X         : 'x' | '\u0002' ;

// Words that begin a line.
ACCEPT   : 'accept' ;
ADD      : 'add' ;
BEGIN    : 'begin' ;
BLANKET  : 'blanket' ;
BODY     : 'body' ;
BOTH     : 'both' ;
CHAIN    : 'chain' ;
CLAIMS   : 'claims' ;
COUNT    : 'count' ;
DIVIDE   : 'divide' ;
EASE     : 'ease' ;
EXPECT   : 'expect' ;
FASTEN   : 'fasten' ;
FINISHED : 'finished' ;
FLOATS   : 'floats' ;
FOR      : 'for' ;
FROM     : 'from' ;
FRONT      : 'front' ;
GAUGE    : 'gauge' ;
HOOK     : 'hook' ;
KEY      : 'key' ;
LEAVE    : 'leave' ;
LEFT     : 'left' ;
MADE     : 'made' ;
MARK     : 'mark' ;
MEASURE  : 'measure' ;
NOTATION : 'notation' ;
NOTION   : 'notion' ;
PATTERN  : 'pattern' ;
PIECE    : 'piece' ;
REPEAT   : 'repeat' ;
RIGHT    : 'right' ;
// What is worked round is a row as well: the word says which way the work goes.
ROW      : 'row' | 'round' ;
ROWS     : 'rows' | 'rounds' ;
SEAM     : 'seam' ;
SHAPE    : 'shape' ;
SIZES    : 'sizes' ;
SKILL    : 'skill' ;
SOLID    : 'solid' ;
STITCH   : 'stitch' ;
STRAIGHT : 'straight' ;
STRIPES  : 'stripes' ;
SWATCH   : 'swatch' ;
TERMS    : 'terms' ;
TURN     : 'turn' ;
USE      : 'use' ;
VERSION  : 'version' ;
WEARER   : 'wearer' ;
WEAVE    : 'weave' ;
YARN     : 'yarn' ;

// Words inside a line.
ACROSS     : 'across' ;
AFTER      : 'after' ;
ALL        : 'all' ;
ALONG      : 'along' ;
AND        : 'and' ;
APART      : 'apart' ;
ARE        : 'are' ;
AROUND     : 'around' ;
AT         : 'at' ;
BEFORE     : 'before' ;
BEHIND     : 'behind' ;
BRIDGE     : 'bridge' ;
BUT        : 'but' ;
BY         : 'by' ;
CH         : 'ch' ;
CHAINS     : 'chains' ;
CORNER     : 'corner' ;
COUNTS     : 'counts' ;
CUP        : 'cups' | 'cup' ;
DEC        : 'dec' ;
DOES       : 'does' ;
DOWN       : 'down' ;
EACH       : 'each' ;
EASING     : 'easing' ;
EDGE       : 'edge' ;
EDGES      : 'edges' ;
END        : 'end' ;
ENDS       : 'ends' ;
EVEN       : 'even' ;
EVENLY     : 'evenly' ;
EVERY      : 'every' ;
EXTRA      : 'extra' ;
FACING     : 'facing' ;
FIRST      : 'first' ;
FLAT       : 'flat' ;
FOUNDATION : 'foundation' ;
HERE       : 'here' ;
HIGH       : 'high' ;
HOLD       : 'hold' ;
IN         : 'in' ;
INC        : 'inc' ;
IS         : 'is' ;
JOIN       : 'join' ;
LAST       : 'last' ;
LATER      : 'later' ;
LEAST      : 'least' ;
LESS       : 'less' ;
LIE        : 'lies' | 'lie' ;
LONGER     : 'longer' ;
MAKE       : 'make' ;
MIRRORED   : 'mirrored' ;
MORE_WORD  : 'more' ;
MOST       : 'most' ;
MULTIPLE   : 'multiple' ;
NEXT       : 'next' ;
NOT        : 'not' ;
ODD        : 'odd' ;
OF         : 'of' ;
OFF        : 'off' ;
ON         : 'on' ;
ONE        : 'one' ;
OPENS      : 'opens' ;
OPPOSITE   : 'opposite' ;
ORDER      : 'order' ;
OVER       : 'over' ;
PER        : 'per' ;
PICKED     : 'picked' ;
PICTURE    : 'picture' ;
PLACE      : 'place' ;
PLAIN      : 'plain' ;
REMAIN     : 'remain' | 'remains' ;
REPEATS    : 'repeats' ;
REST       : 'rest' ;
RING       : 'ring' ;
ROUNDED    : 'rounded' ;
RS         : 'RS' ;
RUFFLE     : 'ruffles' | 'ruffle' ;
SAME       : 'same' ;
SIDES      : 'sides' ;
SKIP_WORD  : 'skip' ;
SKIPPED    : 'skipped' ;
SKIPPING   : 'skipping' ;
SLIP       : 'slip' ;
SLIPPING   : 'slipping' ;
STACKED    : 'stacked' ;
STAGGERED  : 'staggered' ;
STITCHES   : 'stitches' | 'sts' ;
STRETCHES  : 'stretches' ;
THE        : 'the' ;
THEN       : 'then' ;
THICK      : 'thick' ;
TIMES      : 'times' | 'time' ;
TO         : 'to' ;
TOGETHER   : 'together' ;
TURNED     : 'turned' ;
TURNING    : 'turning' ;
TURNS      : 'turns' ;
UNTIL      : 'until' ;
UP         : 'up' ;
WEIGH      : 'weigh' ;
WEIGHT     : 'weight' ;
WIDE       : 'wide' ;
WITH       : 'with' ;
WITHIN     : 'within' ;
WITHOUT    : 'without' ;
WORKING    : 'working' ;
WS         : 'WS' ;

// Units. `in` is both a unit and a word.
CM : 'cm' ;
G  : 'g' ;
M  : 'm' ;
MM : 'mm' ;
OZ : 'oz' ;
YD : 'yd' ;

WORD : LETTER (LETTER | MARK_ | DIGIT | '-' (LETTER | DIGIT))* ;

NUMBER   : DIGITS ('.' DIGITS)? ;
FRACTION : DIGITS '/' DIGITS | '\u0003' ;
ORDINAL  : DIGITS ('st' | 'nd' | 'rd' | 'th') ;
DOTTED   : DIGITS '.' DIGITS ('.' DIGITS)+ ;

QUOTED : QUOTE ~["\r\n]* QUOTE ;

WRONG_COMMA : DIGITS (',' DIGITS)+ ;
WRONG_QUOTE : QUOTE ~["\r\n]* ;

// A character outside the 16-bit plane is two units and one token.
JUNK : '\u0004' '\u0005' | . ;

fragment QUOTE  : '"' ;
fragment DIGIT  : [0-9] ;
fragment DIGITS : DIGIT+ ;
fragment LETTER : [A-Za-z] ;
fragment MARK_  : '\u0001' ;
