const DAY_MS = 86_400_000;

/** Days from one calendar day to a later one, both YYYY-MM-DD; below 0 where it is past. */
export function daysLeft(today: string, until: string): number {
  return Math.round((Date.parse(`${until}T00:00:00Z`) - Date.parse(`${today}T00:00:00Z`)) / DAY_MS);
}

/** "today is the last day", "1 day left", "12 days left", "2 days over". */
export function daysLeftWords(today: string, until: string): string {
  const days = daysLeft(today, until);
  const count = Math.abs(days) === 1 ? '1 day' : `${Math.abs(days)} days`;
  if (days === 0) return 'today is the last day';
  return days > 0 ? `${count} left` : `${count} over`;
}
