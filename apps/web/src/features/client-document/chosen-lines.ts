import { type ClientDocument, documentTotals, type StatedTotals, statedTotals } from '@scantling/quoting';

export type DocumentLine = ClientDocument['lines'][number];

/** What stands together in the offer: one line, or all lines of a group of which one is taken. */
export type LineBlock =
  | { readonly kind: 'line'; readonly line: DocumentLine }
  | { readonly kind: 'group'; readonly group: string; readonly lines: readonly DocumentLine[] };

/** The lines in their order, the ones of a group where the first of them stands. */
export function lineBlocks(lines: readonly DocumentLine[]): readonly LineBlock[] {
  const seen = new Set<string>();
  return lines.flatMap((line): LineBlock[] => {
    const { choice } = line;
    if (choice.kind !== 'alternate') return [{ kind: 'line', line }];
    if (seen.has(choice.group)) return [];
    seen.add(choice.group);
    const ofGroup = lines.filter(
      (one) => one.choice.kind === 'alternate' && one.choice.group === choice.group,
    );
    return [{ kind: 'group', group: choice.group, lines: ofGroup }];
  });
}

/** Whether a line counts with what is chosen. */
export function isTaken(
  document: Pick<ClientDocument, 'lines'>,
  chosen: readonly string[],
  line: DocumentLine,
): boolean {
  const { choice } = line;
  if (choice.kind === 'included') return true;
  if (choice.kind === 'option') return chosen.includes(line.id);
  const ofGroup = document.lines.filter(
    (one) => one.choice.kind === 'alternate' && one.choice.group === choice.group,
  );
  const picked = ofGroup.find(({ id }) => chosen.includes(id));
  return picked === undefined ? choice.isStandard : picked.id === line.id;
}

/** What is chosen after a line is wanted, or not wanted any more; of a group one stays. */
export function chosenWith(
  document: Pick<ClientDocument, 'lines'>,
  chosen: readonly string[],
  line: DocumentLine,
  isWanted: boolean,
): readonly string[] {
  const { choice } = line;
  if (choice.kind === 'included') return chosen;
  const rivals =
    choice.kind === 'option'
      ? [line.id]
      : document.lines
          .filter((one) => one.choice.kind === 'alternate' && one.choice.group === choice.group)
          .map(({ id }) => id);
  const others = chosen.filter((id) => !rivals.includes(id));
  const isNamed = isWanted && !(choice.kind === 'alternate' && choice.isStandard);
  return isNamed ? [...others, line.id] : others;
}

/** What the document comes to, by the sums that are kept when it is accepted. */
export function totalsWith(document: ClientDocument, chosen: readonly string[]): StatedTotals {
  return statedTotals(documentTotals(document, chosen));
}
