/** "Since yesterday evening" in hours, counted from the end of that evening: the careful way. */

/** The wall clock of "2027-05-02T09:00:00+02:00", in hours since midnight. */
export function hourOfDay(now: string): number | null {
  const time = /T(\d{2}):(\d{2})(?::(\d{2}))?/.exec(now);
  if (!time) return null;
  return Number(time[1]) + Number(time[2]) / 60 + Number(time[3] ?? 0) / 3600;
}

export function hoursSincePeriod(now: string, daysBack: number, until: number): number | null {
  const hour = hourOfDay(now);
  return hour === null ? null : Math.max(0, Math.round((24 * daysBack + hour - until) * 100) / 100);
}
