import { exchangeRateFields, moneyText } from '@scantling/contracts';
import { BREAK_KINDS, type BreakKind, type PriceRow } from '@scantling/costing';
import type { FigureNode } from '@scantling/figures';
import { isPricingUnitId } from '@scantling/units';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem } from '../../problems/request-problem.ts';
import { completeTerms } from '../price-lists/list-terms.ts';
import { rowsGiven } from '../price-lists/priced-rows.ts';
import { writePriceList } from '../price-lists/write-price-list.ts';
import { setInRecord } from './set-in-record.ts';
import type { WrittenPlace } from './write-records.ts';

type Access = Prisma.TransactionClient;

export interface PriceValue {
  readonly leaf: FigureNode;
  readonly value: string;
  readonly field: string;
}

/** What is written with a price: when it holds from, what it was entered for, and who enters it. */
export interface PriceOrigin {
  readonly onDate: string;
  readonly title: string;
  readonly createdBy: string;
  readonly now: Date;
}

const amountSchema = z.strictObject({ amount: moneyText });

/** The line of the list that the leaf stands on. */
async function lineOf(transaction: Access, { leaf, field }: PriceValue) {
  const id =
    leaf.source?.record
      ?.split('/')
      .at(-1)
      ?.replace(/^price-line:/, '') ?? '';
  const line = await transaction.priceLine.findUnique({
    where: { id },
    include: { list: true, item: { include: { material: { select: { code: true } } } } },
  });
  if (line === null)
    throw fieldProblem(field, 'stands on no price list that is kept', 'Enter a new list of the supplier.');
  return line;
}

type Line = Awaited<ReturnType<typeof lineOf>>;

function isBreakKind(text: string): text is BreakKind {
  return BREAK_KINDS.some((kind) => kind === text);
}

/** The same line with another amount; pack, least quantity and break stay. */
function rowOf(line: Line, { value, field }: PriceValue): PriceRow {
  const { amount } = setInRecord(amountSchema, {}, [{ path: ['amount'], value, field }]);
  const { unit, breakKind, packSize, minimumQuantity, leadDays, item } = line;
  if (!isPricingUnitId(unit) || !isBreakKind(breakKind))
    throw fieldProblem(field, 'is priced in a way that cannot be entered', 'Enter a new list.');
  return {
    code: item.code,
    description: item.description,
    ...(item.material === null ? {} : { material: item.material.code }),
    unit,
    amount,
    from: line.breakFrom.toFixed(),
    breakKind,
    ...(packSize === null ? {} : { packSize: packSize.toFixed() }),
    ...(minimumQuantity === null ? {} : { minimumQuantity: minimumQuantity.toFixed() }),
    ...(leadDays === null ? {} : { leadDays }),
  };
}

/** Lists whose lines can stand on one new list: same supplier and terms. */
function groupOf({ list }: Line): string {
  const { supplierId, currency, taxIncluded, taxRate, taxRecoverable, validTo } = list;
  return JSON.stringify([supplierId, currency, taxIncluded, taxRate, taxRecoverable, validTo]);
}

/**
 * New lines in the suppliers' price history, on a list of its own for each supplier: prices are kept for good, and the
 * newest list of a day holds.
 * @returns the place of each value, in their order
 */
export async function writePrices(
  transaction: Access,
  values: readonly PriceValue[],
  { onDate, title, createdBy, now }: PriceOrigin,
): Promise<WrittenPlace[]> {
  const found = await Promise.all(
    values.map(async (value, at) => ({ value, at, line: await lineOf(transaction, value) })),
  );
  const places: WrittenPlace[] = [];
  const groups = new Map<string, typeof found>();
  for (const one of found) {
    const key = groupOf(one.line);
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  for (const group of groups.values()) {
    const list = group[0]?.line.list;
    if (list === undefined) continue;
    const validTo = list.validTo?.toISOString().slice(0, 10) ?? null;
    const name = `Entered for the cost sheet "${title}"`.slice(0, 200);
    const terms = await completeTerms(transaction, {
      supplierId: list.supplierId,
      name,
      validFrom: onDate,
      validTo: validTo === null || validTo < onDate ? null : validTo,
      currency: exchangeRateFields.shape.from.parse(list.currency),
      taxIncluded: list.taxIncluded,
      taxRate: list.taxRate.toFixed(),
      taxRecoverable: list.taxRecoverable.toFixed(),
    });
    const rows = group.map(({ line, value }, at) => ({ number: at + 1, row: rowOf(line, value) }));
    const origin = { createdBy, createdAt: now, sourceName: '', sourceSha256: '' };
    const id = await writePriceList(transaction, terms, origin, rowsGiven(rows));
    const lines = await transaction.priceLine.findMany({
      where: { listId: id },
      orderBy: { rowNumber: 'asc' },
      select: { id: true },
    });
    group.forEach(({ at }, row) => {
      places[at] = {
        place: `a new price list of ${onDate}, "${name}", beside "${list.name}"`,
        record: `price-line:${id}/${lines[row]?.id ?? ''}`,
      };
    });
  }
  return places;
}

/** A rate of the day; earlier rates stay. @throws RequestProblem input-invalid naming the value */
export async function writeExchangeRate(
  transaction: Access,
  { from, to, value, field }: { from: string; to: string; value: string; field: string },
  { onDate, title, now }: PriceOrigin,
): Promise<WrittenPlace> {
  const given = setInRecord(
    exchangeRateFields,
    { onDate, from, to, source: `entered for the cost sheet "${title}"`.slice(0, 200) },
    [{ path: ['rate'], value, field }],
  );
  await transaction.exchangeRate.create({
    data: { ...given, onDate: new Date(given.onDate), createdAt: now },
  });
  return { place: `the exchange rate of ${onDate}`, record: `exchange-rate:${from}-${to}` };
}
