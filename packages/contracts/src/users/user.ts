import { z } from 'zod';
import { moment, recordId } from '../record.ts';
import { roleSchema } from '../roles.ts';

export const userSchema = z
  .strictObject({
    id: recordId,
    name: z.string(),
    email: z.email(),
    role: roleSchema,
    isDemo: z.boolean(),
    createdAt: moment,
  })
  .meta({ id: 'User' });
export type User = z.output<typeof userSchema>;

/** Kept in lower case, so that a person cannot be entered twice. */
export const emailSchema = z
  .string()
  .trim()
  .toLowerCase()
  .pipe(z.email())
  .meta({ examples: ['maker@workshop.example'] });

// Length rather than composition, after NIST SP 800-63B (5.1.1.2); the upper bound keeps hashing cheap.
export const newPasswordSchema = z.string().min(12).max(128);

export const exampleUser = {
  id: '0193f6a0-7c11-7000-8000-000000000001',
  name: 'Noor Ashdown',
  email: 'noor@workshop.example',
  role: 'maker',
  isDemo: false,
  createdAt: '2026-03-01T09:30:00.000Z',
} as const;
