import { finding } from '../reading.ts';
import type { Rule } from '../reading.ts';

/** Every figure stands in its sentence, digit by digit. */
export const figuresPresent: Rule = ({ documents }) =>
  documents.flatMap(({ tree, lost }) =>
    lost.flatMap(({ text, page, missingFigures }) =>
      missingFigures.map((cell) =>
        finding('VERIFY_NUMBER_ABSENT', { tree, page, at: text.origin, detail: `cell ${cell}` }),
      ),
    ),
  );
