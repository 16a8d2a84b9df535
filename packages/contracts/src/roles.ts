import { z } from 'zod';

/** The roles of people and of API tokens, from the one that may do most. */
export const ROLES = ['owner', 'maker', 'bookkeeper', 'read-only'] as const;
export type Role = (typeof ROLES)[number];
export const roleSchema = z.enum(ROLES);

/**
 * Who may call a route: the roles named, `anyone` who is signed in (or holds a token), or any `visitor`
 * without signing in.
 */
export type Audience = readonly Role[] | 'anyone' | 'visitor';

/** What each role may do, in words for a list of people. */
export const ROLE_MEANINGS: Readonly<Record<Role, string>> = {
  owner: 'Everything, including people, tokens and the workshop itself.',
  maker:
    'Designs, cost sheets, quotes, shop rates, suppliers, materials and prices; no people and no tokens.',
  bookkeeper:
    'Invoices, payments and reminders; suppliers, price lists, exchange rates, overhead and the tool register; reads designs and costs.',
  'read-only': 'Reads everything but people and tokens, changes nothing.',
};

export const OWNER_ONLY = ['owner'] as const satisfies Audience;
/** Who changes designs, bills, cost sheets and shop rates. */
export const MAKERS = ['owner', 'maker'] as const satisfies Audience;
/** Who changes what the accountant also keeps: suppliers, prices, exchange rates, overhead, tools. */
export const RECORD_KEEPERS = ['owner', 'maker', 'bookkeeper'] as const satisfies Audience;

/** Who bills clients and takes their money. */
export const MONEY_KEEPERS = ['owner', 'bookkeeper'] as const satisfies Audience;

/** True when the role may call a route with this audience. */
export function mayCall(role: Role, audience: Audience): boolean {
  return typeof audience === 'string' || audience.includes(role);
}

export function isRole(text: string): text is Role {
  return ROLES.some((role) => role === text);
}
