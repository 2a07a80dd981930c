import { documentsOf } from '../../model/case.ts';
import type { Case } from '../../model/case.ts';
import type { ClinicProfile } from '../../model/clinic.ts';
import { protocolOf } from '../../model/protocol-of.ts';
import type { Practice } from '../../model/protocol-of.ts';
import type { Finding } from '../finding.ts';

type Sign = Practice<'warnings'>['now'][number];

/** Medicines that can themselves bring the blood sugar down too far. */
const lowering: readonly string[] = ['insulin', 'sulfonylurea'];
const diabetes: readonly string[] = ['type-2-diabetes', 'uncontrolled-diabetes'];

/**
 * Low blood sugar that the profile leaves for the next visit, in a person who takes a medicine that can cause it. The
 * clinic decides: this is only a warning.
 */
export function checkLateSigns(asked: Case, { protocol }: ClinicProfile): Finding[] {
  const { chosen } = asked.decision;
  const isLowered = asked.health.medicines.some((code) => lowering.includes(code));
  const written = chosen === null ? undefined : protocolOf(protocol, 'warnings', chosen);
  if (!isLowered || written === undefined || !documentsOf(asked).includes('warning-signs')) return [];
  const { now, today, at_visit: late } = written.practice;
  const isMeant = (sign: Sign): boolean => isLowSugar(sign) && isForPerson(sign, asked);
  const index = late.findIndex(isMeant);
  if (index === -1 || [...now, ...today].some(isMeant)) return [];
  return [
    {
      code: 'CLINIC_SIGN_LATE',
      severity: 'warning',
      path: ['protocol', 'warnings', written.option, 'at_visit', index],
      message:
        'low blood sugar is left for the next visit, and this person takes a medicine that can cause it',
      hint: 'Write low-sugar under today or now, for all or for these people; or leave it, if the clinic has decided so.',
    },
  ];
}

function isLowSugar(sign: Sign): boolean {
  return 'code' in sign && sign.code === 'low-sugar';
}

/** A line for people with diabetes does not reach a person on insulin whose case does not name the illness. */
function isForPerson({ for: who }: Sign, { health }: Case): boolean {
  if (who === 'diabetes') return health.conditions.some((code) => diabetes.includes(code));
  return who === undefined;
}
