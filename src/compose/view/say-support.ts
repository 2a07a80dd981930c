import type { Markup } from '../../model/locale.ts';
import type { FindingOf, ReasonCheck, ReasonFinding } from '../../model/reason-check.ts';
import type { Scene } from './scene.ts';
import { ownWords } from './view-matters.ts';
import { joined } from './words.ts';

/**
 * What a patient reads beside a reason that nothing found bears out, in one sentence. Null where it is borne out, and
 * where no number could: what fits a wish or how many vitamins an option asks for is the surgeon's to judge.
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
      return say(scene, 'opposite');
    case 'compare': {
      const others = otherOptions(finding, 'no');
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
  const shownBeside = compared === undefined ? [] : otherOptions(compared, 'yes');
  if (shownBeside.length > 0) return sayComparedWith(scene, 'only', shownBeside);
  return say(scene, findings.some(hasNumber) ? 'unclear' : 'no_number');
}

/** Whether a figure was found, though it does not decide. */
function hasNumber(finding: ReasonFinding): boolean {
  if (finding.find === 'recover') return finding.own !== null || finding.untreated !== null;
  return finding.find === 'compare' && finding.pairs.some(({ result }) => result !== 'unknown');
}

function otherOptions({ pairs }: FindingOf<'compare'>, result: 'yes' | 'no'): readonly string[] {
  return pairs.filter((pair) => pair.result === result).map(({ other }) => other);
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
