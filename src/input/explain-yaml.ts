import type { ErrorCode } from 'yaml';

interface YamlWords {
  readonly message: string;
  readonly hint: string;
}

const quoteIt = 'Put the whole value in double quotes.';
const unexpected: YamlWords = {
  message: 'this does not belong here',
  hint: `Check the indentation, commas and brackets before it. If it is part of words: ${quoteIt.toLowerCase()}`,
};

/** The parser's own messages can quote the file, and a file may hold a name; so each code has words of its own. */
const yamlWords: Partial<Record<ErrorCode, YamlWords>> = {
  BAD_DQ_ESCAPE: {
    message: 'a backslash (\\) starts something unknown',
    hint: 'Write \\\\ for a backslash, or use single quotes.',
  },
  BAD_INDENT: {
    message: 'the indentation does not fit the lines above',
    hint: 'Indent with two spaces for each level. Look above for a bracket or quote that is not closed.',
  },
  BAD_SCALAR_START: { message: 'a value cannot start with this character', hint: quoteIt },
  BLOCK_AS_IMPLICIT_KEY: {
    message: 'a second key stands in this value',
    hint: `${quoteIt} If it is not one value, check the indentation of the next line.`,
  },
  BLOCK_IN_FLOW: {
    message: 'an indented list or map stands inside brackets',
    hint: 'Write it with brackets too, or without brackets around it.',
  },
  KEY_OVER_1024_CHARS: {
    message: 'a key is far too long',
    hint: 'Look for a missing quote or line end before it.',
  },
  MISSING_CHAR: {
    message: 'a character is missing: a closing quote, bracket, comma, colon or space',
    hint: 'Add it here or before.',
  },
  MULTILINE_IMPLICIT_KEY: {
    message: 'a key goes over more than one line',
    hint: 'Look for a missing colon or quote before it.',
  },
  NON_STRING_KEY: { message: 'a key must be plain words', hint: 'Write key: value.' },
  TAB_AS_INDENT: { message: 'a tab is used to indent', hint: 'Indent with spaces.' },
  BAD_COLLECTION_TYPE: {
    message: 'a list stands where a map was begun, or the other way round',
    hint: 'Check the indentation.',
  },
};

/** What is wrong and what to do, for an error code of the YAML parser; never quotes the text. */
export function explainYaml(code: ErrorCode): YamlWords {
  return yamlWords[code] ?? unexpected;
}
