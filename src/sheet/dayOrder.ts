const pattern = /^(\d{1,2})([/.-])(\d{1,2})\2(\d{4}|\d{2})(?:\s+(\d{1,2}:\d{2}(?::\d{2})?(?:\s*[ap]m)?))?$/i;

export interface DateReading {
  /** In words that read one way only: "1 March 2026". */
  readonly words: string;
  /** As the grid reads it, ISO 8601 date first. */
  readonly entry: string;
}

const months = "January February March April May June July August September October November December".split(" ");

const reading = (day: number, month: number, year: number, time: string | undefined): DateReading[] => {
  const date = new Date(Date.UTC(year, month - 1, day));
  if (date.getUTCMonth() !== month - 1 || date.getUTCDate() !== day) return [];
  const iso = date.toISOString().slice(0, 10);
  return [{ words: `${day} ${months[month - 1]} ${year}`, entry: time ? `${iso} ${time}` : iso }];
};

/**
 * The readings of a date written in numbers, the day first, then the month first: two when they differ, one when only one
 * is a date, none for anything else. Years of two digits: 00 to 29 are 2000 to 2029, as Excel has it.
 */
export const dateReadings = (text: string): DateReading[] => {
  const [, first, , second, written, time] = pattern.exec(text.trim()) ?? [];
  if (first === undefined || second === undefined || written === undefined) return [];
  const [one, other] = [Number(first), Number(second)];
  const year = written.length === 4 ? Number(written) : Number(written) + (Number(written) < 30 ? 2000 : 1900);
  const dayFirst = reading(one, other, year, time);
  return one === other ? dayFirst : [...dayFirst, ...reading(other, one, year, time)];
};
