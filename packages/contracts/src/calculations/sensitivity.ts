import { type DecimalLike, decimal, formatPercent } from '@scantling/decimals';
import {
  Effort,
  type FigureNode,
  type FigureTable,
  sensitivity as movesOf,
  Recalculation,
  type SensitivityRow,
} from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { shareText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { exampleFigures } from './example-figures.ts';
import {
  AnswerFigures,
  figureFaultSchema,
  figureKey,
  givenFiguresSchema,
  givenRangesSchema,
  nodeOf,
} from './figure-question.ts';

/** What is asked of a table, whoever brings it. */
export const sensitivityFields = {
  move: shareText
    .default('0.1')
    .meta({ description: 'How far each value moves either way, as a share of it' }),
  ranges: givenRangesSchema
    .default({})
    .meta({ description: 'Values that move within a range of their own instead' }),
  leaves: z
    .array(figureKey)
    .max(2000)
    .exactOptional()
    .meta({ description: 'Only these; all the result rests on where left out' }),
  usesThreePoints: z.boolean().default(false).meta({
    description: 'A three-point estimate moves from its least to its greatest instead of by the share',
  }),
  most: z
    .number()
    .int()
    .min(1)
    .max(500)
    .default(50)
    .meta({ description: 'Rows wanted, the widest swing first' }),
};

const bodySchema = z.strictObject({ figures: givenFiguresSchema, result: figureKey, ...sensitivityFields });

const rowSchema = z.strictObject({
  figure: figureId.meta({ description: 'A leaf, or the mean of a three-point estimate, which moves as one' }),
  by: z.enum(['share', 'range']),
  low: figureId,
  high: figureId,
  keptAt: z
    .array(z.enum(['low', 'high']))
    .meta({ description: 'Ends kept to what the value can be at all: a yield is never above 1' }),
  resultLow: figureId.nullable(),
  resultHigh: figureId.nullable(),
  swing: figureId.nullable(),
  faults: z.array(figureFaultSchema),
});

export const sensitivityAnswerSchema = z.strictObject({
  result: figureId,
  rows: z.array(rowSchema),
  more: z.number().int().meta({ description: 'Rows with lesser swings that were left out' }),
  still: z
    .array(z.strictObject({ figure: figureId, why: z.enum(['zero', 'definition', 'whole']) }))
    .meta({ description: 'What did not move: 0, true by definition, or a count of things' }),
  figures: figureTableSchema,
});

type Question = {
  figures: FigureTable;
  result: string;
  ranges: Record<string, { low: DecimalLike; high: DecimalLike }>;
} & {
  move: string;
  leaves?: readonly string[];
  usesThreePoints: boolean;
  most: number;
};

/** @throws UnknownFigureError, FigureTableError, TooMuchWorkError */
export function sensitivityOf(question: Question, effort: Effort): z.output<typeof sensitivityAnswerSchema> {
  const { figures, most } = question;
  const found = movesOf(new Recalculation(figures, effort), question);
  const answer = new AnswerFigures();
  const result = nodeOf(figures, question.result);
  const id = answer.keep({ ...result, value: (found.result ?? result.value).toString() });
  return {
    result: id,
    rows: found.rows
      .slice(0, most)
      .map((row) => rowOf(row, { answer, node: nodeOf(figures, row.id), result, move: question.move })),
    more: Math.max(0, found.rows.length - most),
    still: found.still.map(({ id: leaf, why }) => ({ figure: answer.keep(nodeOf(figures, leaf)), why })),
    figures: answer.table(),
  };
}

function rowOf(
  row: SensitivityRow,
  made: { answer: AnswerFigures; node: FigureNode; result: FigureNode; move: string },
): z.output<typeof rowSchema> {
  const { answer, node, result, move } = made;
  const at = (name: string) => `sensitivity/${row.id}/${name}`;
  const why = (end: 'low' | 'high') => {
    if (row.keptAt.includes(end)) return 'kept to what it can be at all';
    return row.by === 'range'
      ? 'the range given for it'
      : `${formatPercent(move)} ${end === 'low' ? 'below' : 'above'} its value`;
  };
  const moved = (end: 'low' | 'high') =>
    answer.found(at(end), `${node.label}: ${end}`, node, { value: row[end], text: why(end) });
  const came = (end: 'low' | 'high', value: SensitivityRow['resultLow']) =>
    value === null
      ? null
      : answer.found(
          at(`result-${end}`),
          `${result.label}, with ${node.label} at ${row[end].toString()}`,
          result,
          {
            value,
            text: `worked out again with ${node.label} at ${row[end].toString()}`,
          },
        );
  const [resultLow, resultHigh] = [came('low', row.resultLow), came('high', row.resultHigh)];
  const isRising = row.resultHigh?.gte(row.resultLow ?? row.resultHigh) === true;
  const ends = isRising ? ([resultHigh, resultLow] as const) : ([resultLow, resultHigh] as const);
  const [more, less] = ends;
  return {
    figure: answer.keep(node),
    by: row.by,
    low: moved('low'),
    high: moved('high'),
    keptAt: [...row.keptAt],
    resultLow,
    resultHigh,
    swing:
      more === null || less === null
        ? null
        : answer.less(at('swing'), `swing by ${node.label}`, [more, less], row.swing ?? decimal(0)),
    faults: [...row.faults],
  };
}

const body: z.input<typeof bodySchema> = { figures: exampleFigures, result: 'price', move: '0.1' };

export const sensitivity = defineContract({
  name: 'sensitivity',
  method: 'POST',
  path: '/api/calculations/sensitivity',
  summary: 'Which values move a result most',
  description:
    'Takes a table of figures with derivations. Every value the result rests on is moved alone, low and high, by a share of it or within a range of its own; rows come by their swing. What is 0, so by definition or counted in whole things does not move by a share and is named.',
  tag: 'calculations',
  roles: 'anyone',
  body: bodySchema,
  answer: sensitivityAnswerSchema,
  example: { body, answer: sensitivityOf(bodySchema.parse(body), new Effort()) },
});
