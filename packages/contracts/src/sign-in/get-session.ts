import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { unitSystemSchema } from '../designs/design.ts';
import { currencySchema } from '../figures.ts';
import { roleSchema } from '../roles.ts';

export const getSession = defineContract({
  name: 'get-session',
  method: 'GET',
  path: '/api/session',
  summary: 'Who am I',
  description:
    'Answers everybody: `user` is null for a visitor, and `needsSetUp` tells that nobody can sign in yet.',
  tag: 'sign-in',
  roles: 'visitor',
  answer: z.strictObject({
    user: z
      .strictObject({
        id: z.string(),
        name: z.string(),
        role: roleSchema,
        kind: z.enum(['user', 'token']),
        isDemo: z.boolean(),
      })
      .nullable(),
    workshop: z
      .strictObject({ name: z.string(), currency: currencySchema, unitSystem: unitSystemSchema })
      .nullable(),
    needsSetUp: z.boolean(),
    canUseDemo: z
      .boolean()
      .meta({ description: 'True where the demo and its stated sign-in work from here' }),
  }),
  example: {
    answer: {
      user: {
        id: '0193f6a0-7c11-7000-8000-000000000001',
        name: 'Noor Ashdown',
        role: 'owner',
        kind: 'user',
        isDemo: false,
      },
      workshop: { name: 'Ashdown Joinery', currency: 'EUR', unitSystem: 'metric' },
      needsSetUp: false,
      canUseDemo: false,
    },
  },
});
