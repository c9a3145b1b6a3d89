parser grammar TurnrowParser;
options { tokenVocab = TurnrowLexer; }

file: line* EOF;
line: words? LINE_END;
words: item (COMMA item)*;
item: WORD | NUMBER;
