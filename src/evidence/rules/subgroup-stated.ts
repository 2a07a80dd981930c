import type { EvidenceRecord, People } from '../../model/evidence-record.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** What the end of an id promises about the people, and how `people` must say it: matching reads only `people`. */
const subgroups: readonly {
  readonly named: RegExp;
  readonly stated: (people: People) => boolean;
  readonly how: string;
}[] = [
  { named: /^women(-|$)/, stated: (people) => people.female_percent === 100, how: 'female_percent: 100' },
  { named: /^men(-|$)/, stated: (people) => people.female_percent === 0, how: 'female_percent: 0' },
  {
    named: /^(.+-)?bmi-?(over-|under-)?\d/,
    stated: ({ bmi }) => bmi?.low !== undefined || bmi?.high !== undefined,
    how: 'bmi with low or high',
  },
  { named: /^diabetes$/, stated: (people) => people.diabetes === 'all', how: 'diabetes: all' },
  {
    named: /^same-day$/,
    stated: (people) => people.group === 'same-day-discharge',
    how: 'group: same-day-discharge',
  },
];

export const subgroupStated: EvidenceRule = {
  name: 'subgroup-stated',
  description: 'a record whose id names a part of the people states that part in its people',
  check: (evidence) =>
    evidence.records.flatMap((record) => {
      const ends = endsOf(record);
      return subgroups
        .filter(({ named, stated }) => ends.some((end) => named.test(end)) && !stated(record.people))
        .map(({ how }) =>
          faultIn(evidence, record, {
            code: 'EVIDENCE_NO_PEOPLE',
            message: `the id names a part of the people that people does not state (${how})`,
            hint: 'State it in people, or rename the record.',
            at: ['id'],
          }),
        );
    }),
};

/** What tells a record apart from others of its study; whom a contrast compares with says nothing of its people. */
function endsOf({ id, study }: EvidenceRecord): readonly string[] {
  const [, rest = ''] = id.split(`.${study}`);
  return rest.split('.').filter((end) => end !== '' && !end.startsWith('vs-'));
}
