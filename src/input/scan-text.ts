import { CST, Lexer } from 'yaml';
import type { DiagnosticCode } from '../diagnostics/codes.ts';
import { limits } from './limits.ts';

/** Something refused before parsing. `fatal`: parsing on would be slow, unsafe or pointless. */
export interface Refusal {
  readonly code: DiagnosticCode;
  readonly start: number;
  readonly end: number;
  readonly message: string;
  readonly hint: string;
  readonly fatal: boolean;
}

// YAML allows tab, line ends and printable characters only; the lexer itself uses some of the others as marks.
// eslint-disable-next-line no-control-regex -- these characters are what is looked for
const unprintable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u0084\u0086-\u009f\ufffe\uffff]|\p{Cs}/u;

/**
 * Looks through the text without recursion, in time linear in its length: size, characters, nesting, and what this format
 * leaves out of YAML (aliases, anchors, tags, directives).
 */
export function scanText(text: string): Refusal[] {
  if (text.length > limits.bytes || new TextEncoder().encode(text).length > limits.bytes) {
    return [refuse('YAML_TOO_LARGE', [0, 0], 'the file is over 1 MiB')];
  }
  const bad = unprintable.exec(text);
  if (bad !== null) {
    const point = text.charCodeAt(bad.index).toString(16).toUpperCase().padStart(4, '0');
    const message = `a character that cannot be printed: U+${point}`;
    return [
      {
        ...refuse('YAML_SYNTAX', [bad.index, bad.index + 1], message),
        hint: 'Delete it; save the file as UTF-8 text.',
      },
    ];
  }
  if (text.split('\n').length > limits.lines)
    return [refuse('YAML_TOO_LARGE', [0, 0], 'the file has far too many lines')];
  return scanTokens(text);
}

interface Walk {
  offset: number;
  lineStart: number;
  flow: number;
  tokens: number;
}

function scanTokens(text: string): Refusal[] {
  const refusals: Refusal[] = [];
  const walk: Walk = { offset: 0, lineStart: 0, flow: 0, tokens: 0 };
  let before = '';
  for (const token of new Lexer().lex(text)) {
    // The lexer gave up on brackets that the indentation closed.
    if (token === CST.FLOW_END) walk.flow = 0;
    const isMark = lexerMarks.includes(token);
    const type = before === CST.SCALAR ? 'scalar' : CST.tokenType(token);
    before = token;
    if (isMark) continue;
    const refusal = judgeToken(token, type, walk);
    if (refusal !== undefined) refusals.push(refusal);
    if (refusals.at(-1)?.fatal === true || refusals.length > limits.refusals) break;
    advance(walk, token);
  }
  return refusals.length > limits.refusals ? refusals.map((one) => ({ ...one, fatal: true })) : refusals;
}

/** Emitted between the pieces of the text, without being part of it. */
const lexerMarks: readonly string[] = [CST.DOCUMENT, CST.FLOW_END, CST.SCALAR];

function advance(walk: Walk, token: string): void {
  const lastBreak = token.lastIndexOf('\n');
  if (lastBreak !== -1) walk.lineStart = walk.offset + lastBreak + 1;
  walk.offset += token.length;
  walk.tokens += 1;
}

function judgeToken(token: string, type: string | null, walk: Walk): Refusal | undefined {
  const at: Range = [walk.offset, walk.offset + token.length];
  if (walk.tokens >= limits.tokens) {
    return refuse('YAML_TOO_LARGE', at, 'the file has far more entries than a case or a clinic profile');
  }
  if (type === null) return undefined;
  if (isOpenQuote(token, type)) return { ...openQuote, start: at[0], end: at[0] + 1 };
  const refused = leftOut[type];
  return refused === undefined
    ? judgeNesting(type, at, walk)
    : { ...refused, start: at[0], end: at[1], fatal: false };
}

function judgeNesting(type: string, at: Range, walk: Walk): Refusal | undefined {
  walk.flow = Math.max(0, walk.flow + (nesting[type] ?? 0));
  if (walk.flow > limits.depth) {
    return refuse('YAML_TOO_DEEP', at, `brackets are nested over ${limits.depth} deep`);
  }
  if (!indicators.includes(type) || walk.flow > 0 || walk.offset - walk.lineStart < limits.column)
    return undefined;
  return refuse('YAML_TOO_DEEP', at, `an entry starts over ${limits.column} columns in`);
}

const openQuote = {
  code: 'YAML_SYNTAX',
  message: 'this quote is opened and never closed',
  hint: 'Close it at the end of the value, on the same line.',
  fatal: false,
} as const;

function isOpenQuote(token: string, type: string): boolean {
  const mark = type === 'double-quoted-scalar' ? '"' : "'";
  return /-quoted-scalar$/.test(type) && (token.length < 2 || !token.endsWith(mark));
}

type Range = readonly [start: number, end: number];

const indicators: readonly string[] = ['seq-item-ind', 'explicit-key-ind', 'map-value-ind'];

const nesting: Readonly<Record<string, number>> = {
  'flow-map-start': 1,
  'flow-seq-start': 1,
  'flow-map-end': -1,
  'flow-seq-end': -1,
};

const leftOut: Readonly<Record<string, Pick<Refusal, 'code' | 'message' | 'hint'>>> = {
  alias: {
    code: 'YAML_ALIAS_REFUSED',
    message: 'an alias (*) is used',
    hint: 'Write the value out; put words that start with * in quotes.',
  },
  anchor: {
    code: 'YAML_ALIAS_REFUSED',
    message: 'an anchor (&) is used',
    hint: 'Remove it; put words that start with & in quotes.',
  },
  tag: {
    code: 'YAML_TAG_REFUSED',
    message: 'a tag (!) is used',
    hint: 'Remove it; put words that start with ! in quotes.',
  },
  'directive-line': {
    code: 'YAML_TAG_REFUSED',
    message: 'a directive (%) is used',
    hint: 'Remove the line.',
  },
};

function refuse(code: DiagnosticCode, [start, end]: Range, message: string): Refusal {
  const hint = 'Check that this is a case or a clinic profile, and what was pasted into it.';
  return { code, start, end, message, hint, fatal: true };
}
