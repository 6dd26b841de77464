import { type Metal, metals } from "../models/metals";
import { choice } from "./text";

// Without a prototype, so that no name every object has is taken for a spelling.
const aliases = Object.assign(Object.create(null) as Record<string, Metal>, {
  "stainless steel": "stainless",
  "stainless-steel": "stainless",
  inox: "stainless",
  aluminum: "aluminium",
} satisfies Record<string, Metal>);

/** Metal that liquid cools. */
export const metal = choice(metals, aliases);
