import { exactLength, type LengthSystem, parseLength, UnreadableLengthError } from '@scantling/units';

/** A length in mm as it stands in a field: exact, without the unit a bare number has there. */
export function lengthText(mm: string | null, system: LengthSystem): string {
  if (mm === null || mm === '') return '';
  const written = exactLength(mm, system);
  return system === 'metric' ? written.replace(/ mm$/, '') : written;
}

/** What was typed as decimal text in mm; what is no length goes to the server as it stands, which names the field. */
export function readLengthText(typed: string, system: LengthSystem): string {
  if (typed === '') return '';
  try {
    return parseLength(typed, system === 'metric' ? 'mm' : 'in').toFixed();
  } catch (error) {
    if (error instanceof UnreadableLengthError) return typed;
    throw error;
  }
}
