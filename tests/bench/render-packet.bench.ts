import { bench, describe } from 'vitest';
import { renderPdf } from '../../src/render/index.ts';
import { comparisonTree } from '../helpers/sample-documents.ts';

const packet = {
  caseReference: 'X-1',
  language: 'en',
  title: 'Choices',
  author: 'Clinic',
  documents: [comparisonTree],
};
const options = { createdOn: '2026-11-25', producer: 'plainleaf bench', attachments: [] };

describe('render', () => {
  bench('five choices, all topics, letter', async () => {
    const result = await renderPdf(packet, options);
    if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  });
});
