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

/**
 * The separator that cuts the most lines into as many cells as the first: a decimal comma is not in the header,
 * so it does not count. A comma where nothing separates.
 */
export function detectSeparator(sample: string): Separator {
  const lines = countPerLine(sample);
  let best: Separator = ',';
  let bestScore = 0;
  for (const separator of SEPARATORS) {
    const wanted = lines[0]?.get(separator) ?? 0;
    const score = wanted * lines.filter((line) => line.get(separator) === wanted).length;
    if (score > bestScore) [best, bestScore] = [separator, score];
  }
  return best;
}
