import { expect, it } from 'vitest';

import { endsSentence, sentence } from '../../../../src/compose/view/words.ts';
import { sceneFor } from '../../../helpers/compose-scene.ts';

it.each([
  'Sip all day.',
  'Hurts it?',
  'Wait …',
  '<b>Chew it.</b>',
  'He said: “Stop.”',
  '每天吃。',
  'इसे चबाएँ।',
  'هل يؤلم؟',
])('%s ends as a sentence', async (said) => {
  expect(endsSentence(said)).toBe(true);
  const { words } = await sceneFor('en');
  expect(sentence(words, { markup: said }).markup).toBe(said);
});

it.each(['Sip all day', '<b>Chew it</b>', 'Under the tongue,', 'Take two:', 'each day (with food)'])(
  '%s does not, and gets its mark',
  async (said) => {
    expect(endsSentence(said)).toBe(false);
    const { words } = await sceneFor('en');
    expect(sentence(words, { markup: said }).markup).toBe(`${said}.`);
  },
);
