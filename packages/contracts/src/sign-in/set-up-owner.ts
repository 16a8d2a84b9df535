import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { currencySchema } from '../figures.ts';
import { givenName } from '../record.ts';
import { emailSchema, exampleUser, newPasswordSchema, userSchema } from '../users/user.ts';

export const setUpOwner = defineContract({
  name: 'set-up-owner',
  method: 'POST',
  path: '/api/set-up',
  summary: 'Enter the first owner',
  description:
    'Works once, with the token of the link printed in the terminal, and only while there is nobody who can sign in.',
  tag: 'sign-in',
  roles: 'visitor',
  body: z.strictObject({
    token: z.string().min(1).max(200),
    name: givenName,
    email: emailSchema,
    password: newPasswordSchema,
    workshopName: givenName,
    currency: currencySchema,
  }),
  answer: userSchema,
  status: 201,
  example: {
    body: {
      token: 'the-part-after-the-hash-sign-of-the-printed-link',
      name: exampleUser.name,
      email: exampleUser.email,
      password: 'a long sentence only Noor knows',
      workshopName: 'Ashdown Joinery',
      currency: 'EUR',
    },
    answer: { ...exampleUser, role: 'owner' },
  },
});
