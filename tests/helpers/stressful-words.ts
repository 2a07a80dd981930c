import fc from 'fast-check';

/** Invented words of every length that a clinic writes, among them the longest that are ordinary in a clinic. */
const words = {
  en: [
    'a',
    'we',
    'you',
    'the',
    'your',
    'care',
    'food',
    'pain',
    'stomach',
    'operation',
    'medicine',
    'appointment',
    'physiotherapist',
    'gastroenterologist',
    'ultrasonography',
    'electrocardiogram',
    'Ultraschalluntersuchung',
    'oesophagogastroduodenoscopy',
  ],
  es: [
    'a',
    'su',
    'la',
    'que',
    'para',
    'dolor',
    'comida',
    'estómago',
    'operación',
    'medicina',
    'tratamiento',
    'fisioterapeuta',
    'gastroenterólogo',
    'electrocardiograma',
    'Ultraschalluntersuchung',
    'otorrinolaringólogo',
    'esofagogastroduodenoscopia',
  ],
} as const;

/** Words of one language, cut before the character over the limit; at least one word. */
function wordsIn(language: keyof typeof words, most: number): fc.Arbitrary<string> {
  const length = fc.oneof(fc.constant(1), fc.integer({ min: 2, max: 12 }), fc.constant(60));
  return length
    .chain((count) =>
      fc.array(fc.constantFrom(...words[language]), { minLength: count, maxLength: count, size: 'max' }),
    )
    .map((list) => {
      const kept = list.reduce<string>((text, word) => {
        const longer = text === '' ? word : `${text} ${word}`;
        return longer.length < most ? longer : text;
      }, '');
      return `${kept.charAt(0).toUpperCase()}${kept.slice(1)}`;
    });
}

/** Free words as a clinic writes them, per language, up to the most that the format takes. */
export function localText(most = 300): fc.Arbitrary<Readonly<Record<'en' | 'es', string>>> {
  return fc.record({ en: wordsIn('en', most), es: wordsIn('es', most) });
}

const nameParts = [
  'Li',
  'Ana',
  'Wu',
  'Odile',
  'Maximiliana',
  'Bartholomew',
  'Featherstonehaugh',
  'Wollstonecraft-Marchetti',
  'de la Fuente',
  'Villaseñor',
  'Katzenellenbogen',
  'Papadimitrakopoulou',
] as const;

/** An invented name, short or as long as the format takes. */
export function nameOf(most: number): fc.Arbitrary<string> {
  return fc
    .array(fc.constantFrom(...nameParts), { minLength: 1, maxLength: 8 })
    .map((parts) => parts.reduce<string>((name, part) => join(name, part, most), ''));
}

function join(name: string, part: string, most: number): string {
  const longer = `${name} ${part}`.trim();
  return longer.length <= most ? longer : name;
}
