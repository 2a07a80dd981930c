import { describe, expect, it } from 'vitest';

import type { Block } from '../../../src/model/document.ts';
import { findUnexplained } from '../../../src/model/explained-terms.ts';
import { para } from '../../helpers/sample-documents.ts';
import { smallTree } from '../../helpers/small-tree.ts';

const reflux = { id: 'reflux', words: ['reflux'], explained: ['acid that rises'] };
const leak = { id: 'leak', words: ['leak', 'leaks'], explained: ['gets out'] };

function unexplained(...blocks: readonly Block[]): readonly string[] {
  return findUnexplained(smallTree(blocks), [reflux, leak]).map(
    ({ term, piece }) => `${term.id}: ${piece.text}`,
  );
}

function topic(question: string, ...texts: readonly string[]): Block {
  return {
    type: 'topic',
    question,
    intro: [],
    blocks: texts.map((text) => para(text)),
    origin: 'here.hbs:1',
  };
}

describe('a medical word in a document', () => {
  it('is explained in the paragraph that uses it, before it or after it', () => {
    expect(unexplained(para('You have reflux (acid that rises).'))).toEqual([]);
    expect(unexplained(para('Acid that rises is called reflux.'))).toEqual([]);
  });

  it('is explained by an earlier paragraph, not by a later one', () => {
    const said = para('Acid that rises is a nuisance.');
    const used = para('Reflux can come back.');
    expect(unexplained(said, used)).toEqual([]);
    expect(unexplained(used, said)).toEqual(['reflux: Reflux can come back.']);
  });

  it('in a title is explained by the words right under it, up to the next title', () => {
    expect(unexplained(topic('What about reflux?', 'It is common.', 'It is acid that rises.'))).toEqual([]);
    const late = [topic('What about reflux?', 'Ask us.'), topic('And now?', 'It is acid that rises.')];
    expect(unexplained(...late)).toEqual(['reflux: What about reflux?']);
    expect(unexplained(topic('What about reflux?'))).toEqual(['reflux: What about reflux?']);
  });

  it('is found in every form, whatever its capitals, and each term once', () => {
    expect(unexplained(para('Leaks happen.'), para('A leak is serious.'))).toEqual(['leak: Leaks happen.']);
  });

  it('is not found inside another word', () => {
    expect(unexplained(para('It looks bleak, with leakage.'))).toEqual([]);
  });

  it('is not asked of the name of a publication', () => {
    expect(unexplained(para('Doe J. Reflux after a sleeve. doi.org/10.1000/xyz'))).toEqual([]);
    expect(unexplained(para('Advice on reflux: health.example.uk/reflux'))).toEqual([]);
  });

  it('is explained across a line break and a space that does not break', () => {
    expect(unexplained(para('Acid\u00a0that\nrises: reflux.'))).toEqual([]);
  });
});
