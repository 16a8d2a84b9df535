import { currencySchema } from '@scantling/contracts';
import { z } from 'zod';
import type { Prisma } from '../../generated/prisma/client.ts';
import type { SheetAsk } from './cost-lines.ts';
import { frozenSheetSchema } from './frozen-working.ts';

type Drawing = Pick<z.output<typeof frozenSheetSchema>, 'drawing' | 'unit'>;

/** A line that counts and rests on a cost sheet: what was asked, the drawing, and what it was to cost. */
export interface FrozenAsk extends Drawing {
  readonly lineId: string;
  readonly ask: SheetAsk;
  readonly cost: string;
}

/** What of a sent revision is needed to cost it again; the worked-out sheets are large and left where they are. */
export interface FrozenAsks {
  readonly currency: z.output<typeof currencySchema>;
  /** Of all lines that count, as it was sent. */
  readonly cost: string;
  readonly net: string;
  readonly lines: readonly FrozenAsk[];
}

const rowSchema = z.object({
  id: z.string(),
  currency: currencySchema,
  cost: z.string(),
  net: z.string(),
  lines: z.array(
    z.object({
      lineId: z.string(),
      ask: frozenSheetSchema.shape.ask,
      // Checked by `DrawingReader`, which knows most of them already.
      drawing: z.unknown(),
      unit: frozenSheetSchema.shape.unit,
      cost: z.string(),
    }),
  ),
});

const MOST_DRAWINGS = 200;

/** Checks drawings as they are kept; the quotes of one design share theirs. */
class DrawingReader {
  readonly #known = new Map<string, Drawing['drawing']>();

  read(kept: unknown): Drawing['drawing'] {
    const text = JSON.stringify(kept);
    const known = this.#known.get(text);
    if (known !== undefined) return known;
    const drawing = frozenSheetSchema.shape.drawing.parse(kept);
    if (this.#known.size >= MOST_DRAWINGS) this.#known.clear();
    this.#known.set(text, drawing);
    return drawing;
  }
}

/** Reads what was sent, many revisions one after the other. */
export class FrozenAsksReader {
  readonly #drawings = new DrawingReader();

  /** By the revisions' ids. @throws ZodError where one is kept in another form, which no code of ours writes */
  async read(
    database: Prisma.TransactionClient,
    revisionIds: readonly string[],
  ): Promise<Map<string, FrozenAsks>> {
    if (revisionIds.length === 0) return new Map();
    const rows = await database.$queryRaw<unknown[]>`
      select id, quote->>'currency' as currency,
        quote->'figures'->(quote->'margin'->>'cost')->>'value' as cost,
        quote->'figures'->(quote->'totals'->>'net')->>'value' as net,
        coalesce((
          select jsonb_agg(jsonb_build_object('lineId', line->>'id', 'ask', sheet->'ask', 'drawing', sheet->'drawing',
            'unit', sheet->'unit', 'cost', whole->'costs'->(line->>'id')->'cost'))
          from jsonb_array_elements(quote->'totals'->'lines') as line
            cross join lateral (select whole->'sheets'->(line->>'id') as sheet offset 0) as of_line
          where (line->>'isCounted')::boolean and sheet is not null
        ), '[]'::jsonb) as lines
      from (
        -- Large and packed on the disk: unpacked once, which the offset keeps from being undone.
        select id, working #> '{}' as whole from "QuoteRevision"
        where id = any(${[...revisionIds]}) and working is not null offset 0
      ) as sent cross join lateral (select whole->'quote' as quote offset 0) as of_quote`;
    return new Map(
      rows.map((row) => {
        const { id, lines, ...rest } = rowSchema.parse(row);
        const read = lines.map((line) => ({ ...line, drawing: this.#drawings.read(line.drawing) }));
        return [id, { ...rest, lines: read }];
      }),
    );
  }
}
