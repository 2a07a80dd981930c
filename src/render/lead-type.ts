import type { TypeRole, TypeScale } from './edition.ts';

/** Least distance of baselines as a multiple of the type size. */
interface Leading {
  readonly text: number;
  readonly headings: number;
}

/**
 * By script (ISO 15924) or language, where it needs more than Latin elsewhere: marks above and below, or letters that fill
 * their square.
 */
const leadings: Readonly<Partial<Record<string, Leading>>> = {
  Arab: { text: 1.62, headings: 1.45 },
  Deva: { text: 1.55, headings: 1.4 },
  Hans: { text: 1.55, headings: 1.35 },
  Kore: { text: 1.5, headings: 1.35 },
  // Two marks over one letter, and a dot under another.
  vi: { text: 1.45, headings: 1.3 },
};

const isHeading = ({ size, weight }: TypeRole): boolean => weight === 700 && size >= 15;

/** A type scale with the distances of lines that the script of a language needs; sizes stay as they are. */
export function leadType(type: TypeScale, language: string): TypeScale {
  const locale = new Intl.Locale(language).maximize();
  const leading = leadings[locale.language] ?? leadings[locale.script ?? ''];
  if (leading === undefined) return type;
  const led = Object.entries(type).map(([name, role]) => {
    const least = role.size * (isHeading(role) ? leading.headings : leading.text);
    return [name, { ...role, lineHeight: Math.max(role.lineHeight, Math.round(2 * least) / 2) }];
  });
  return Object.fromEntries(led) as TypeScale;
}
