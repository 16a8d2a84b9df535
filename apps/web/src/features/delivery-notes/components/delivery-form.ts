import type { BodyOf, createDeliveryNote } from '@scantling/contracts';
import type { FieldMessage } from '../../../components/field.tsx';
import { fieldErrors } from '../../../lib/field-errors.ts';
import { plainDecimal } from '../../../lib/percent.ts';
import type { OrderedLine } from '../api/list-delivery-notes.ts';

/** What is typed beside each line, by line; a line without a number, or with 0, does not go along. */
export type Quantities = Readonly<Record<string, string>>;

export function lineKey({ revisionId, lineId }: Pick<OrderedLine, 'revisionId' | 'lineId'>): string {
  return `${revisionId} ${lineId}`;
}

/** Everything that is still to come. */
export function allThatIsLeft(lines: readonly OrderedLine[]): Quantities {
  return Object.fromEntries(lines.map((line) => [lineKey(line), line.outstanding]));
}

/** The lines that go along, as they are sent; a number that cannot be read is sent as typed, to be named. */
export function goingAlong(
  lines: readonly OrderedLine[],
  quantities: Quantities,
): BodyOf<typeof createDeliveryNote>['lines'] {
  return lines.flatMap((line) => {
    const quantity = plainDecimal(quantities[lineKey(line)] ?? '');
    const { revisionId, lineId } = line;
    return /^0*(\.0*)?$/.test(quantity) ? [] : [{ revisionId, lineId, quantity }];
  });
}

/** What is wrong with a line's number: errors name the place of a line among those sent. */
export function quantityErrors(
  error: Error | null,
  sent: readonly Pick<OrderedLine, 'revisionId' | 'lineId'>[],
): { readonly names: readonly string[]; readonly of: (line: OrderedLine) => FieldMessage | undefined } {
  const names = sent.flatMap((_, at) => [`lines.${at}.quantity`, `lines.${at}.lineId`]);
  const { errorFor } = fieldErrors(error, names);
  return {
    names,
    of: (line) => {
      const at = sent.findIndex((one) => lineKey(one) === lineKey(line));
      return at < 0 ? undefined : (errorFor(`lines.${at}.quantity`) ?? errorFor(`lines.${at}.lineId`));
    },
  };
}
