import type { Metal } from "../models/metals";
import { choice } from "./text";

const aliases: Record<string, Metal> = Object.create(null) as Record<string, Metal>;
const spellings: Readonly<Record<Metal, readonly string[]>> = {
  stainless: ["stainless steel", "stainless-steel", "inox"],
  aluminium: ["aluminum"],
  copper: [],
};
for (const [metal, names] of Object.entries(spellings)) for (const name of names) aliases[name] = metal as Metal;

/** Metal that liquid cools; carbon steel is left out, since it is too brittle in the cold. */
export const metal = choice(["stainless", "aluminium", "copper"] as const, aliases);
