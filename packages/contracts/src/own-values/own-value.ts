import { z } from 'zod';
import { nonNegativeDecimalText } from '../decimal-text.ts';
import { calendarDate } from '../record.ts';

/** The key of a leaf, as figures name it. */
export const leafKey = z
  .string()
  .min(1)
  .max(400)
  .meta({ description: 'Key of a leaf in `figures`', examples: ['material/ASH-4/yield'] });

/** A value that stands on one cost sheet alone, in place of what the record says. */
export const ownValueSchema = z
  .strictObject({
    leaf: leafKey,
    label: z.string().meta({ description: 'What the leaf was called when it got the value' }),
    value: nonNegativeDecimalText,
    by: z.string().meta({ description: 'Who gave it' }),
    on: calendarDate,
  })
  .meta({ id: 'OwnValue' });
export const ownValuesSchema = z.array(ownValueSchema);

export const exampleOwnValue: z.input<typeof ownValueSchema> = {
  leaf: 'material/ASH-4/yield',
  label: 'Ash 4/4: yield, need as a share of what is bought',
  value: '0.75',
  by: 'Odalie (invented)',
  on: '2026-03-01',
};
