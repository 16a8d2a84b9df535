import { z } from 'zod';
import { countryCodeSchema } from './country-codes.ts';
import { singleLine } from './single-line.ts';

/** An address as it is printed: its lines below the name, in the order the country writes them. */
export const postalAddressSchema = z
  .strictObject({
    lines: z.array(singleLine(100).min(1)).max(7),
    countryCode: countryCodeSchema.nullable(),
  })
  .meta({ id: 'PostalAddress' });
export type PostalAddress = z.output<typeof postalAddressSchema>;

export const NO_ADDRESS: PostalAddress = { lines: [], countryCode: null };
export const examplePostalAddress: PostalAddress = {
  lines: ['4 Mill Lane', 'Invented Town'],
  countryCode: 'SE',
};
