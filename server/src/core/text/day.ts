// Days of the calendar as texts, `2027-06-30`. Source: ISO 8601, calendar dates in the extended format.

/** Whether a text is a day that the calendar has. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const midnight = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(midnight.getTime()) && dayAt(midnight) === text;
}

/** The day in UTC at a time that has a year of four digits. */
export const dayAt = (time: Date): string => time.toISOString().slice(0, 10);
