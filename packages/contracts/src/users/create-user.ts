import { z } from 'zod';
import { defineContract } from '../contract.ts';
import { givenName } from '../record.ts';
import { OWNER_ONLY, roleSchema } from '../roles.ts';
import { emailSchema, exampleUser, newPasswordSchema, userSchema } from './user.ts';

export const createUser = defineContract({
  name: 'create-user',
  method: 'POST',
  path: '/api/users',
  summary: 'Let a person sign in',
  description: 'Nobody signs up by themselves: an owner enters each person with a first password.',
  tag: 'users',
  roles: OWNER_ONLY,
  body: z.strictObject({
    name: givenName,
    email: emailSchema,
    role: roleSchema,
    password: newPasswordSchema,
  }),
  answer: userSchema,
  status: 201,
  example: {
    body: {
      name: exampleUser.name,
      email: exampleUser.email,
      role: exampleUser.role,
      password: 'a long sentence only Noor knows',
    },
    answer: exampleUser,
  },
});
