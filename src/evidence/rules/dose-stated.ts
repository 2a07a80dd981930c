import type { EvidenceRecord } from '../../model/evidence-record.ts';
import type { EvidenceSet } from '../evidence-set.ts';
import { faultIn } from './rule.ts';
import type { EvidenceRule } from './rule.ts';

/** A figure of one dose beside or under a figure of another would speak of something that nobody took. */
export const doseStated: EvidenceRule = {
  name: 'dose-stated',
  description:
    'a figure of a medicine says how much people took or that its source does not, as its id does; others have no dose',
  check: (evidence) => {
    const medicines = listMedicines(evidence);
    return evidence.records.flatMap((record) =>
      faultsOf(record, medicines.has(record.option)).map(({ message, key }) => {
        const hint =
          'Write for example dose: { mg: [15], per: week }, or dose: unstated where the source does not say.';
        return faultIn(evidence, record, { code: 'EVIDENCE_INVALID', message, hint, at: [key] });
      }),
    );
  },
};

/** Medicines that a person may choose; several counted as one group have no dose of their own. */
function listMedicines({ options }: EvidenceSet): ReadonlySet<string> {
  return new Set(
    options.flatMap(({ kind, choosable, code }) => (kind === 'medicine' && choosable ? [code] : [])),
  );
}

interface Found {
  readonly message: string;
  readonly key: 'dose' | 'option' | 'id';
}

function faultsOf({ id, dose }: EvidenceRecord, isMedicine: boolean): readonly Found[] {
  if (!isMedicine) return dose === undefined ? [] : [{ message: 'only a medicine has a dose', key: 'dose' }];
  if (dose === undefined)
    return [{ message: 'nothing says how much of the medicine people took', key: 'option' }];
  const amounts = dose === 'unstated' ? [] : dose.mg;
  if (new Set(amounts).size < amounts.length) return [{ message: 'one amount stands twice', key: 'dose' }];
  return amountsNamed(id, amounts) ? [] : [{ message: 'the id names another dose', key: 'id' }];
}

/** An id that ends in a dose is of that one: `.10mg`, `.2-4mg`. */
function amountsNamed(id: string, amounts: readonly number[]): boolean {
  const named = /\.(\d+(?:-\d+)?)mg(\.|$)/.exec(id)?.[1];
  return named === undefined || amounts.join() === named.replace('-', '.');
}
