import { defaults, inWords } from "../../models/defaults";

const litres = 60;
const rate = 1.5;

/** A sum to do in the head, by which a reader sees whether the add-in calculates. */
export const tryIt = {
  litres,
  /** What the prompt of the entry says. */
  prompt: `Change this number. The answer beside it must follow: ${inWords(defaults.start_delay)} + litres / ${rate} L/h.`,
  /** The known answer beside the live one, for the litres in a cell. */
  formula: (cell: string): string =>
    `="${litres} L at ${rate} L/h want ${defaults.start_delay.value + litres / rate} h. Yours: "&TEXT(OXYGEN.HOURS_TO_FILL(${cell},${rate}),"0.0")&" h"`,
};
