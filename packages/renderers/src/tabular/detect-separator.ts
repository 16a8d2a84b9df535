import { SEPARATORS, type Separator } from './table.ts';

const SAMPLE_LINES = 60;

/** How often each separator stands outside quotes, line by line. */
function countPerLine(sample: string): ReadonlyMap<Separator, number>[] {
  const lines: Map<Separator, number>[] = [new Map()];
  let isQuoted = false;
  for (const letter of sample) {
    if (letter === '"') isQuoted = !isQuoted;
    else if (isQuoted) continue;
    else if (letter === '\n') lines.push(new Map());
    else {
      const separator = SEPARATORS.find((known) => known === letter);
      const line = lines.at(-1);
      if (separator && line) line.set(separator, (line.get(separator) ?? 0) + 1);
    }
    if (lines.length > SAMPLE_LINES) break;
  }
  return lines.filter((line) => line.size > 0);
}

/** How many lines it cuts into the same number of cells, taking the number that most lines share. */
function evenness(lines: readonly ReadonlyMap<Separator, number>[], separator: Separator) {
  const linesByCount = new Map<number, number>();
  for (const line of lines) {
    const count = line.get(separator) ?? 0;
    if (count > 0) linesByCount.set(count, (linesByCount.get(count) ?? 0) + 1);
  }
  const [most] = [...linesByCount].sort(([a, linesA], [b, linesB]) => linesB - linesA || b - a);
  return { separator, count: most?.[0] ?? 0, lines: most?.[1] ?? 0 };
}

/**
 * The separator that cuts the most lines evenly: a decimal comma or a comma in a text is not in the header, and a title
 * above the headers is one line only. Among equals the one that cuts into more cells; a comma last, since numbers have
 * it too. A comma where nothing separates.
 */
export function detectSeparator(sample: string): Separator {
  const lines = countPerLine(sample);
  const [best] = SEPARATORS.map((separator) => evenness(lines, separator))
    .filter(({ count }) => count > 0)
    .sort(
      (a, b) =>
        b.lines - a.lines || b.count - a.count || Number(a.separator === ',') - Number(b.separator === ','),
    );
  return best?.separator ?? ',';
}
