import { z } from 'zod';
import { nonNegativeDecimalText } from '../decimal-text.ts';
import { leafKey } from '../own-values/own-value.ts';
import { givenName, moment, recordId } from '../record.ts';

export const MOST_CHANGES = 300;

/** Another value for a leaf, with what the leaf was called, so that one that has gone can be named. */
export const scenarioChangeSchema = z.strictObject({
  leaf: leafKey,
  label: z.string().trim().min(1).max(300),
  value: nonNegativeDecimalText,
});

export const scenarioFields = z.strictObject({
  name: givenName,
  note: z.string().trim().max(2000).default(''),
  changes: z
    .array(scenarioChangeSchema)
    .min(1)
    .max(MOST_CHANGES)
    .refine((changes) => new Set(changes.map(({ leaf }) => leaf)).size === changes.length, {
      error: 'names a leaf twice',
      params: { mend: 'Give one value for each leaf.' },
    }),
});

/** Values tried together on one cost sheet, kept under a name; worked out on the sheet of the day it is read. */
export const scenarioSchema = z
  .strictObject({
    id: recordId,
    costSheetId: recordId,
    ...scenarioFields.shape,
    madeBy: z.string().meta({ description: 'Who changed it last' }),
    createdAt: moment,
    updatedAt: moment,
    isDemo: z.boolean(),
    version: z.number().int(),
  })
  .meta({ id: 'Scenario' });
export type Scenario = z.output<typeof scenarioSchema>;

export const exampleScenarioFields = {
  name: 'Better boards',
  note: 'FAS instead of No. 1 Common',
  changes: [
    {
      leaf: 'material/ASH-4/yield',
      label: 'Ash 4/4: yield, need as a share of what is bought',
      value: '0.8',
    },
  ],
};
export const exampleScenario: z.input<typeof scenarioSchema> = {
  id: '0193f6a0-7c11-7000-8000-000000000060',
  costSheetId: '0193f6a0-7c11-7000-8000-000000000020',
  ...exampleScenarioFields,
  madeBy: 'Odalie (invented)',
  createdAt: '2026-03-01T09:30:00.000Z',
  updatedAt: '2026-03-01T09:30:00.000Z',
  isDemo: false,
  version: 1,
};
