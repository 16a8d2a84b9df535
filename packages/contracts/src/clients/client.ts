import { z } from 'zod';
import { examplePostalAddress, postalAddressSchema } from '../postal-address.ts';
import { givenName, moment, recordId } from '../record.ts';
import { singleLine } from '../single-line.ts';
import { emailSchema } from '../users/user.ts';

export const clientInputSchema = z.strictObject({
  name: givenName,
  email: emailSchema.nullable(),
  phone: singleLine(60),
  /** Where papers and pieces go. */
  address: postalAddressSchema,
  /** Number under which the client accounts for tax, where papers must carry it. */
  taxNumber: singleLine(60),
  notes: z.string().max(5000),
});

export const clientSchema = clientInputSchema
  .extend({ id: recordId, isDemo: z.boolean(), version: z.number().int(), createdAt: moment })
  .meta({ id: 'Client' });
export type ClientRecord = z.output<typeof clientSchema>;

export const exampleClientInput = {
  name: 'Greta Lindqvist (invented)',
  email: 'greta@client.example',
  phone: '',
  address: examplePostalAddress,
  taxNumber: '',
  notes: '',
} as const;
export const exampleClient = {
  ...exampleClientInput,
  id: '0193f6a0-7c11-7000-8000-000000000002',
  createdAt: '2026-03-01T09:30:00.000Z',
  isDemo: false,
  version: 1,
} as const;
