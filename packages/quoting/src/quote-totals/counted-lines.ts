import { QuotingInputError } from '../input-error.ts';
import type { QuoteTotalsInput, TotalsLine } from './totals-input.ts';

type Choices = Pick<QuoteTotalsInput, 'chosen'> & {
  readonly lines: readonly Pick<TotalsLine, 'id' | 'label' | 'choice'>[];
};

function requireOwnIds(lines: Choices['lines']): void {
  const seen = new Set<string>();
  lines.forEach(({ id }, at) => {
    if (seen.has(id))
      throw new QuotingInputError(`lines.${at}.id`, `is "${id}" again`, 'give each line an id of its own');
    seen.add(id);
  });
}

/** The standard line of each group of alternates, by group. */
function standards(lines: Choices['lines']): Map<string, string> {
  const found = new Map<string, string>();
  lines.forEach(({ id, choice }, at) => {
    if (choice.kind !== 'alternate' || !choice.isStandard) return;
    if (found.has(choice.group))
      throw new QuotingInputError(
        `lines.${at}.choice.isStandard`,
        `is the second standard of "${choice.group}"`,
        'mark one line of the group as the one taken where nothing else is chosen',
      );
    found.set(choice.group, id);
  });
  lines.forEach(({ choice }, at) => {
    if (choice.kind === 'alternate' && !found.has(choice.group))
      throw new QuotingInputError(
        `lines.${at}.choice.group`,
        `"${choice.group}" has no standard line`,
        'mark one line of the group as the one taken where nothing else is chosen',
      );
  });
  return found;
}

/**
 * The ids of the lines that count with what is chosen: all that are included, the options chosen, and one line of each
 * group of alternates - the one chosen in place of the standard one.
 * @throws QuotingInputError naming the line or the choice that cannot be
 */
export function countedLines({ lines, chosen }: Choices): ReadonlySet<string> {
  requireOwnIds(lines);
  const taken = standards(lines);
  const decided = new Set<string>();
  const options = new Set<string>();
  chosen.forEach((id, at) => {
    const line = lines.find((one) => one.id === id);
    if (line === undefined || line.choice.kind === 'included')
      throw new QuotingInputError(
        `chosen.${at}`,
        line === undefined ? `names no line ("${id}")` : `"${line.label}" is included anyway`,
        'name options and alternates of this quote only',
      );
    if (line.choice.kind === 'option') {
      options.add(id);
      return;
    }
    const { group } = line.choice;
    if (decided.has(group))
      throw new QuotingInputError(
        `chosen.${at}`,
        `is a second choice for "${group}"`,
        'choose one line of each group',
      );
    decided.add(group);
    taken.set(group, id);
  });
  const alternates = new Set(taken.values());
  return new Set(
    lines
      .filter(({ id, choice }) => choice.kind === 'included' || options.has(id) || alternates.has(id))
      .map(({ id }) => id),
  );
}
