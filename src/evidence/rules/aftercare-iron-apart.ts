import type { AftercareFact } from '../../model/aftercare.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

const salt = /ferrous|ferric|sulfate|sulphate|fumarate|gluconate/i;

/**
 * 200 mg of ferrous sulfate is about 65 mg of iron. Amounts of iron and of its salts are never added or compared, and of
 * several salts one is taken.
 */
export const aftercareIronApart: EvidenceRule = {
  name: 'aftercare-iron-apart',
  description:
    'an amount of iron is elemental or the weight of one salt, and salts are marked as alternatives',
  check: (evidence) =>
    evidence.aftercare.flatMap((fact) => {
      const message = faultOf(fact);
      if (message === undefined) return [];
      const hint = 'Write the salt as its own subject, with one_of: iron-salt.';
      return [faultIn(evidence, fact, { code: 'EVIDENCE_UNIT', message, hint, at: ['subject'] })];
    }),
};

function faultOf({ id, subject, value, one_of: oneOf }: AftercareFact): string | undefined {
  const isSalt = subject.startsWith('iron-as-');
  if (isSalt !== (oneOf === 'iron-salt')) {
    return isSalt
      ? 'a salt of iron is not marked as one of several'
      : 'it is among the salts of iron, and is none';
  }
  if (isSalt)
    return id.includes(subject.replace('iron-as-', '')) ? undefined : 'its id names another salt of iron';
  if (subject !== 'iron') return undefined;
  const words = typeof value === 'string' ? value : '';
  return salt.test(`${id} ${words}`)
    ? 'it is about a salt of iron, yet counted as elemental iron'
    : undefined;
}
