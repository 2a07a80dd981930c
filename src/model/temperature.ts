/** A body temperature as the clinic wrote it, with its value in degrees Celsius. */
export interface Temperature {
  readonly celsius: number;
  readonly written: 'C' | 'F';
}

/** Temperatures outside these bounds (degrees Celsius) are taken for a slip of the pen. */
export const temperatureBounds = { low: 37, high: 41 } as const;

const temperatureForm = /^(\d{2,3}(?:\.\d)?) (C|F)$/;

/** A temperature in the written form, however hot; undefined in another form. */
export function readTemperatureForm(text: string): Temperature | undefined {
  const match = temperatureForm.exec(text);
  if (match === null) return undefined;
  const value = Number(match[1]);
  return match[2] === 'F' ? { celsius: (value - 32) / 1.8, written: 'F' } : { celsius: value, written: 'C' };
}

/** A temperature in the written form and within bounds. */
export function parseTemperature(text: string): Temperature | undefined {
  const read = readTemperatureForm(text);
  return read !== undefined && read.celsius >= temperatureBounds.low && read.celsius <= temperatureBounds.high
    ? read
    : undefined;
}
