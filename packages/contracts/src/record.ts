import { z } from 'zod';

/** The id of a record, made by the server. */
export const recordId = z
  .string()
  .min(1)
  .max(64)
  .meta({ examples: ['0193f6a0-7c11-7000-8000-000000000001'] });
export const recordParams = z.strictObject({ id: recordId });

/** A moment, ISO 8601 in UTC. */
export const moment = z.iso.datetime().meta({ examples: ['2026-03-01T09:30:00.000Z'] });

/** A calendar date, ISO 8601. */
export const calendarDate = z.iso.date().meta({ examples: ['2026-03-01'] });

/** A name somebody gives to a thing. */
export const givenName = z.string().trim().min(1).max(200);
