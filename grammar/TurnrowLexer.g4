lexer grammar TurnrowLexer;

WORD: [A-Za-z] [A-Za-z0-9-]*;
NUMBER: [0-9]+;
COMMA: ',';
LINE_END: '\r'? '\n';
SPACE: [ \t]+ -> channel(HIDDEN);
STRAY: .;
