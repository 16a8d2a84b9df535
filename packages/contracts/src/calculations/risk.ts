import { SHAPES } from '@scantling/figures';
import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { decimalText, positiveDecimalText, shareText } from '../decimal-text.ts';
import { figureId, figureTableSchema } from '../figures.ts';
import { exampleFigures } from './example-figures.ts';
import { figureKey, givenFiguresSchema, leafChangesSchema } from './figure-question.ts';

const MOST_UNCERTAIN = 1000;

const estimateSchema = z.strictObject({
  low: decimalText,
  likely: decimalText,
  high: decimalText,
  shape: z.enum(SHAPES).exactOptional(),
  group: z.string().min(1).max(60).nullable().exactOptional().meta({
    description:
      'Values of one group move together; null stands alone. Hours are one group where nothing is said',
  }),
});

/** What is asked of a table, whoever brings it. */
export const riskFields = {
  uncertain: z
    .record(figureKey, estimateSchema)
    .refine((all) => Object.keys(all).length <= MOST_UNCERTAIN, {
      error: `names more than ${MOST_UNCERTAIN} values`,
    })
    .default({})
    .meta({ description: 'Least, likely and greatest of leaves that are not known for certain, by id' }),
  usesThreePoints: z.boolean().default(true).meta({
    description:
      'Three-point estimates that stand in the table are uncertain as well, each as its mean, once',
  }),
  shape: z
    .enum(SHAPES)
    .default('pert')
    .meta({ description: 'For estimates that do not say: Beta-PERT with lambda 4, or triangular' }),
  doHoursMoveTogether: z.boolean().default(true),
  samples: z.number().int().min(100).max(100_000).default(10_000),
  seed: z
    .number()
    .int()
    .min(0)
    .max(2_147_483_647)
    .default(1)
    .meta({ description: 'The same seed gives the same answer' }),
  percentile: shareText.default('0.8').meta({
    description:
      'The contingency is what this percentile is above the result with every uncertain value at its mean',
  }),
  changes: leafChangesSchema.default({}).meta({ description: 'Leaves held at another value than they have' }),
};

/** A price that is settled whatever it will cost. */
export const quotedFields = { leastMargin: shareText.exactOptional() };

const bodySchema = z.strictObject({
  figures: givenFiguresSchema,
  results: z.array(figureKey).min(1).max(12),
  ...riskFields,
  quoted: z
    .strictObject({ cost: figureKey, price: positiveDecimalText, ...quotedFields })
    .exactOptional()
    .meta({
      description: 'A price that is settled: how likely is a loss, and a margin below the least wanted',
    }),
});

const spreadSchema = z.strictObject({
  mean: figureId,
  sd: figureId,
  p10: figureId,
  p50: figureId,
  p80: figureId,
  p90: figureId,
  percentile: figureId,
  histogram: z
    .strictObject({
      edges: z.array(z.string()),
      counts: z.array(z.number().int()),
      cumulative: z.array(z.number()),
    })
    .meta({
      description: 'One more edge than counts; cumulative is the share of samples up to each upper edge',
    }),
});

export const riskAnswerSchema = z.strictObject({
  samples: z.number().int(),
  seed: z.number().int(),
  uncertain: z.array(
    z.strictObject({
      figure: figureId,
      low: figureId,
      likely: figureId,
      high: figureId,
      mean: figureId,
      shape: z.enum(SHAPES),
      group: z.string().nullable(),
    }),
  ),
  results: z.array(
    z.strictObject({
      figure: figureId,
      atMeans: figureId.nullable().meta({ description: 'With every uncertain value at its mean' }),
      spread: spreadSchema.nullable().meta({ description: 'Null where no sample has an answer' }),
      contingency: figureId.nullable(),
      withoutAnswer: z.number().int().meta({ description: 'Samples in which the result has no answer' }),
      shares: z.array(z.strictObject({ name: z.string(), isGroup: z.boolean(), share: z.string() })).meta({
        description:
          'The part of the variance that one value or group explains by itself, the greatest first',
      }),
    }),
  ),
  chances: z.strictObject({ ofLoss: figureId, ofLowMargin: figureId.nullable() }).nullable(),
  figures: figureTableSchema,
});

const body: z.input<typeof bodySchema> = {
  figures: exampleFigures,
  results: ['cost'],
  uncertain: { 'ash/price': { low: '11', likely: '12', high: '16' } },
  quoted: { cost: 'cost', price: '450' },
};

export const exampleRiskAnswer: z.input<typeof riskAnswerSchema> = {
  samples: 10_000,
  seed: 1,
  uncertain: [],
  results: [
    {
      figure: 'cost',
      atMeans: 'risk/cost/at-means',
      spread: null,
      contingency: null,
      withoutAnswer: 0,
      shares: [],
    },
  ],
  chances: { ofLoss: 'risk/chance-of-loss', ofLowMargin: null },
  figures: {},
};

export const risk = defineContract({
  name: 'risk',
  method: 'POST',
  path: '/api/calculations/risk',
  summary: 'How far a result may be off',
  description:
    'Takes a table of figures with derivations and least, likely and greatest of what is not known for certain. Values are drawn, and all that rests on them is worked out again in every sample, roundings, whole packs and breaks included. Values are independent of each other or move together in groups. Samples are floats; everything else is decimal.',
  tag: 'calculations',
  roles: 'anyone',
  body: bodySchema,
  answer: riskAnswerSchema,
  example: { body, answer: exampleRiskAnswer },
});
