import { Effort, Recalculation } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { exampleFigures } from './example-figures.ts';
import {
  AnswerFigures,
  figureFaultSchema,
  givenFiguresSchema,
  leafChangesSchema,
  nodeOf,
} from './figure-question.ts';

const bodySchema = z.strictObject({ figures: givenFiguresSchema, changes: leafChangesSchema });

const answerSchema = z.strictObject({
  moved: z
    .array(z.strictObject({ before: figureId, after: figureId, by: figureId }))
    .meta({ description: 'Every figure whose value is another now, leaves first' }),
  lost: z
    .array(z.strictObject({ before: figureId }))
    .meta({ description: 'Figures that have no value any more: those at fault, and what rests on them' }),
  faults: z.array(figureFaultSchema).meta({ description: 'Figures without an answer, and why' }),
  figures: figureTableSchema,
});

/** @throws UnknownFigureError, FigureTableError, TooMuchWorkError */
export function whatIfOf(
  { figures, changes }: z.output<typeof bodySchema>,
  effort: Effort,
): z.output<typeof answerSchema> {
  const sheet = new Recalculation(figures, effort);
  const { changed, faults, lost } = sheet.change(changes);
  const answer = new AnswerFigures();
  const places = (ids: Iterable<string>) =>
    [...ids]
      .sort((a, b) => sheet.table.place(a) - sheet.table.place(b))
      .map((id) => [id, sheet.value(sheet.table.place(id))] as const);
  const moved = places(changed.keys()).flatMap(([id, was]) => {
    const now = changed.get(id);
    const node = nodeOf(figures, id);
    if (now === undefined || was === null) return [];
    const before = answer.keep({ ...node, value: was.toString() });
    const after = answer.found(`what-if/${id}`, node.label, node, {
      value: now,
      text: changes[id] === undefined ? 'worked out with the changed values' : 'changed to see what moves',
    });
    return [
      {
        before,
        after,
        by: answer.less(`what-if/${id}/by`, `${node.label}: change`, [after, before], now.minus(was)),
      },
    ];
  });
  return {
    moved,
    lost: places(lost).map(([id]) => ({ before: answer.keep(nodeOf(figures, id)) })),
    faults: [...faults],
    figures: answer.table(),
  };
}

const body: z.input<typeof bodySchema> = { figures: exampleFigures, changes: { 'ash/price': '13.5' } };

export const whatIf = defineContract({
  name: 'what-if',
  method: 'POST',
  path: '/api/calculations/what-if',
  summary: 'What moves when leaves take other values',
  description:
    'Takes a table of figures with derivations and new values of leaves; only what rests on them is worked out again, in decimals and with every rounding. A figure without an answer is named, and the rest is answered.',
  tag: 'calculations',
  roles: 'anyone',
  body: bodySchema,
  answer: answerSchema,
  example: { body, answer: whatIfOf(bodySchema.parse(body), new Effort()) },
});
