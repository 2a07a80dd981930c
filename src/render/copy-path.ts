const number = '-?\\d+(?:\\.\\d+)?';
const point = `${number} ${number}`;

/** Moves and lines, curves and the end of a figure, absolute, every command written out: as plainleaf's pictures are. */
const absolutePath = new RegExp(`^M${point}(?:[ML]${point}|C${point} ${point} ${point}|Z)*$`);

/** The operators of ISO 32000-1, table 59. */
const operatorOf: Readonly<Record<string, string>> = { M: 'm', L: 'l', C: 'c', Z: 'h' };

/** Path data → PDF operators, copied and not parsed into numbers. Gives undefined for data of any other form. */
export function copyPath(data: string): string | undefined {
  if (!absolutePath.test(data)) return undefined;
  const write = (_: string, command: string, points: string) => `${points} ${operatorOf[command] ?? ''}\n`;
  return data.replace(/([MLCZ])([^MLCZ]*)/g, write).trim();
}
