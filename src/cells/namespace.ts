/** The namespace every function of the add-in stands behind: `=OXYGEN.HOURS_TO_FILL(…)`. */
export const namespace = "OXYGEN";
