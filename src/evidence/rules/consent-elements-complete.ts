import type { ConsentElement } from '../../model/consent-element.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import type { DataPath } from '../parse-data-file.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

interface Found {
  readonly message: string;
  readonly at: DataPath;
}

export const consentElementsComplete: EvidenceRule = {
  name: 'consent-elements-complete',
  description:
    'what a consent must hold stands once, says where the pages meet it, and who asks for it was read where it says',
  check: (evidence) =>
    evidence.consentElements.flatMap((element, index) =>
      [
        ...twice(element, evidence.consentElements.slice(0, index)),
        ...wrongPlace(element),
        ...wrongSources(element),
      ].map((found) => faultOf(evidence, element, found)),
    ),
};

function faultOf(evidence: EvidenceSet, entry: object, { message, at }: Found) {
  const hint = 'Correct the entry in consent-elements.yaml.';
  return faultIn(evidence, entry, { code: 'EVIDENCE_INVALID', message, hint, at });
}

function twice({ id }: ConsentElement, before: readonly ConsentElement[]): readonly Found[] {
  return before.some((other) => other.id === id) ? [{ message: `${id} stands twice`, at: ['id'] }] : [];
}

function wrongPlace({ id, by, where }: ConsentElement): readonly Found[] {
  if (by === 'pages' && where === undefined)
    return [{ message: `the pages meet ${id}, and nothing says where`, at: ['by'] }];
  if (by === 'study' && where !== undefined)
    return [
      { message: `${id} stands on the study's own form, and a place on these pages is named`, at: ['where'] },
    ];
  return [];
}

function wrongSources({ id, sources }: ConsentElement): readonly Found[] {
  return sources.flatMap(({ document, seen, seen_at: places }, index) => {
    const at = ['sources', index, 'seen'];
    if ((seen === 'own') !== (document === 'own-rule'))
      return [{ message: `${id}: only our own rule is nobody else's`, at }];
    if ((seen === 'page' || seen === 'page-2nd') === (places !== undefined)) return [];
    const message =
      places === undefined
        ? `${id} was read on a page, and nothing says on which`
        : `${id} names a page on which it was not read`;
    return [{ message, at }];
  });
}
