import { z } from 'zod';
import { unitSystemSchema } from '../designs/design.ts';
import { currencySchema } from '../figures.ts';
import { givenName } from '../record.ts';
import { workshopSettingsSchema } from './workshop-settings.ts';

export const workshopInputSchema = z.strictObject({
  name: givenName,
  currency: currencySchema,
  /** How lengths are shown where a design does not say. */
  unitSystem: unitSystemSchema,
  settings: workshopSettingsSchema,
});

export const workshopSchema = workshopInputSchema
  .extend({ version: z.number().int() })
  .meta({ id: 'Workshop' });
export type Workshop = z.output<typeof workshopSchema>;

export const exampleWorkshopInput = {
  name: 'Alderbrook Joinery',
  currency: 'EUR',
  unitSystem: 'metric',
  settings: workshopSettingsSchema.parse({ floorCostPerM2: '95', electricityPerKwh: '0.28' }),
} as const satisfies z.input<typeof workshopInputSchema>;
export const exampleWorkshop = { ...exampleWorkshopInput, version: 3 };
