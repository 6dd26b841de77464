import { choice } from "./text";

const metals = ["stainless", "aluminium", "copper"] as const;
type Metal = (typeof metals)[number];

// Without a prototype, so that no name every object has is taken for a spelling.
const aliases = Object.assign(Object.create(null) as Record<string, Metal>, {
  "stainless steel": "stainless",
  "stainless-steel": "stainless",
  inox: "stainless",
  aluminum: "aluminium",
} satisfies Record<string, Metal>);

/** Metal that liquid cools; carbon steel is left out, since it is too brittle in the cold. */
export const metal = choice(metals, aliases);
