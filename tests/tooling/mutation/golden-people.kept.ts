/**
 * The golden people for the mutation run: each is compared again and described as in the golden test, without the
 * marks of what a page prints. That sees less than the golden test, so no mutant is called caught without cause.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { describeComparison } from '../../helpers/describe-comparison.ts';
import { openUnprinted, peopleFolder, slugs } from '../../helpers/golden-people.ts';

const withoutMarks = (text: string): string => text.replace(/«[^»]*» /g, '');

/** What a person's comparison reads, and what it should read. */
export async function readGolden(slug: string): Promise<{ read: string; golden: string }> {
  const { open } = await openUnprinted(slug);
  const read = describeComparison({ slug, open, printed: new Map() });
  const golden = readFileSync(join(peopleFolder, `${slug}.txt`), 'utf8');
  return { read: withoutMarks(read), golden: withoutMarks(golden) };
}

export { slugs };
