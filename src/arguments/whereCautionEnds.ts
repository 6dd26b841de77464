/**
 * Sentences shared by the words of many functions: where a default or a usual reading stops being on the safe side, and
 * what to do then.
 */

/** Of a pressure read on a gauge. 1.01325 bar less the 0.7011 bar of ISO 2533:1975 at 3000 m is 0.31 bar. */
export const gaugeAtAltitude =
  "A gauge on high ground reads too much for this, by 0.31 bar at 3000 m: take every reading, also the 0 of an open vessel, through GAUGE_CORRECTED.";

/** Of the default of draw_ratio. */
export const drawRatioOfPortables =
  "The default draw_ratio is cautious for vessels of 20 L and more; small portables need more: see ESTIMATED_DRAW, or weigh a fill for DRAW_RATIO.";

/** Of the default of empty_days. */
export const emptyDaysOfOthers =
  "The default empty_days is that of a sound plant vessel: small portables and vessels with a weak vacuum empty sooner; take the plate's figure or LOSS_FROM_READINGS.";

/** Of the default of source_purity. */
export const worstOfOxygen93 =
  "The default source_purity is the middle of oxygen 93; its worst is 0.90: enter that for the cautious end.";

/** Of a stock that may be liquid, in functions that know of no loss. */
export const stockOfLiquid =
  "A stock of liquid also boils away, and a fill draws more than it leaves: count both into the demand (DAILY_LOSS, GROSS_DRAW), or follow the vessel with DAYS_UNTIL_EMPTY.";

/** Of an argument in which 0 is an answer, and the calm one. */
export const blankAsZero =
  "Some older Excel hands an empty cell over as 0, which can't be told from a 0 here: leave no input empty (THIS_EXCEL tells).";

/** Of a release or a spill in a room. 101.325 kPa over the 70.11 kPa of ISO 2533:1975 at 3000 m is 1.45. */
export const altitudeOfRoom =
  "On high ground the same oxygen takes more room, 1.45 times as much at 3000 m: give the altitude.";
