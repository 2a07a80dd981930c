/**
 * The value of a sum as one writes it on paper: numbers, + - * / ^ and brackets, with powers before points before
 * dashes. Throws on anything else, so that a slip of the pen is never taken for a number.
 */
export function workOut(sum: string): number {
  const marks = sum.match(/\d+(?:\.\d+)?|[-+*/^()]|\S/g) ?? [];
  let place = 0;
  const take = (...wanted: readonly string[]): string | undefined => {
    const mark = marks[place];
    if (mark === undefined || !wanted.includes(mark)) return undefined;
    place += 1;
    return mark;
  };

  function dashes(): number {
    let value = points();
    for (let mark = take('+', '-'); mark !== undefined; mark = take('+', '-'))
      value += mark === '+' ? points() : -points();
    return value;
  }

  function points(): number {
    let value = powers();
    for (let mark = take('*', '/'); mark !== undefined; mark = take('*', '/'))
      value = mark === '*' ? value * powers() : value / powers();
    return value;
  }

  function powers(): number {
    const value = single();
    return take('^') === undefined ? value : value ** single();
  }

  function single(): number {
    if (take('-') !== undefined) return -single();
    if (take('(') !== undefined) {
      const value = dashes();
      if (take(')') === undefined) throw new Error(`a bracket stays open in ${sum}`);
      return value;
    }
    const mark = marks[place] ?? '';
    if (!/^\d/.test(mark)) throw new Error(`"${mark}" is no number in ${sum}`);
    place += 1;
    return Number(mark);
  }

  const value = dashes();
  if (place < marks.length) throw new Error(`nothing to do with "${marks[place] ?? ''}" in ${sum}`);
  return value;
}

/** The numbers that stand in a sum. */
export function numbersIn(sum: string): readonly number[] {
  return (sum.match(/\d+(?:\.\d+)?/g) ?? []).map(Number);
}
