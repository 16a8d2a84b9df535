import {
  type BodyOf,
  earlyPriceInputSchema,
  type frozenEarlyPriceSchema,
  type KeptEarlyPrice,
  type keepEarlyPrice,
  keptEarlyPriceSchema,
  type WorkedEarlyPrice,
  workedEarlyPriceSchema,
  workOutEarlyPrice,
} from '@scantling/contracts';
import { CostingInputError } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { z } from 'zod';
import type { Database } from '../../database/connect.ts';
import type { EnquiryEarlyPrice, Prisma } from '../../generated/prisma/client.ts';
import { fieldProblem, notFound } from '../../problems/request-problem.ts';
import { requireEnquiry } from './enquiry-records.ts';

export function toKeptEarlyPrice(row: EnquiryEarlyPrice): KeptEarlyPrice {
  return {
    number: row.number,
    givenOn: row.givenOn.toISOString().slice(0, 10),
    currency: keptEarlyPriceSchema.shape.currency.parse(row.currency),
    low: row.low.toFixed(),
    likely: row.likely.toFixed(),
    high: row.high.toFixed(),
    from: earlyPriceInputSchema.parse(row.input).pieces.map(({ name }) => name),
    note: row.note,
  };
}

/** The number a cursor names. @throws RequestProblem input-invalid */
export function readNumber(keys: readonly string[] | undefined): number | undefined {
  if (keys === undefined) return undefined;
  const [text = ''] = keys;
  if (!/^\d{1,6}$/.test(text))
    throw fieldProblem('query.cursor', 'is no cursor of this list', 'Send the `next` of the page before.');
  return Number(text);
}

/** The newest first. @throws RequestProblem not-found */
export async function earlyPricePage(
  database: Database,
  enquiryId: string,
  limit: number,
  before: number | undefined,
): Promise<EnquiryEarlyPrice[]> {
  await requireEnquiry(database, enquiryId);
  return database.enquiryEarlyPrice.findMany({
    where: { enquiryId, ...(before === undefined ? {} : { number: { lt: before } }) },
    orderBy: { number: 'desc' },
    take: limit + 1,
  });
}

/** As it was given; nothing is worked out again. @throws RequestProblem not-found */
export async function findEarlyPrice(
  database: Database,
  enquiryId: string,
  number: number,
): Promise<z.output<typeof frozenEarlyPriceSchema>> {
  const row = await database.enquiryEarlyPrice.findUnique({
    where: { enquiryId_number: { enquiryId, number } },
  });
  if (row === null) throw notFound('early price');
  const input = earlyPriceInputSchema.parse(row.input);
  return { ...toKeptEarlyPrice(row), input, worked: workedEarlyPriceSchema.parse(row.worked) };
}

type Given = BodyOf<typeof keepEarlyPrice> & { readonly createdBy: string; readonly givenOn: Date };

/** Worked out, with errors named below the field that holds the input. @throws CostingInputError */
function workedWithin(field: string, input: Given['input']): WorkedEarlyPrice {
  try {
    return workOutEarlyPrice(input, { withDerivations: true });
  } catch (error) {
    if (!(error instanceof CostingInputError)) throw error;
    throw new CostingInputError(`${field}.${error.field}`, error.reason, error.mend);
  }
}

/** Kept with 12 digits before the point. @throws RequestProblem input-invalid */
function keptAmount(text: string): string {
  if (decimal(text).abs().lt('1e12')) return text;
  throw fieldProblem(
    'input.asked',
    'makes a price of more than 12 digits, which cannot be kept',
    'Correct the size, count or hours, the exponents, or the adjustment.',
  );
}

/**
 * Works it out and keeps it for good, under the next number of its enquiry.
 * @throws RequestProblem not-found; CostingInputError naming the field within `input`
 */
export async function addEarlyPrice(
  transaction: Prisma.TransactionClient,
  enquiryId: string,
  { input, note, createdBy, givenOn }: Given,
): Promise<KeptEarlyPrice> {
  // Locked, so that two kept at once get two numbers.
  const found = await transaction.$queryRaw<
    unknown[]
  >`SELECT id FROM "Enquiry" WHERE id = ${enquiryId} FOR UPDATE`;
  if (found.length === 0) throw notFound('enquiry');
  const worked = workedWithin('input', input);
  const amount = (id: string) => keptAmount(worked.figures[id]?.value ?? '0');
  const last = await transaction.enquiryEarlyPrice.aggregate({
    where: { enquiryId },
    _max: { number: true },
  });
  const row = await transaction.enquiryEarlyPrice.create({
    data: {
      enquiryId,
      number: (last._max.number ?? 0) + 1,
      givenOn: new Date(givenOn.toISOString().slice(0, 10)),
      currency: input.currency,
      low: amount(worked.low.price),
      likely: amount(worked.likely.price),
      high: amount(worked.high.price),
      input: JSON.parse(JSON.stringify(input)),
      worked: JSON.parse(JSON.stringify(worked)),
      note,
      createdBy,
    },
  });
  return toKeptEarlyPrice(row);
}
