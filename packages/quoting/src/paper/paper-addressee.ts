/** Lines that the window of the envelope has room for. */
const MOST_LINES = 6;

/** Name and address for the window; what it has no room for goes on in the last line. */
export function paperAddressee(client: {
  readonly name: string;
  readonly addressLines: readonly string[];
}): string[] {
  const lines = [client.name, ...client.addressLines]
    .map((line) => line.trim())
    .filter((line) => line !== '');
  if (lines.length <= MOST_LINES) return lines;
  return [...lines.slice(0, MOST_LINES - 1), lines.slice(MOST_LINES - 1).join(', ')];
}
