import { isCopy } from '../../model/copy-sites.ts';
import { isPrintable } from '../../model/evidence.ts';
import type { PointSource } from '../../model/evidence-rules.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** Everything that claims to have been read at its source names the page. */
export const placeWhereSeen: EvidenceRule = {
  name: 'place-where-seen',
  description: 'what was read on a page says on which page, and of a copy what it is a copy of',
  check: (evidence) => {
    const located = new Set(
      evidence.studies.filter((study) => study.seen_at !== undefined).map((study) => study.id),
    );
    const entries = [
      ...evidence.records.map((entry) => ({
        entry,
        found: entry.seen_at !== undefined || located.has(entry.study),
      })),
      ...evidence.definitions.map((entry) => ({
        entry,
        found: entry.seen_at !== undefined || located.has(entry.study),
      })),
      ...evidence.riskFactors.map((entry) => ({ entry, found: located.has(entry.study) })),
    ];
    const missing = entries
      .filter(({ entry, found }) => isPrintable(entry) && !found)
      .map(({ entry }) => noLocator(evidence, entry, ['study']));
    return [...missing, ...pointsWithoutPlace(evidence, located), ...copiesWithoutName(evidence)];
  },
};

function pointsWithoutPlace(evidence: EvidenceSet, located: ReadonlySet<string>) {
  const found = (point: PointSource): boolean =>
    point.url !== undefined || (point.study !== undefined && located.has(point.study));
  const inSources = [...evidence.cautions, ...evidence.reversibility].flatMap((entry) =>
    entry.sources.flatMap((point, index) =>
      isPrintable(point) && !found(point) ? [noLocator(evidence, entry, ['sources', index])] : [],
    ),
  );
  const inFigures = evidence.reversibility.flatMap((entry) =>
    entry.undo.data.flatMap((figure, index) =>
      isPrintable(figure) && !located.has(figure.study)
        ? [noLocator(evidence, entry, ['undo', 'data', index])]
        : [],
    ),
  );
  return [...inSources, ...inFigures];
}

/** Nobody is sent to a copy, so its name is all that a reader has to find the text by. */
function copiesWithoutName(evidence: EvidenceSet) {
  return [...evidence.cautions, ...evidence.reversibility].flatMap((entry) =>
    entry.sources.flatMap((point, index) => {
      const { url, study, text } = point;
      const isNamed = url === undefined || study !== undefined || text !== undefined;
      if (isNamed || !isPrintable(point) || !isCopy(url, evidence.copySites)) return [];
      const at = ['sources', index, 'url'];
      const message = 'this was read in a copy, and nothing says what the text is';
      const hint = 'Add its study, or say in text what it is.';
      return [faultIn(evidence, entry, { code: 'EVIDENCE_NO_LOCATOR', message, hint, at })];
    }),
  );
}

function noLocator(evidence: EvidenceSet, entry: object, at: readonly (string | number)[]) {
  return faultIn(evidence, entry, {
    code: 'EVIDENCE_NO_LOCATOR',
    message: 'this was read on a page, but no address says where',
    hint: 'Add seen_at to the study, or to this entry.',
    at,
  });
}
