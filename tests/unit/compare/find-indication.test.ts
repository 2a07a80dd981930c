import { describe, expect, it } from 'vitest';

import { findIndication } from '../../../src/compare/find-indication.ts';
import type { Subject } from '../../../src/compare/subject.ts';
import { makeSubject } from '../../helpers/compare-inputs.ts';

function after(operation: string, status = 'in-place', asked = 'second-operation'): Subject {
  return makeSubject({ health: { earlier_operations: [{ operation, status }] }, decision: { asked } });
}

const sleeve = { code: 'sleeve', kind: 'operation' } as const;
const bandRemoval = { code: 'band-removal', kind: 'operation' } as const;

describe('findIndication', () => {
  it('takes a first operation and endoscopic treatment for first operations', () => {
    expect(findIndication(makeSubject(), sleeve)).toBe('first-operation');
    expect(findIndication(makeSubject(), { code: 'balloon', kind: 'endoscopic' })).toBe('first-operation');
  });

  it.each([
    ['band', 'after-band'],
    ['sleeve', 'after-sleeve'],
    ['bypass', 'after-bypass'],
    ['plication', 'after-plication'],
    ['duodenal-switch', 'after-other'],
  ] as const)('takes an operation after a %s for %s', (operation, expected) => {
    expect(findIndication(after(operation), sleeve)).toBe(expected);
  });

  it('lets the last of several operations decide', () => {
    const earlier_operations = [
      { operation: 'band', status: 'converted' },
      { operation: 'bypass', status: 'in-place' },
    ];
    const subject = makeSubject({ health: { earlier_operations }, decision: { asked: 'second-operation' } });
    expect(findIndication(subject, sleeve)).toBe('after-bypass');
  });

  it('takes the removal of a band in place for band trouble, and of no band for nothing studied', () => {
    expect(findIndication(after('band'), bandRemoval)).toBe('band-trouble');
    expect(findIndication(after('sleeve'), bandRemoval)).toBe('after-sleeve');
  });

  it('keeps the earlier operation of people in whom it was removed', () => {
    expect(findIndication(after('band', 'removed', 'after-removal'), sleeve)).toBe('after-band');
  });

  it.each(['medicine', 'programme', 'none'] as const)(
    'has no indication for an option of kind %s',
    (kind) => {
      expect(findIndication(after('sleeve'), { code: 'any', kind })).toBe('none');
    },
  );
});
