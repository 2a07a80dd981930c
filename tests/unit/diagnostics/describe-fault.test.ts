import { describe, expect, it } from 'vitest';

import { describeFault } from '../../../src/diagnostics/describe-fault.ts';

describe('an error that nobody foresaw', () => {
  it('is told by its kind and place, never by its message, which may quote a case', () => {
    const error = new RangeError('Sibyl Quill, 131 kg');
    error.stack =
      'RangeError: Sibyl Quill, 131 kg\n    at weigh (/home/clinic/plainleaf/src/compare/weigh.ts:12:7)';
    expect(describeFault(error)).toEqual({
      code: 'INTERNAL',
      severity: 'error',
      message: 'plainleaf is at fault: RangeError at src/compare/weigh.ts:12',
    });
  });

  it('says what to do where a package was not installed', () => {
    const loaded = Object.assign(new Error('Cannot find package'), { code: 'ERR_MODULE_NOT_FOUND' });
    expect(describeFault(loaded)).toMatchObject({
      message: 'a package that plainleaf needs is not installed',
      hint: expect.stringContaining('npm ci') as string,
    });
  });
});
