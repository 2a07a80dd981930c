import { describe, expect, it } from 'vitest';

import { viewQuestions } from '../../../../src/compose/view/view-questions.ts';
import type { Case } from '../../../../src/model/case.ts';
import { makeCase } from '../../../helpers/compare-inputs.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

async function askedBy(health: Partial<Case['health']>): Promise<string> {
  const { groups } = viewQuestions(await sceneFor('en', { case: makeCase({ health }) }));
  return groups.flatMap(({ items }) => items.map(({ words }) => words.markup)).join('\n');
}

describe('questions about one’s own health', () => {
  it('ask for a first look with a camera only where no finding says that there was one', async () => {
    const first = 'Do I need a look with a camera first?';
    expect(await askedBy({ conditions: ['reflux'] })).toContain(first);
    expect(await askedBy({ medicines: ['acid-medicine'] })).toContain(first);
    const seen = await askedBy({ conditions: ['reflux', 'oesophagitis'], medicines: ['acid-medicine'] });
    expect(seen).toContain('Do I need one more look with a camera first?');
    expect(seen).not.toContain(first);
  });

  it('call aspirin by its name, as it may be for the heart', async () => {
    const aspirin = await askedBy({ medicines: ['aspirin'] });
    expect(aspirin).toContain('I take aspirin.');
    expect(aspirin).not.toContain('pain medicines');
    const both = await askedBy({ medicines: ['aspirin', 'anti-inflammatory'] });
    expect(both).toContain('I take aspirin.');
    expect(both).toContain('Which of my pain medicines');
  });
});
