import { type AnswerOf, createPriceList } from '@scantling/contracts';
import { type PriceRow, priceIdentity } from '@scantling/costing';
import { decimal } from '@scantling/decimals';
import type { z } from 'zod';
import { handle, signedIn } from '../../handle.ts';
import { RequestProblem } from '../../problems/request-problem.ts';
import type { Services } from '../../services.ts';
import { actorKey } from '../../sign-in/actor.ts';
import { completeTerms } from './list-terms.ts';
import { findPriceList } from './price-list-records.ts';
import { rowsGiven } from './priced-rows.ts';
import { writePriceList } from './write-price-list.ts';

type Body = z.output<typeof createPriceList.body>;

function toRow(line: Body['lines'][number]): PriceRow {
  const { material, packSize, minimumQuantity, leadDays, breakFrom, ...rest } = line;
  return {
    ...rest,
    from: decimal(breakFrom).toString(),
    ...(material === null ? {} : { material }),
    ...(packSize === null ? {} : { packSize }),
    ...(minimumQuantity === null ? {} : { minimumQuantity }),
    ...(leadDays === null ? {} : { leadDays }),
  };
}

function problemsOf(rows: readonly PriceRow[], materials: ReadonlySet<string>) {
  const places = new Map<string, number>();
  return rows.flatMap((row, place) => {
    const errors = [];
    const first = places.get(priceIdentity(row));
    if (first === undefined) places.set(priceIdentity(row), place);
    else
      errors.push({
        field: `lines.${place}.code`,
        message: `has the code, unit and break of line ${first + 1}`,
        mend: 'Keep one of the two lines.',
      });
    if (row.material !== undefined && !materials.has(row.material))
      errors.push({
        field: `lines.${place}.material`,
        message: `there is no material "${row.material}"`,
        mend: 'Use the code of a material, or enter the material first.',
      });
    return errors;
  });
}

async function enterPriceList(
  services: Services,
  body: Body,
  createdBy: string,
): Promise<AnswerOf<typeof createPriceList>> {
  const { lines, ...given } = body;
  const rows = lines.map(toRow);
  const wanted = rows.flatMap(({ material }) => (material === undefined ? [] : [material]));
  const known = await services.database.material.findMany({
    where: { code: { in: wanted } },
    select: { code: true },
  });
  const errors = problemsOf(rows, new Set(known.map(({ code }) => code)));
  if (errors.length > 0) throw new RequestProblem('input-invalid', { errors });
  return services.database.$transaction(async (transaction) => {
    const terms = await completeTerms(transaction, given);
    const numbered = rowsGiven(rows.map((row, place) => ({ number: place + 1, row })));
    const origin = { createdBy, createdAt: services.clock(), sourceName: '', sourceSha256: '' };
    const id = await writePriceList(transaction, terms, origin, numbered);
    await transaction.priceImpact.create({ data: { listId: id } });
    return findPriceList(transaction, id);
  });
}

export const answerCreatePriceList = handle(createPriceList, ({ body, actor, services }) =>
  enterPriceList(services, body, actorKey(signedIn(actor))),
);
