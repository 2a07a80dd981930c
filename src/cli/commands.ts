import type { Run } from './context.ts';

export interface OptionSpec {
  readonly name: string;
  /** What stands after it; a switch has none. */
  readonly value?: string;
  /** It may be given more than once. */
  readonly repeats?: true;
  readonly about: string;
}

export interface CommandSpec {
  readonly name: string;
  /** What stands after the name. */
  readonly arguments: string;
  /** Fewest and most arguments. */
  readonly count: readonly [number, number];
  readonly summary: string;
  readonly about: readonly string[];
  readonly options: readonly OptionSpec[];
  /** Loaded only when it is called, so that help comes at once. */
  readonly load: () => Promise<{ readonly run: Run }>;
}

const clinic: OptionSpec = {
  name: 'clinic',
  value: 'FILE',
  about: "clinic profile; else clinic.yaml in the case's folder or the two above",
};
const date: OptionSpec = {
  name: 'date',
  value: 'YYYY-MM-DD',
  about: 'day the packets are made for; else today',
};
const language: OptionSpec = { name: 'language', value: 'TAG', about: 'only this language, for example en' };
const out: OptionSpec = { name: 'out', value: 'DIR', about: 'folder for the packets; else out' };
const separate: OptionSpec = {
  name: 'separate',
  about: 'each document as a file of its own, named after its kind',
};
const html: OptionSpec = {
  name: 'html',
  about: 'an HTML page beside each PDF, for phones and screen readers',
};
const largePrint: OptionSpec = {
  name: 'large-print',
  about: 'in large print, also where the case does not ask for it',
};
const whatIf: OptionSpec = {
  name: 'what-if',
  value: 'CHANGE',
  repeats: true,
  about: 'show what this would change, for example "weight=140 kg"; may be given again',
};
const json: OptionSpec = { name: 'json', about: 'print JSON for machines' };
const many = Number.POSITIVE_INFINITY;

export const commands: readonly CommandSpec[] = [
  {
    name: 'make',
    arguments: 'CASE…',
    count: [1, many],
    summary: 'make the packets of one or more cases',
    about: [
      'Writes DIR/<case>/<language>/packet.pdf and packet.json, readable by you alone.',
      'With --separate a file of each for every document, for example warning-signs.pdf.',
      'With --html the same documents as one page beside it, packet.html, which needs nothing else to be read.',
      'With --large-print, or where the case says large_print: true, packet-large-print.pdf beside it.',
      'A packet that does not come back whole when it is read again is withheld; an older one stays as it was.',
    ],
    options: [clinic, out, date, language, largePrint, html, separate, json],
    load: async () => import('./commands/make.ts'),
  },
  {
    name: 'batch',
    arguments: 'FOLDER',
    count: [1, 1],
    summary: 'make the packets of every case in a folder',
    about: ['One that fails never stops the rest; the end says which were not made, and why.'],
    options: [clinic, out, date, language, largePrint, html, separate, json],
    load: async () => import('./commands/batch.ts'),
  },
  {
    name: 'check',
    arguments: 'FILE…',
    count: [1, many],
    summary: 'find everything that make would refuse, and write nothing',
    about: [
      'Files are cases or clinic profiles. The evidence and the words of all languages are checked too.',
    ],
    options: [clinic, date, json],
    load: async () => import('./commands/check.ts'),
  },
  {
    name: 'compare',
    arguments: 'CASE',
    count: [1, 1],
    summary: 'show the comparison of a case, with its records',
    about: [
      'A table for the clinician: every figure with its people, its certainty and the record it stands on.',
      'With --what-if only what would change: weight, height, age or born, sex, ancestry_threshold and smoking',
      'as weight="140 kg"; conditions, medicines, history and options as conditions=+reflux or options=-sleeve,',
      'or their codes alone: +reflux; pregnancy=12 (planned within 12 months), pregnancy=now or pregnancy=none;',
      'earlier_operations=none, sleeve, band:removed (reversed, converted), oldest first, or with signs: +sleeve;',
      'what is asked goes with them, or asked=after-removal says it. The case file stays as it is.',
    ],
    options: [clinic, date, whatIf, json],
    load: async () => import('./commands/compare.ts'),
  },
  {
    name: 'evidence',
    arguments: 'list | show ID | due | release | diff FOLDER | lint',
    count: [1, 2],
    summary: 'look at the published figures behind the packets',
    about: [
      'list     the records and the facts on aftercare, one a line; narrow it down with the options',
      'show     one of them with its study or source, where it was read, and by when to read it again',
      'due      what is to be read again and where, and what was never read at its source',
      'release  which state of the evidence this is, and what each release changed',
      'diff     what differs from the release in another folder',
      'lint     everything that is wrong with the data files, and words that they lack',
    ],
    options: [
      { name: 'option', value: 'CODE', about: 'records of this option, for example sleeve' },
      { name: 'outcome', value: 'CODE', about: 'records of this outcome, for example leak' },
      { name: 'topic', value: 'CODE', about: 'facts on aftercare of this topic, for example supplement' },
      { name: 'seen', value: 'HOW', about: 'page, page-2nd or memory: how the figure was read' },
      { name: 'by', value: 'YYYY-MM-DD', about: 'what is to be read again by this day; else by today' },
      { name: 'date', value: 'YYYY-MM-DD', about: 'day to take for today' },
      json,
    ],
    load: async () => import('./commands/evidence.ts'),
  },
  {
    name: 'languages',
    arguments: 'list | export TAG | import FILE | sign TAG',
    count: [1, 2],
    summary: 'who has reviewed the words of which language; files for translators',
    about: [
      'list    every language, who reviewed it, how much changed since, and how many texts of the clinic it',
      '        lacks; with --language which texts',
      'export  an XLIFF 2 file for a translator, to TAG.xlf or the file after --out',
      'import  the texts that a translator sent back; none is taken if one has lost a value or is outdated',
      'sign    write down beside the clinic profile what a reviewer has read, and print the entry for the profile',
    ],
    options: [
      {
        name: 'clinic',
        value: 'FILE',
        about: 'clinic profile whose ledger and own texts count; without it nothing is reviewed',
      },
      {
        name: 'language',
        value: 'TAG',
        about: 'list this language alone, with every text that changed or is lacking',
      },
      {
        name: 'documents',
        value: 'KINDS',
        about: 'words of these documents, for example comparison,questions; else all',
      },
      { name: 'changed', about: 'export only what nobody has read as it stands' },
      { name: 'out', value: 'FILE', about: 'write the XLIFF file there' },
      { name: 'name', value: 'NAME', about: 'who has read the words' },
      { name: 'role', value: 'ROLE', about: 'what this person does, for example translator' },
      {
        name: 'qualification',
        value: 'TEXT',
        about: 'why this person may judge a translation of medical words',
      },
      { name: 'date', value: 'YYYY-MM-DD', about: 'day of the review; else today' },
      json,
    ],
    load: async () => import('./commands/languages.ts'),
  },
  {
    name: 'schema',
    arguments: 'case | clinic',
    count: [1, 1],
    summary: 'print the JSON Schema of a file format, for editors',
    about: ['An editor that knows the schema completes and explains the keys while you write.'],
    options: [{ name: 'out', value: 'FILE', about: 'write it to this file; else it is printed' }],
    load: async () => import('./commands/schema.ts'),
  },
];
