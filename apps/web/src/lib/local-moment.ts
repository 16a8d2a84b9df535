import { localToday } from './local-today.ts';

/** A moment of the server (ISO 8601, UTC) as the reader's day and time, "2026-03-01 10:30". */
export function localMoment(moment: string): string {
  const at = new Date(moment);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${localToday(at)} ${two(at.getHours())}:${two(at.getMinutes())}`;
}
