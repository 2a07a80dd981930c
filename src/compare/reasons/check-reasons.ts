import type { Case, Reason } from '../../model/case.ts';
import type { OptionKind, Subject } from '../subject.ts';
import type {
  FindingOf,
  ReasonCheck,
  ReasonCode,
  ReasonFinding,
  ReasonVerdict,
} from '../../model/reason-check.ts';
import type { LookOf, ReasonLook, ReasonRule } from '../../model/reason-rules.ts';
import { lookCautions, lookFewerCautions } from './look-at-cautions.ts';
import { lookCompare, lookRecover } from './look-at-figures.ts';
import { meaningOf } from './reason-desk.ts';
import type { AskedOption, ReasonDesk } from './reason-desk.ts';

/** What the surgeon says of one option. */
interface Stance {
  readonly stance: 'for' | 'against';
  readonly option: string;
  readonly reasons: readonly Reason[];
}

/**
 * Each coded reason of the surgeon, checked against the case and the evidence; reasons in free words cannot be. Which
 * check a code needs is data (reasons.yaml).
 */
export function checkReasons(room: ReasonDesk): readonly ReasonCheck[] {
  return stancesOf(room.given).flatMap((said) => {
    const asked = room.options.find(({ desk }) => desk.code === said.option);
    if (asked === undefined) return [];
    const codes = said.reasons.flatMap((reason) => ('code' in reason ? [reason.code] : []));
    return [...new Set(codes)].map((code) => checkOne(code, said, { asked, room }));
  });
}

function stancesOf({ decision }: Case): readonly Stance[] {
  const { leaning, advised_against: against } = decision;
  return [
    ...(leaning === null ? [] : [{ stance: 'for' as const, ...leaning }]),
    ...against.map((entry) => ({ stance: 'against' as const, ...entry })),
  ];
}

interface Setting {
  readonly asked: AskedOption;
  readonly room: ReasonDesk;
}

function checkOne(code: ReasonCode, { stance, option }: Stance, setting: Setting): ReasonCheck {
  const findings = findFor(code, setting);
  return {
    id: `${stance}/${option}/${code}`,
    stance,
    option,
    code,
    verdict: judge(findings),
    findings,
    records: [...new Set(findings.flatMap(recordsOf))].sort((a, b) => (a < b ? -1 : 1)),
  };
}

/** Nothing for what no rule of the evidence speaks of, such as a wish that amounts to no reason. */
function findFor(code: ReasonCode | undefined, setting: Setting): readonly ReasonFinding[] {
  const rule = setting.room.evidence.reasons.find((one) => one.code === code);
  if (rule === undefined) return [];
  const absent = findAbsent(rule.needs, setting.room.given, setting.asked.desk.subject);
  if (absent !== undefined) return [{ find: 'not-in-case', means: 'contradicts', needs: absent }];
  if (rule.looks.length === 0) return [{ find: 'in-case', means: 'supports' }];
  return rule.looks.map((look) => lookAt(look, setting));
}

type Absent = FindingOf<'not-in-case'>['needs'];

/** What the reason is about and the case does not say. */
function findAbsent(needs: ReasonRule['needs'], given: Case, subject: Subject): Absent | undefined {
  const { health, decision } = given;
  const { condition, medicine } = needs;
  const absent: Readonly<Record<Absent, boolean>> = {
    condition:
      condition?.every((code) => !subject.conditions.has(code)) ??
      (needs.any_condition === true && subject.conditions.size === 0),
    medicine: medicine?.every((code) => !health.medicines.includes(code)) ?? false,
    'earlier-operation': needs.earlier_operation === true && health.earlier_operations.length === 0,
    wish: needs.wish === true && decision.matters_most.length === 0,
  };
  return (Object.keys(absent) as Absent[]).find((what) => absent[what]);
}

function lookAt(look: ReasonLook, setting: Setting): ReasonFinding {
  const { asked, room } = setting;
  switch (look.look) {
    case 'compare':
      return lookCompare(look, asked, room);
    case 'recover':
      return lookRecover(look, asked, room);
    case 'cautions':
      return lookCautions(look, asked, room);
    case 'fewer-cautions':
      return lookFewerCautions(look, asked, room);
    case 'undo':
      return lookUndo(look, asked);
    case 'under-study':
      return lookUnderStudy(look, asked);
    case 'wishes':
      return lookWishes(look, setting);
  }
}

function lookUndo(look: LookOf<'undo'>, { column }: AskedOption): ReasonFinding {
  const { possible } = column.reversibility;
  const answer = possible === 'yes' || possible === 'no' ? possible : undefined;
  return { find: 'undo', means: meaningOf(look, answer), possible };
}

function lookUnderStudy(look: LookOf<'under-study'>, { column }: AskedOption): ReasonFinding {
  const { maturity, entries } = column.standing;
  const answer = maturity === 'under-study' ? 'yes' : maturity === 'established' ? 'no' : undefined;
  return { find: 'under-study', means: meaningOf(look, answer), maturity, entries };
}

/** Each coded wish is judged by the reason it amounts to, or met by a kind of option; the rest nobody can check. */
function lookWishes(look: LookOf<'wishes'>, setting: Setting): ReasonFinding {
  const wishes = setting.room.given.decision.matters_most;
  const coded = wishes.flatMap((wish) => ('code' in wish ? [wish.code] : []));
  const judged = coded.map((wish) => {
    const kinds: readonly OptionKind[] | undefined = look.kinds[wish];
    if (kinds !== undefined)
      return { wish, verdict: kinds.includes(setting.asked.desk.kind) ? 'supported' : 'contradicted' };
    return { wish, verdict: judge(findFor(look.reasons[wish], setting)) };
  });
  const having = (verdict: ReasonVerdict): FindingOf<'wishes'>['met'] =>
    judged.filter((one) => one.verdict === verdict).map(({ wish }) => wish);
  const [met, unmet, open] = [having('supported'), having('contradicted'), having('cannot-tell')];
  const answer = unmet.length > 0 ? 'no' : met.length > 0 && open.length === 0 ? 'yes' : undefined;
  return {
    find: 'wishes',
    means: meaningOf(look, answer),
    met,
    unmet,
    open,
    ownWords: wishes.length - coded.length,
  };
}

/** Something speaks for it and nothing against it, or the other way round; else nobody can tell. */
function judge(findings: readonly ReasonFinding[]): ReasonVerdict {
  const supports = findings.some(({ means }) => means === 'supports');
  const contradicts = findings.some(({ means }) => means === 'contradicts');
  if (supports === contradicts) return 'cannot-tell';
  return supports ? 'supported' : 'contradicted';
}

function recordsOf(finding: ReasonFinding): readonly string[] {
  switch (finding.find) {
    case 'compare':
      return finding.pairs.flatMap((pair) => (pair.result === 'unknown' ? [] : pair.records));
    case 'recover':
      return [
        ...(finding.own === null ? [] : [finding.own.record]),
        ...(finding.untreated === null ? [] : finding.untreated.records),
      ];
    default:
      return [];
  }
}
