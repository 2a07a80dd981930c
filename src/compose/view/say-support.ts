import type { Markup } from '../../model/locale.ts';
import type {
  FindingOf,
  KnownPair,
  PairFinding,
  ReasonCheck,
  ReasonFinding,
} from '../../model/reason-check.ts';
import { knownCells } from './cells-shown.ts';
import type { Scene } from './scene.ts';
import { ownWords } from './view-matters.ts';
import { joined } from './words.ts';

/**
 * What a patient reads beside a reason that nothing found bears out, in one sentence. Null where it is borne out, and
 * where no number could: what fits a wish is the surgeon's to judge. It speaks of numbers only where a reader can look
 * them up on the pages.
 */
export function sayUnsupported(scene: Scene, check: ReasonCheck): Markup | null {
  switch (check.verdict) {
    case 'supported':
      return null;
    case 'contradicted':
      return sayContradicted(scene, check.findings);
    case 'cannot-tell':
      return sayOpen(scene, check);
  }
}

function sayContradicted(scene: Scene, findings: readonly ReasonFinding[]): Markup {
  const finding = findings.find(({ means }) => means === 'contradicts');
  switch (finding?.find) {
    case 'not-in-case':
      return say(scene, 'not_told');
    case 'recover':
      return say(scene, isRecoveryPrinted(scene, finding) ? 'opposite' : 'otherwise');
    case 'compare': {
      const others = otherOptions(scene, finding, 'no');
      if (others.length === 0) return say(scene, 'otherwise');
      return others.length === finding.pairs.length
        ? say(scene, 'opposite')
        : sayComparedWith(scene, 'opposite_of', others);
    }
    case 'wishes': {
      const list = joined(...finding.unmet.map((code) => ownWords(scene, { code })));
      return say(scene, 'wishes', { list });
    }
    default:
      return say(scene, 'otherwise');
  }
}

function sayOpen(scene: Scene, { code, findings }: ReasonCheck): Markup | null {
  if (findings.some(({ means }) => means === 'supports')) return say(scene, 'mixed');
  if (findings.some((finding) => finding.find === 'undo' && finding.possible === 'partly'))
    return say(scene, 'partly');
  const rule = scene.evidence.reasons.find((one) => one.code === code);
  if (rule?.by_number !== true) return null;
  const compared = findings.find((finding) => finding.find === 'compare');
  const shownBeside = compared === undefined ? [] : otherOptions(scene, compared, 'yes');
  if (shownBeside.length > 0) return sayComparedWith(scene, 'only', shownBeside);
  return say(scene, findings.some(hasNumber) ? 'unclear' : 'no_number');
}

/** Whether a figure was found, though it does not decide. */
function hasNumber(finding: ReasonFinding): boolean {
  if (finding.find === 'recover') return finding.own !== null || finding.untreated !== null;
  return finding.find === 'compare' && finding.pairs.some(({ result }) => result !== 'unknown');
}

/** The options against which figures that the pages print say this. */
function otherOptions(
  scene: Scene,
  { pairs }: FindingOf<'compare'>,
  result: 'yes' | 'no',
): readonly string[] {
  return pairs.filter((pair) => pair.result === result && isPrinted(scene, pair)).map(({ other }) => other);
}

/** A reader finds both figures on the pages, or that the one outcome cannot happen; contrasts stand on none. */
function isPrinted(scene: Scene, pair: PairFinding): boolean {
  if (pair.result === 'unknown' || pair.basis === 'contrast') return false;
  return areShown(scene, pair);
}

function areShown(
  { comparison }: Scene,
  { outcome, records }: Pick<KnownPair, 'outcome' | 'records'>,
): boolean {
  const shown = knownCells(comparison)
    .filter(({ cell }) => cell.outcome === outcome)
    .map(({ cell }) => cell.lead.record);
  return records.every((record) => shown.includes(record));
}

function isRecoveryPrinted(scene: Scene, { outcome, own, untreated }: FindingOf<'recover'>): boolean {
  if (untreated !== null) return isPrinted(scene, untreated);
  return own !== null && areShown(scene, { outcome, records: [own.record] });
}

function sayComparedWith(scene: Scene, key: 'only' | 'opposite_of', options: readonly string[]): Markup {
  const names = options.map((code) => scene.words.plain(`options.${code}.in_text`));
  return say(scene, key, { others: scene.format.list(names, 'and') });
}

function say(
  { words }: Scene,
  key: string,
  variables: Readonly<Record<string, string | Markup>> = {},
): Markup {
  return words.say(`codes.reason_support.${key}`, variables);
}
