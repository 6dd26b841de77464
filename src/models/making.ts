/** Hours until full [h]: capacity and level [L], rate net of standing loss [L/h], start delay [h]. */
export const hoursToFill = (capacity: number, rate: number, level: number, startDelay: number): number =>
  startDelay + (capacity - level) / rate;
