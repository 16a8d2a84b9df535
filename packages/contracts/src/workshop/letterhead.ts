import { z } from 'zod';
import { usedPictureSchema } from '../pictures/picture.ts';
import { NO_ADDRESS, postalAddressSchema } from '../postal-address.ts';
import { singleLine } from '../single-line.ts';
import { emailSchema } from '../users/user.ts';

const website = z
  .string()
  .trim()
  .max(200)
  .refine(
    (text) => text === '' || /^(?:https?:\/\/)?[\p{L}\p{N}-]+(?:\.[\p{L}\p{N}-]+)+(?:\/\S*)?$/u.test(text),
    {
      error: 'is no web address',
      params: { mend: 'Write it like "workshop.example" or "https://workshop.example/furniture".' },
    },
  );

/** What stands on the workshop's papers besides their content; an empty text is left out. */
export const letterheadSchema = z
  .strictObject({
    /** The name the workshop trades under; empty means its name in the program. */
    tradingName: singleLine(200).default(''),
    address: postalAddressSchema.default(NO_ADDRESS),
    email: emailSchema.nullable().default(null),
    phone: singleLine(60).default(''),
    website: website.default(''),
    /** Number under which the workshop accounts for tax. */
    taxNumber: singleLine(60).default(''),
    /** Entry in a register of companies or trades. */
    registration: singleLine(200).default(''),
    /** Where money is to be paid to, line by line. */
    bankLines: z.array(singleLine(100).min(1)).max(6).default([]),
    footer: singleLine(300).default(''),
    logo: usedPictureSchema.nullable().default(null),
    paperSize: z.enum(['a4', 'letter']).default('a4'),
  })
  .meta({ id: 'Letterhead' });
export type Letterhead = z.output<typeof letterheadSchema>;
