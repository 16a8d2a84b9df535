import { type DecimalLike, decimal, ZERO } from '@scantling/decimals';
import type { PaperFact, PaperLine, PaperLineGroup, PaperLines, PaperPicture } from './paper.ts';
import type { PaperWriters } from './paper-style.ts';

/** A line as its document has it, before it is written. */
export interface LineToWrite {
  readonly description: string;
  readonly details?: readonly string[];
  /** As written: "2 pieces". */
  readonly quantity: string;
  readonly unitPrice?: DecimalLike;
  /** Absent on papers without prices. */
  readonly amount?: DecimalLike;
  readonly mark?: string;
  /** True when absent. */
  readonly isCounted?: boolean;
  readonly pictures?: readonly PaperPicture[];
}

export interface GroupToWrite {
  readonly heading?: string;
  readonly note?: string;
  readonly lines: readonly LineToWrite[];
  readonly subtotal?: PaperFact;
  /** The lines take each other's place: one number, and a letter each. */
  readonly areAlternates?: boolean;
}

/** 1 is "a", 27 is "aa". */
function letter(count: number): string {
  const last = String.fromCharCode(97 + ((count - 1) % 26));
  return count <= 26 ? last : `${letter(Math.floor((count - 1) / 26))}${last}`;
}

/**
 * The table of lines, numbered through, with the sums that are carried over where a page ends. Without any price the
 * columns of money are left out.
 * @throws NotADecimalError
 */
export function paperLines(groups: readonly GroupToWrite[], writers: PaperWriters): PaperLines {
  const all = groups.flatMap(({ lines }) => lines);
  const hasAmounts = all.some(({ amount }) => amount !== undefined);
  const hasPrices = all.some(({ unitPrice }) => unitPrice !== undefined);
  let number = 0;
  let sum = ZERO;

  const written = (line: LineToWrite, position: string): PaperLine => {
    const isCounted = line.isCounted ?? true;
    if (isCounted) sum = sum.plus(decimal(line.amount ?? 0));
    return {
      position,
      description: line.description,
      details: line.details ?? [],
      quantity: line.quantity,
      unitPrice: line.unitPrice === undefined ? null : writers.price(line.unitPrice),
      amount: line.amount === undefined ? null : writers.money(line.amount),
      mark: line.mark ?? null,
      isCounted,
      carried: hasAmounts && isCounted ? writers.money(sum) : null,
      pictures: line.pictures ?? [],
    };
  };
  const writtenGroup = (group: GroupToWrite): PaperLineGroup => {
    const first = number + 1;
    number += group.areAlternates === true ? 1 : group.lines.length;
    return {
      heading: group.heading ?? null,
      note: group.note ?? null,
      lines: group.lines.map((line, at) =>
        written(line, group.areAlternates === true ? `${first}${letter(at + 1)}` : String(first + at)),
      ),
      subtotal: group.subtotal ?? null,
    };
  };
  return {
    heads: {
      position: 'No.',
      description: 'Description',
      quantity: 'Quantity',
      unitPrice: hasPrices ? 'Price' : null,
      amount: hasAmounts ? 'Amount' : null,
    },
    groups: groups.filter(({ lines }) => lines.length > 0).map(writtenGroup),
    carriedOver: 'Carried over',
    broughtForward: 'Brought forward',
  };
}
